import { useRef } from 'react';
import { plain } from './ticks.ts';

export interface PlotAxis {
  from: number;
  to: number;
  ticks: readonly number[];
  /** Stands at the axis's end: quantity and unit. */
  name?: string;
  /** Where the name of a top axis stands. */
  nameAt?: 'start' | 'end' | 'above';
  format?: (value: number) => string;
  /** Places with names instead of a scale: no lines run up from them. */
  named?: boolean;
  /** A second line under each tick. */
  under?: (value: number) => string;
}

/** An axis with its figures written out. */
export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly named: boolean;
  readonly marks: readonly { at: number; text: string; under: string }[];
}

const written = ({ from, to, ticks, format = plain, under, named = false }: PlotAxis): Scale => ({
  from,
  to,
  named,
  marks: ticks.map((at) => ({ at, text: format(at), under: under?.(at) ?? '' })),
});

/** The axis written out; the same object as before while it says the same. */
export function useScale(axis: PlotAxis): Scale {
  const kept = useRef<{ key: string; scale: Scale } | null>(null);
  const scale = written(axis);
  const key = JSON.stringify(scale);
  if (kept.current?.key !== key) kept.current = { key, scale };
  return kept.current.scale;
}
