import type { Arrangement } from './task.ts';

/** An arrangement and its merit, dB: the less the better. */
export interface Found {
  readonly arrangement: Arrangement;
  readonly merit: number;
}

/** Keeps the best arrangements of all that it is shown. */
export interface Pool {
  readonly add: (arrangement: Arrangement, merit: number) => void;
  /** Best first. */
  readonly best: () => Found[];
}

/** @param kept how many are kept */
export function poolOf(kept: number): Pool {
  const found = new Map<string, Found>();
  let bar = Number.POSITIVE_INFINITY;
  const best = () => [...found.values()].sort((a, b) => a.merit - b.merit).slice(0, kept);
  return {
    best,
    add: (arrangement, merit) => {
      if (merit >= bar) return;
      found.set(arrangement.join(), { arrangement: [...arrangement], merit });
      if (found.size < 2 * kept) return;
      const left = best();
      found.clear();
      for (const one of left) found.set(one.arrangement.join(), one);
      bar = left.at(-1)?.merit ?? bar;
    },
  };
}
