import { fft } from '../fft.ts';

/** Levels over time and frequency. */
export interface Waterfall {
  /** How many moments, how many frequencies from 0 on. */
  readonly moments: number;
  readonly frequencies: number;
  /** dB under the highest, moment after moment. */
  readonly level: Float32Array;
}

/** Nothing is drawn that is so far down, dB. */
const FLOOR = -120;

/**
 * Audio as a picture: level by moment and frequency.
 *
 * @param rate samples a second
 * @param size of a window, a power of two: frequencies are rate/size apart
 * @param highest frequency wanted, Hz
 * @param moments how many, evenly over the whole
 */
export function waterfall(
  audio: Float64Array,
  rate: number,
  size: number,
  highest: number,
  moments: number,
): Waterfall {
  const frequencies = Math.min(size / 2, Math.ceil((highest * size) / rate)) + 1;
  const level = new Float32Array(moments * frequencies);
  const re = new Float64Array(size);
  const im = new Float64Array(size);
  const room = Math.max(0, audio.length - size);
  let most = 1e-300;
  for (let m = 0; m < moments; m += 1) {
    const at = Math.round((room * m) / Math.max(1, moments - 1));
    for (let i = 0; i < size; i += 1) {
      re[i] = (audio[at + i] ?? 0) * (0.5 - 0.5 * Math.cos((2 * Math.PI * i) / size));
    }
    im.fill(0);
    fft(re, im);
    for (let k = 0; k < frequencies; k += 1) {
      const power = (re[k] as number) ** 2 + (im[k] as number) ** 2;
      if (power > most) most = power;
      level[m * frequencies + k] = power;
    }
  }
  for (let i = 0; i < level.length; i += 1) {
    level[i] = Math.max(FLOOR, 10 * Math.log10((level[i] as number) / most + 1e-300));
  }
  return { moments, frequencies, level };
}
