import type { EnvelopeStep } from './envelopeStep.ts';

/** What a step response says of a filter. */
export interface StepFigures {
  /** From the beginning to half of the steady state, s. */
  readonly delay: number;
  /** From a tenth to nine tenths, s. */
  readonly rise: number;
  /** How far beyond the steady state, as a fraction of it. */
  readonly overshoot: number;
  /** From the beginning until it stays within a twentieth of the steady state, s. */
  readonly settled: number;
}

/** Reads a step response; times by straight lines between its points. */
export function stepFigures({ time, level }: EnvelopeStep): StepFigures {
  const first = (height: number): number => {
    const i = level.findIndex((one) => one >= height);
    return i <= 0 ? (time[0] ?? 0) : crossing(time, level, i - 1, height);
  };
  let overshoot = 0;
  for (const one of level) overshoot = Math.max(overshoot, one - 1);
  let last = level.length - 1;
  while (last > 0 && Math.abs((level[last] as number) - 1) < 0.05) last -= 1;
  const bound = (level[last] as number) > 1 ? 1.05 : 0.95;
  return {
    delay: first(0.5),
    rise: first(0.9) - first(0.1),
    overshoot,
    settled: last + 1 < level.length ? crossing(time, level, last, bound) : (time[last] ?? 0),
  };
}

function crossing(time: Float64Array, level: Float64Array, i: number, height: number): number {
  const [t0, t1] = [time[i] as number, time[i + 1] as number];
  const [a, b] = [level[i] as number, level[i + 1] as number];
  return a === b ? t1 : t0 + ((height - a) / (b - a)) * (t1 - t0);
}
