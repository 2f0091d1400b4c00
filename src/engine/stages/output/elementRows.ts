import { INSIDE_SIZE } from '../../circuit/ladderTransfer.ts';
import type { Part } from './network.ts';

/** Usual voltage ratings of capacitors, V. */
export const RATINGS = [50, 100, 200, 500, 1000, 2000, 3000, 5000] as const;

/**
 * Every part with its voltage, current and heat at full power.
 *
 * @param parts from the collector on
 * @param inside branch voltages and currents for one ampere into the network, from the ladder
 * @param transimpedance load volts for that ampere, Ω
 * @param at peak antenna voltage V, frequency Hz, quality factors
 */
export function elementRows(
  parts: readonly Part[],
  inside: Float64Array,
  transimpedance: number,
  at: {
    readonly antennaPeak: number;
    readonly nominal: number;
    readonly coilQ: number;
    readonly capacitorQ: number;
  },
) {
  const w = 2 * Math.PI * at.nominal;
  return parts.map(({ label, kind, exact, fitted }, k) => {
    const re = inside[k * INSIDE_SIZE] ?? 0;
    const im = inside[k * INSIDE_SIZE + 1] ?? 0;
    const volts = (at.antennaPeak * Math.hypot(re, im)) / transimpedance;
    const x = w * fitted;
    const isCoil = kind === 'coil';
    const resistance = x / at.coilQ;
    // Conductance and size of the admittance of the part itself, strays left out.
    const g = isCoil ? resistance / (resistance ** 2 + x ** 2) : x / at.capacitorQ;
    const y = isCoil ? 1 / Math.hypot(resistance, x) : x * Math.hypot(1, 1 / at.capacitorQ);
    return {
      label,
      part: kind,
      exactC: isCoil ? null : exact,
      fittedC: isCoil ? null : fitted,
      l: isCoil ? fitted : null,
      volts,
      amps: (volts / Math.SQRT2) * y,
      rating: isCoil ? null : ratingFor(volts),
      heat: (volts ** 2 / 2) * g,
    };
  });
}

function ratingFor(volts: number): number {
  return RATINGS.find((rating) => rating >= 2 * volts) ?? 2 * volts;
}
