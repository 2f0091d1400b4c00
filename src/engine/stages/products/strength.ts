import type { Product } from './products.ts';

/** What the strength of a product depends on; levels in dBm, leftovers and balance in dB. */
export interface Strength {
  readonly oscillatorLevel: number;
  readonly signalLevel: number;
  readonly signalIsolation: number;
  readonly carrierLeft: number;
  readonly oscillatorLeft: number;
}

/** Fall of the oscillator's harmonics from one to the next, dB. */
export const HARMONIC_FALL = 20;

/**
 * Strength of a product at the mixer's output against the wanted one, dB. A rule of thumb, good to
 * some 10 dB: a switch's odd harmonics fall as 1/m, even ones are held down by its balance, and each
 * further multiple of the signal costs what the signal lies below the oscillator.
 *
 * Source: Fourier series of a square wave; the rest common practice, no source.
 */
export function strengthOf({ m, n }: Product, by: Strength): number {
  const apart = by.oscillatorLevel - by.signalLevel;
  if (n === 0) return by.oscillatorLeft - HARMONIC_FALL * (m - 1);
  if (m === 0) return by.carrierLeft - (n - 1) * apart;
  const even = m % 2 === 0 ? by.signalIsolation : 0;
  return -20 * Math.log10(m) - even - (n - 1) * apart;
}
