import { fft } from '../fft.ts';

/**
 * Power of a signal by frequency, averaged over windows that overlap by half.
 *
 * @param rate samples a second
 * @param size of a window, a power of two
 * @return power in a hertz at k·rate/size, k from 0 to size/2, both signs of frequency together
 * @source P. D. Welch, IEEE Trans. Audio Electroacoustics 15, 1967; Hann window
 */
export function powerSpectrum(audio: Float64Array, rate: number, size: number): Float64Array {
  const half = size / 2;
  const out = new Float64Array(half + 1);
  const window = Float64Array.from(
    { length: size },
    (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / size),
  );
  const weight = window.reduce((sum, w) => sum + w * w, 0);
  const re = new Float64Array(size);
  const im = new Float64Array(size);
  let count = 0;
  for (let at = 0; at + size <= audio.length; at += half) {
    for (let i = 0; i < size; i += 1) re[i] = (audio[at + i] as number) * (window[i] as number);
    im.fill(0);
    fft(re, im);
    for (let k = 0; k <= half; k += 1) {
      const both = k === 0 || k === half ? 1 : 2;
      const a = re[k] as number;
      const b = im[k] as number;
      out[k] = (out[k] as number) + both * (a * a + b * b);
    }
    count += 1;
  }
  const scale = count === 0 ? 0 : 1 / (count * weight * rate);
  for (let k = 0; k <= half; k += 1) out[k] = (out[k] as number) * scale;
  return out;
}
