/** Boltzmann constant, J/K, and elementary charge, C: exact since 2019 (SI brochure, 9th edition). */
export const BOLTZMANN = 1.380649e-23;
export const CHARGE = 1.602176634e-19;

/**
 * Transconductance of a bipolar transistor at a standing current, A/V: qI/kT.
 * @param current emitter current, A
 * @param temperature of the junction, K
 */
export const transconductance = (current: number, temperature: number): number =>
  (CHARGE * current) / (BOLTZMANN * temperature);

/**
 * Base–emitter capacitance from the transition frequency, F: gm/(2πfT) less the collector–base
 * capacitance, which fT counts too. Never below nothing.
 */
export const baseCapacitance = (gm: number, ft: number, ccb: number): number =>
  Math.max(gm / (2 * Math.PI * ft) - ccb, 0);
