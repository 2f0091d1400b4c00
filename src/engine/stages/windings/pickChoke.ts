import { type Choke, chokes } from '../../data/chokes.ts';

/** Self-resonance over the operating frequency, and greatest over actual current: at least. */
export const CLEAR = 2;
export const SPARE = 1.25;

/**
 * The ready-made choke of least value that has the inductance, resonates at twice the frequency or
 * above, and carries the current with a quarter to spare; null where the list has none.
 *
 * @param l least inductance, H
 * @param frequency Hz
 * @param direct current through it, A
 * @param own chokes at hand, preferred to any other
 */
export function pickChoke(
  l: number,
  frequency: number,
  direct: number,
  own: readonly Choke[],
): Choke | null {
  return least(own, l, frequency, direct) ?? least(chokes, l, frequency, direct);
}

function least(list: readonly Choke[], l: number, frequency: number, direct: number): Choke | null {
  let best: Choke | null = null;
  for (const choke of list) {
    const does =
      choke.l >= l && choke.resonance >= CLEAR * frequency && choke.most >= SPARE * direct;
    if (does && (best === null || choke.l < best.l)) best = choke;
  }
  return best;
}
