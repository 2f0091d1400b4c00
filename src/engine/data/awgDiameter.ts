/**
 * Bare diameter of a wire of American gauge, m: 0.127 mm · 92^((36 − n)/39).
 *
 * @param gauge number of the gauge, 0 to 40
 * Source: ASTM B258 (from memory).
 */
export function awgDiameter(gauge: number): number {
  return 0.127e-3 * 92 ** ((36 - gauge) / 39);
}
