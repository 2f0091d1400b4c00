/** What standing waves make of a line. */
export interface StandingWaveLoss {
  /** Matched loss and what the standing wave adds, dB. */
  readonly total: number;
  /** SWR at the end where the power comes in, plain. */
  readonly swrIn: number;
}

/**
 * Loss of a line that does not end in its own resistance.
 *
 * Total (a² − ρ²)/(a·(1 − ρ²)) with a = 10^(matched/10), ρ = (S − 1)/(S + 1). Out and back
 * takes the matched loss twice from the power, so a from the voltage: SWR (a + ρ)/(a − ρ) at the
 * input. The line's impedance is taken as real; it holds for lines longer than about a
 * quarter wave, on shorter ones more or less is lost as the antenna lies.
 *
 * @param matched loss of the same line when matched, dB
 * @param swr at the antenna, from 1
 * Source: ARRL Antenna Book, chapter on transmission lines (from memory).
 */
export function standingWaveLoss(matched: number, swr: number): StandingWaveLoss {
  const a = 10 ** (matched / 10);
  const rho = (swr - 1) / (swr + 1);
  return {
    total: 10 * Math.log10((a * a - rho * rho) / (a * (1 - rho * rho))),
    swrIn: (a + rho) / (a - rho),
  };
}
