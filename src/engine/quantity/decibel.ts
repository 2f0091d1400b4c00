/** Ten times the decimal logarithm of a ratio of powers. @return dB; −Infinity for a ratio of 0 */
export const dbOfPowerRatio = (ratio: number): number => 10 * Math.log10(ratio);

/** The ratio of powers that so many dB are. */
export const powerRatioOfDb = (db: number): number => 10 ** (db / 10);

/** Twenty times the decimal logarithm of a ratio of voltages or currents at one resistance. */
export const dbOfVoltageRatio = (ratio: number): number => 20 * Math.log10(ratio);

/** The ratio of voltages (or currents) that so many dB are. */
export const voltageRatioOfDb = (db: number): number => 10 ** (db / 20);
