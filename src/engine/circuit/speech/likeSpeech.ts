import { convolve } from '../audio/convolve.ts';
import { effective } from '../audio/levelMatch.ts';
import { powerSpectrum } from '../audio/powerSpectrum.ts';
import { tapsOf } from '../audio/taps.ts';
import { bandLevels } from './bandLevels.ts';
import { speechBands } from './speechBands.ts';

const POINTS = 1024;
const WINDOW = 2048;
/** A band reaches into its neighbours: what is left after one pass the next one mends. */
const PASSES = 2;

/** More than this a band is not raised or lowered, dB: sounds that are not there can't be made. */
const MOST = 20;

/** Under this there is no voice, Hz. */
const LOWEST = 80;

/**
 * Shapes a sound so that its long-term spectrum is that of speech with normal effort, and makes its
 * effective value 1.
 *
 * @param rate samples a second
 * @source levels: ANSI S3.5-1997, table 3
 */
export function likeSpeech(audio: Float64Array, rate: number): Float64Array {
  let shaped = audio;
  for (let i = 0; i < PASSES; i += 1) shaped = nearer(shaped, rate);
  const scale = 1 / (effective(shaped) || 1);
  return shaped.map((one) => one * scale);
}

/** One pass: each band by what it lacks. */
function nearer(audio: Float64Array, rate: number): Float64Array {
  const levels = bandLevels(powerSpectrum(audio, rate, WINDOW), rate / WINDOW);
  const lacks = speechBands.map(({ speech }, i) => speech - (levels[i] as number));
  const known = lacks.filter(Number.isFinite);
  const mean = known.reduce((sum, one) => sum + one, 0) / Math.max(1, known.length);
  const raise = lacks.map((one) =>
    Number.isFinite(one) ? Math.min(MOST, Math.max(-MOST, one - mean)) : 0,
  );
  const re = new Float64Array(POINTS);
  for (let k = 0; k < POINTS; k += 1) {
    const f = (rate * Math.min(k, POINTS - k)) / POINTS;
    re[k] = f < LOWEST ? 0 : 10 ** (between(raise, f) / 20);
  }
  return convolve(audio, null, tapsOf(re, new Float64Array(POINTS))).re;
}

/** What to raise a frequency by: straight lines over its logarithm from band to band. */
function between(raise: readonly number[], f: number): number {
  const last = speechBands.length - 1;
  const at = 3 * Math.log2(f / (speechBands[0] as { middle: number }).middle);
  if (at <= 0) return raise[0] as number;
  if (at >= last) return raise[last] as number;
  const i = Math.floor(at);
  const a = raise[i] as number;
  return a + ((raise[i + 1] as number) - a) * (at - i);
}
