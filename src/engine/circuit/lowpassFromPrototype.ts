/**
 * Low-pass ladder from a prototype's g values, capacitor first: C, L, C …
 *
 * @param g g₁ … gₙ, normalised to one ohm and to the edge that `edge` names (3 dB for Butterworth,
 *   ripple edge for Chebyshev)
 * @param resistance of the end where the first capacitor stands, Ω
 * @param edge Hz
 * @returns element values in order, F and H by turns: C = g/(2πf·R), L = g·R/(2πf)
 * Source: Matthaei, Young, Jones, Microwave Filters, 1964, section 4.04.
 */
export function lowpassFromPrototype(
  g: readonly number[],
  resistance: number,
  edge: number,
): number[] {
  const w = 2 * Math.PI * edge;
  return g.map((each, k) => (k % 2 === 0 ? each / (w * resistance) : (each * resistance) / w));
}
