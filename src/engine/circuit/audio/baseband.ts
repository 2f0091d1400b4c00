import { type Taps, tapsOf } from './taps.ts';

/** Points of a response moved to audio: 7.8 Hz apart at 16 kHz, ringing of 112 ms goes in whole. */
export const POINTS = 2048;

/**
 * Where a filter has to be known so that it can be moved to audio: a carrier, and half the sampling
 * rate to either side of it, rising.
 *
 * @param carrier Hz
 * @param rate samples a second
 */
export const basebandFrequencies = (carrier: number, rate: number): Float64Array =>
  Float64Array.from({ length: POINTS }, (_, i) => carrier + (rate * (i - POINTS / 2)) / POINTS);

/**
 * A filter at radio frequency as one of envelopes against the carrier: what lies above the carrier
 * are the positive frequencies, what lies below the negative ones.
 *
 * @param gain dB, @param phase rad, at `basebandFrequencies`
 * @source closed form: complex envelope; S. O. Rice, Bell System Tech. J. 23, 1944
 */
export function basebandTaps(gain: Float64Array, phase: Float64Array): Taps {
  const re = new Float64Array(POINTS);
  const im = new Float64Array(POINTS);
  for (let i = 0; i < POINTS; i += 1) {
    const size = 10 ** ((gain[i] as number) / 20);
    const k = (i + POINTS / 2) % POINTS;
    re[k] = size * Math.cos(phase[i] as number);
    im[k] = size * Math.sin(phase[i] as number);
  }
  return tapsOf(re, im);
}
