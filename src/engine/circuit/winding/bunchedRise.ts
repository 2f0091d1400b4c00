/** What has to be known of a ring to say how much its winding gains when pushed together. */
export interface FluxRing {
  /** Initial permeability. */
  readonly permeability: number;
  /** Section m², path m, diameters m. */
  readonly size: {
    readonly area: number;
    readonly path: number;
    readonly outer: number;
    readonly inner: number;
  };
}

/**
 * How far along a ring the flux goes before half of it and more has leaked to the air, m:
 * λ = √(μA·ln(8R/r)/2π), R the mean radius, r that of a round section of the same area.
 */
export function fluxReach({ permeability, size }: FluxRing): number {
  const round = Math.log((2 * (size.outer + size.inner)) / Math.sqrt(size.area / Math.PI));
  return Math.sqrt((permeability * size.area * round) / (2 * Math.PI));
}

/**
 * How many times the inductance of a toroid's winding rises when its turns are pushed together,
 * against the same turns spread all round.
 *
 * The ring is a line for magnetic flux: its own reluctance 1/(μ₀μA) for each metre along it, and what
 * leaks off it to the air, 2πμ₀/ln(8R/r) for each metre, as for the charge on a thin ring. The
 * winding drives it over the length 2a of 2b. Solved for the flux that the turns meet:
 *
 * κ = (b/a)·{1 − (λ/a)·sinh(a/λ)·sinh((b − a)/λ)/sinh(b/λ)}.
 *
 * A planning figure, within a half of the rise: the flux between the turns and the bend of the ring
 * are left out. High permeability makes λ long and κ one: a ferrite hardly notices.
 *
 * @param share of the circumference that the turns cover, above 0 to 1
 * Source: this program's own model, held against a pair of readings from a bench.
 */
export function bunchedRise(share: number, ring: FluxRing): number {
  if (share >= 1) return 1;
  const b = ring.size.path / 2 / fluxReach(ring);
  const a = b * Math.max(share, 1e-3);
  return (b / a) * (1 - (Math.sinh(a) * Math.sinh(b - a)) / (a * Math.sinh(b)));
}

/**
 * Share of the circumference over which turns have to stand for a wanted rise; null where not even
 * `tightest` gives it. By halving: the rise falls steadily with the share.
 *
 * @param rise κ against turns spread all round, above 1
 * @param tightest share that the turns cover when they touch
 * @param widest share when they are spread
 */
export function shareForRise(
  rise: number,
  ring: FluxRing,
  tightest: number,
  widest: number,
): number | null {
  if (bunchedRise(tightest, ring) < rise) return null;
  let [low, high] = [tightest, widest];
  for (let i = 0; i < 50; i += 1) {
    const middle = (low + high) / 2;
    if (bunchedRise(middle, ring) > rise) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The rise as a formula in mathjs; bound before: `mu_i`, `A_e`, `l_e`, `D_a`, `D`, and `c_x` the share. */
export const riseSteps = {
  lambda: {
    formula: 'sqrt(mu_i * A_e * log(2 * (D_a + D) / sqrt(A_e / pi)) / (2 * pi))',
    unit: 'm',
    says: 'how far flux goes along the ring before most has leaked',
  },
  b_r: { formula: 'l_e / 2 / lambda', unit: '1', says: 'half the ring in those lengths' },
} as const;

/** κ for a share, as a formula from the steps. */
export const riseFormula = (share: string): string => {
  const a = `(b_r * ${share})`;
  return `(${share} >= 1 ? 1 : b_r / ${a} * (1 - sinh(${a}) * sinh(b_r - ${a}) / (${a} * sinh(b_r))))`;
};
