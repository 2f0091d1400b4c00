/**
 * The band-pass of coupled circuits as a formula: voltage and current at its source together, for
 * one volt at its end; half of that is the loss.
 *
 * Symbols: f_0, L, Q_L, R_e, C_f, C_e, C_k as in `CoupledCircuits` (nominal, coil, coilQ, end, feed,
 * endC, couple), C_m for the middle circuit.
 *
 * @param three whether there is a middle circuit
 * @param f symbol of the frequency
 */
export function coupledFormula(three: boolean, f: string): string {
  const through = (c: string) => `[1, 1 / (i * 2 * pi * ${f} * ${c} * R_e); 0, 1]`;
  const circuit = (c: string) =>
    `[1, 0; R_e / (2 * pi * L * (i * ${f} + f_0 / Q_L * sqrt(${f} / f_0))) + i * 2 * pi * ${f} * ${c} * R_e, 1]`;
  const parts = [
    through('C_f'),
    circuit('C_e'),
    ...(three ? [through('C_k'), circuit('C_m')] : []),
    through('C_k'),
    circuit('C_e'),
    through('C_f'),
  ];
  return `([1, 1] * ${parts.join(' * ')} * [1, 1])`;
}
