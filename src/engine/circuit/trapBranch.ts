/**
 * Coil and capacitor of a trap that stands in for a plain coil: at the working frequency it has the
 * same reactance, so that what the network shows there stays as it was; at the notch it stops.
 *
 * L′ = L·(1 − (f₀/f_t)²), C = 1/((2πf_t)²·L′). A capacitor laid across the coil as it is would make
 * the reactance 1/(1 − (f₀/f_t)²) times as great.
 *
 * @param l of the plain coil, H
 * @param frequency working frequency, Hz
 * @param notch frequency to be stopped, above the working frequency, Hz
 * Source: closed form of the parallel circuit.
 */
export function trapBranch(l: number, frequency: number, notch: number): { l: number; c: number } {
  const inner = l * (1 - (frequency / notch) ** 2);
  return { l: inner, c: 1 / ((2 * Math.PI * notch) ** 2 * inner) };
}
