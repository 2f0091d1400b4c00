import { type Crystal, seriesResonance } from './crystal.ts';

/**
 * Crystals side by side as one: resonance at the mean, each weighted by its 1/Lm.
 *
 * Exact for alike ones. Others have two resonances; that matters once they differ by more than a
 * small part of the filter's width.
 *
 * @param crystals one or more
 */
export function sideBySide(crystals: readonly Crystal[]): Crystal {
  const [first] = crystals;
  if (first && crystals.length === 1) return first;
  const sum = (of: (one: Crystal) => number) => crystals.reduce((all, one) => all + of(one), 0);
  const perL = sum(({ lm }) => 1 / lm);
  const fs = sum((one) => seriesResonance(one) / one.lm) / perL;
  return {
    lm: 1 / perL,
    cm: perL / (2 * Math.PI * fs) ** 2,
    rm: 1 / sum(({ rm }) => 1 / rm),
    c0: sum(({ c0 }) => c0),
  };
}
