import { format } from '../../quantity/format.ts';

/** Rise of inductance from spread out to all together where hardly anything is covered. */
export const BUNCH = 0.67;

/** Near enough to leave it alone. */
const RIGHT = 0.03;

/**
 * Inductance with all turns pushed together, H: about BUNCH more where they cover little, nothing
 * more where they fill the core.
 *
 * Source: one builder's ten turns, 0.46 µH spread and 0.77 µH squeezed, on a core hardly covered.
 */
export const bunched = (l: number, coverage: number): number =>
  l * (1 + BUNCH * (1 - Math.min(1, coverage)));

/**
 * What to do with the coil as the meter reads it, or what can be done once it is wound.
 *
 * @param own measured, H; null where it isn't yet
 * @param wanted H, @param lAt with these turns spread, H
 */
export function coilAdvice(coil: {
  readonly own: number | null;
  readonly wanted: number;
  readonly turns: number;
  readonly lAt: number;
  readonly coverage: number;
}): string {
  const { own, wanted, turns, lAt, coverage } = coil;
  const per = (n: number) => (n / turns) ** 2;
  const less = format(1 - per(turns - 1), '%', 2);
  const more = format(per(turns + 1) - 1, '%', 2);
  if (own === null) {
    const squeeze = format(bunched(lAt, coverage) / lAt - 1, '%', 1);
    return `Spread it first. Squeezing gains up to ${squeeze}; a turn off takes ${less}, one more adds ${more}.`;
  }
  const off = own / wanted - 1;
  const by = format(Math.abs(off), '%', 2);
  if (Math.abs(off) <= RIGHT) return 'Right: fix the turns with a drop of wax.';
  if (off > 0) {
    const turn = 1 - per(turns - 1);
    return off > turn / 2 && turns > 1
      ? `${by} too much: take a turn off, which takes ${less}, then squeeze or spread.`
      : `${by} too much: spread the turns.`;
  }
  const turn = per(turns + 1) - 1;
  return -off > turn / 2
    ? `${by} too little: squeeze the turns; if that is not enough one more adds ${more}.`
    : `${by} too little: squeeze the turns.`;
}
