/** What one harmonic can become in an antenna other than the resistance it is reckoned for. */
export interface HarmonicRise {
  /** Power into the resistance, for one ampere into a network of R ohms, over R/2: 1/|c|². */
  readonly plain: number;
  /** Size of the reflection that the antenna meets looking back into the network. */
  readonly back: number;
  /** Most that an antenna of no more than the given SWR can take more than the resistance, dB. */
  readonly same: number;
  /** Most that any antenna at all could take more, dB; null where nothing bounds it. */
  readonly any: number | null;
}

/** Nearer to one the output is taken for lossless, and nothing bounds what could be drawn. */
const LOSSLESS = 1 - 1e-9;

/**
 * Bounds of a harmonic over all antennas. The power taken is |V|²(1 − ρ²)/|c + d·Γ|²; over all
 * angles of Γ it is most where d·Γ stands against c: (1 − ρ²)/(|c| − |d|ρ)². That rises with ρ up to
 * |d|/|c|, where it comes to 1/(|c|² − |d|²): what the output has to give to any passive load.
 *
 * @param waves from `chainWaves` at the harmonic, the source's own resistance included, from `at` on
 * @param rho size of the antenna's reflection at the harmonic
 * Source: available power and mismatch factor; any text on two-ports.
 */
export function harmonicRise(waves: Float64Array, rho: number, at = 0): HarmonicRise {
  const c = Math.hypot(waves[at + 4] ?? 0, waves[at + 5] ?? 0);
  const d = Math.hypot(waves[at + 6] ?? 0, waves[at + 7] ?? 0);
  const back = d / c;
  const near = Math.min(rho, back);
  return {
    plain: 1 / (c * c),
    back,
    same: 10 * Math.log10((1 - near * near) / (1 - Math.min(1, back) * near) ** 2),
    any: back < LOSSLESS ? -10 * Math.log10(1 - back * back) : null,
  };
}
