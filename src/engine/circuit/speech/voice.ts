import { type RandomSource, randomSource } from '../audio/randomSource.ts';
import { likeSpeech } from './likeSpeech.ts';
import { STEPS, type Utterance, utterance } from './utterance.ts';

/** Fourth and fifth formant, Hz, and the widths of all five: they hardly move. */
const HIGH = [3500, 4500] as const;
const WIDTHS = [70, 95, 140, 220, 300] as const;

/** Part of a period in which the glottis is open. */
const OPEN = 0.6;

/** Strength of breath and hiss against the voice. */
const BREATH = 0.12;
const HISS = 0.5;

/**
 * Something like a voice: no recording, no words; pulses and noise through resonances that move as
 * in speech. The same seed gives the same samples. Its long-term spectrum is that of speech with
 * normal effort (ANSI S3.5-1997), its effective value 1.
 *
 * @param seconds how long
 * @param rate samples a second, 16 kHz or more
 * @source resonators in a row: D. H. Klatt, J. Acoust. Soc. Am. 67, 1980; glottal pulse: D. H. Klatt
 *   & L. C. Klatt, J. Acoust. Soc. Am. 87, 1990
 */
export function voice(seconds: number, rate: number, seed: number, pitch = 115): Float64Array {
  const random = randomSource(seed);
  const tracks = utterance(seconds, pitch, random);
  const audio = sound(tracks, Math.round(seconds * rate), rate, random);
  return likeSpeech(audio, rate);
}

/** Coefficients and memory of a resonator: a, b, c, and the last two outputs. */
const PLACES = 5;

function tune(of: Float64Array, n: number, at: number, width: number, rate: number): void {
  const c = -Math.exp((-2 * Math.PI * width) / rate);
  const b = 2 * Math.exp((-Math.PI * width) / rate) * Math.cos((2 * Math.PI * at) / rate);
  of[PLACES * n] = 1 - b - c;
  of[PLACES * n + 1] = b;
  of[PLACES * n + 2] = c;
}

function through(of: Float64Array, n: number, x: number): number {
  const p = PLACES * n;
  const y =
    (of[p] as number) * x +
    (of[p + 1] as number) * (of[p + 3] as number) +
    (of[p + 2] as number) * (of[p + 4] as number);
  of[p + 4] = of[p + 3] as number;
  of[p + 3] = y;
  return y;
}

function sound(
  tracks: Utterance,
  count: number,
  rate: number,
  { even, normal }: RandomSource,
): Float64Array {
  const audio = new Float64Array(count);
  const throat = new Float64Array(PLACES * 5);
  const mouth = new Float64Array(PLACES);
  const per = rate / STEPS;
  HIGH.forEach((at, i) => {
    tune(throat, 3 + i, at, WIDTHS[3 + i] as number, rate);
  });
  let phase = 0;
  let wobble = 1;
  for (let step = 0; step * per < count; step += 1) {
    const value = (of: Float64Array) => of[Math.min(step, of.length - 1)] as number;
    const next = (of: Float64Array) => of[Math.min(step + 1, of.length - 1)] as number;
    tracks.formants.forEach((of, n) => {
      tune(throat, n, value(of), WIDTHS[n] as number, rate);
    });
    tune(mouth, 0, value(tracks.hissAt), value(tracks.hissWidth), rate);
    // A hiss is as strong at any width and place: its resonator's own gain is taken out.
    const loud = hissGain(mouth);
    const [v0, v1] = [value(tracks.voice), next(tracks.voice)];
    const [b0, b1] = [value(tracks.breath), next(tracks.breath)];
    const [h0, h1] = [value(tracks.hiss), next(tracks.hiss)];
    const turn = value(tracks.pitch) / rate;
    const from = Math.round(step * per);
    const to = Math.min(count, Math.round((step + 1) * per));
    for (let i = from; i < to; i += 1) {
      const t = (i - from) / per;
      phase += turn * wobble;
      if (phase >= 1) {
        phase -= 1;
        wobble = 1 + 0.02 * (even() - 0.5);
      }
      const u = phase / OPEN;
      const pulse = u < 1 ? 2 * u - 3 * u * u : 0;
      const air = normal();
      let y = (v0 + (v1 - v0) * t) * (pulse + 0.02 * air) + BREATH * (b0 + (b1 - b0) * t) * air;
      for (let n = 0; n < 5; n += 1) y = through(throat, n, y);
      audio[i] = y + HISS * (h0 + (h1 - h0) * t) * loud * through(mouth, 0, air);
    }
  }
  return audio;
}

/** What makes white noise through a resonator come out with effective value 1. */
function hissGain(of: Float64Array): number {
  const [a, b, c] = [of[0] as number, of[1] as number, of[2] as number];
  // Power of an autoregression of the second order, closed form.
  return Math.sqrt(((1 + c) * ((1 - c) ** 2 - b * b)) / (1 - c)) / a;
}
