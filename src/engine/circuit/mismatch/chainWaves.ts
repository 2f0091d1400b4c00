/** Numbers of one set of waves: real and imaginary parts of a, b, c, d. */
export const WAVES_SIZE = 8;

/**
 * A chain matrix for a load told by its reflection Γ: for a forward wave of one volt at the antenna
 * terminal the network's input has a + b·Γ volts and (c + d·Γ)/R amperes.
 *
 * a = A + B, b = A − B, c = C + D, d = C − D of the matrix made plain by R. With a resistance across
 * the source the current that the source has to give is told instead: c + a·R/Rₒ, d + b·R/Rₒ.
 *
 * @param chain eight numbers from `networkChain`, from `at` on
 * @param across R over the source's own resistance; 0 where it has none
 * @param out receives eight numbers from `at` on
 * Source: V = V⁺(1 + Γ), I = V⁺(1 − Γ)/R; any text on transmission lines.
 */
export function chainWaves(chain: Float64Array, across: number, out: Float64Array, at = 0): void {
  const n = (k: number) => chain[at + k] ?? 0;
  const [ar, ai] = [n(0) + n(2), n(1) + n(3)];
  const [br, bi] = [n(0) - n(2), n(1) - n(3)];
  out[at] = ar;
  out[at + 1] = ai;
  out[at + 2] = br;
  out[at + 3] = bi;
  out[at + 4] = n(4) + n(6) + ar * across;
  out[at + 5] = n(5) + n(7) + ai * across;
  out[at + 6] = n(4) - n(6) + br * across;
  out[at + 7] = n(5) - n(7) + bi * across;
}
