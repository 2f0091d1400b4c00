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
 */
export function pickChoke(l: number, frequency: number, direct: number): Choke | null {
  let best: Choke | null = null;
  for (const choke of chokes) {
    const does =
      choke.l >= l && choke.resonance >= CLEAR * frequency && choke.most >= SPARE * direct;
    if (does && (best === null || choke.l < best.l)) best = choke;
  }
  return best;
}
