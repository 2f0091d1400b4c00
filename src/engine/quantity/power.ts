import { dbOfPowerRatio, powerRatioOfDb } from './decibel.ts';

/** What a sine of 1 V rms measures in each way of stating it. */
export const perRms = { Vrms: 1, Vpk: Math.SQRT2, Vpp: 2 * Math.SQRT2 } as const;

/** A way of stating a sine voltage. */
export type SineVolts = keyof typeof perRms;

/** Power in watts → level in dBm (dB above one milliwatt). */
export const dbmOfWatts = (watts: number): number => dbOfPowerRatio(watts / 1e-3);

/** Level in dBm → power in watts. */
export const wattsOfDbm = (dbm: number): number => powerRatioOfDb(dbm) * 1e-3;

/**
 * Power of a sine in a resistance.
 * @param volts as stated by `way`: V rms, V peak or V peak to peak
 * @param ohms the resistance, Ω, above 0
 * @return W
 */
export const wattsOfVolts = (volts: number, way: SineVolts, ohms: number): number =>
  (volts / perRms[way]) ** 2 / ohms;

/**
 * Voltage of the sine that puts a power into a resistance.
 * @param watts W, not negative
 * @param ohms Ω
 * @return V rms, V peak or V peak to peak as `way` says
 */
export const voltsOfWatts = (watts: number, way: SineVolts, ohms: number): number =>
  Math.sqrt(watts * ohms) * perRms[way];

/** A level in dBm into a resistance → voltage of the sine. */
export const voltsOfDbm = (dbm: number, way: SineVolts, ohms: number): number =>
  voltsOfWatts(wattsOfDbm(dbm), way, ohms);

/** Voltage of a sine at a resistance → level in dBm. */
export const dbmOfVolts = (volts: number, way: SineVolts, ohms: number): number =>
  dbmOfWatts(wattsOfVolts(volts, way, ohms));
