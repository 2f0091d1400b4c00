import { useDeferredValue } from 'react';
import { useValue } from '../../store/hooks.ts';

/** The antenna's reflection once round, as worked. */
export interface Round {
  readonly angle: Float64Array;
  readonly resistance: Float64Array;
  readonly reactance: Float64Array;
  readonly power: Float64Array;
  readonly loss: Float64Array;
  readonly held: Float64Array;
  readonly unheld: Float64Array;
  readonly heat: Float64Array;
}

/** The same for charts: a moment behind while somebody types. */
export const useRound = (): Round | null => useDeferredValue(useValue<Round>('mismatch.around'));

/** Angles of the horizontal axis, degrees. */
export const roundAxis = {
  from: 0,
  to: 360,
  name: 'angle of the reflection, °',
  unit: '°',
  step: 5,
  ticks: [0, 45, 90, 135, 180, 225, 270, 315, 360],
} as const;

export const inDegrees = (angle: Float64Array): Float64Array =>
  angle.map((radians) => (radians * 180) / Math.PI);
