import { addNoise, densityFor, meanPower } from './addNoise.ts';
import { convolve, type Envelope } from './convolve.ts';
import { type Fading, fade } from './fading.ts';
import { randomSource } from './randomSource.ts';
import { shift } from './shift.ts';
import { type LimitCurve, limitByCurve, softLimit } from './softLimit.ts';
import type { Taps } from './taps.ts';

/** The way from one microphone to another ear. */
export interface Over {
  /** Samples a second. */
  readonly rate: number;
  /** Shaping of the audio before the modulator; null for none. */
  readonly microphone: Taps | null;
  /** The sender's filter against its carrier. */
  readonly sender: Taps;
  /** How far the crests are driven over the final's ceiling (over its full drive, where its own
   *  curve is known), dB, and its knee; null: no ceiling. */
  readonly final: Final | null;
  readonly fading: Fading | null;
  /** Signal to noise, dB, in a bandwidth, Hz; null for no noise. */
  readonly noise: Noise | null;
  /** The receiver's carrier less the sender's, Hz. */
  readonly offTune: number;
  /** The receiver's filter against its own carrier; null for none. */
  readonly receiver: Taps | null;
  /** Shaping behind the detector; null for none. */
  readonly speaker: Taps | null;
  readonly seed: number;
}

interface Final {
  readonly over: number;
  /** How sharp the knee is, or the stage's own curve. */
  readonly knee: number | LimitCurve;
}

interface Noise {
  readonly ratio: number;
  readonly bandwidth: number;
  /** Whether the ratio is that of the signal's mean power or of its crests' (PEP). */
  readonly of: 'mean' | 'crest';
}

/**
 * What is heard at the other end: modulator, sender's filter, final, path, noise, receiver's filter,
 * product detector. A tone whose sideband passes with gain 1 comes out as strong as it went in.
 *
 * @param audio samples
 * @source closed form: complex envelopes. A double sideband has the audio itself as its envelope;
 *   a product detector takes the real part.
 */
export function hearOver(audio: Float64Array, over: Over): Float64Array {
  const { rate, microphone, sender, final, fading, noise, offTune, receiver, speaker } = over;
  const random = randomSource(over.seed);
  const spoken = microphone === null ? audio : convolve(audio, null, microphone).re;
  const { re, im } = convolve(spoken, null, sender);
  if (final !== null) {
    const ceiling = crest(re, im) / 10 ** (final.over / 20);
    if (typeof final.knee === 'number') softLimit(re, im, ceiling, final.knee);
    else {
      const { step, given, turn } = final.knee;
      limitByCurve(re, im, { step: step * ceiling, given: given.map((g) => g * ceiling), turn });
    }
  }
  const power = noise?.of === 'crest' ? crest(re, im) ** 2 : meanPower(re, im);
  if (fading !== null) fade(re, im, fading, rate, random);
  if (noise !== null) {
    addNoise(re, im, densityFor(power, noise.ratio, noise.bandwidth), rate, random);
  }
  shift(re, im, -offTune, rate);
  const heard = receiver === null ? re : convolve(re, im, receiver).re;
  // Half of a double sideband's voltage is in each of its sidebands.
  for (let i = 0; i < heard.length; i += 1) heard[i] = 2 * (heard[i] as number);
  return speaker === null ? heard : convolve(heard, null, speaker).re;
}

/** Share of the time that crests may be higher than what is called the crest. */
const RARE = 1e-3;

/** The size that an envelope hardly ever passes. */
export function crest(re: Float64Array, im: Envelope['im']): number {
  const bins = 512;
  let most = 0;
  for (let i = 0; i < re.length; i += 1) {
    const size = (re[i] as number) ** 2 + (im[i] as number) ** 2;
    if (size > most) most = size;
  }
  if (most === 0) return 1;
  const counts = new Uint32Array(bins + 1);
  const scale = bins / Math.sqrt(most);
  for (let i = 0; i < re.length; i += 1) {
    const at = (Math.sqrt((re[i] as number) ** 2 + (im[i] as number) ** 2) * scale) | 0;
    counts[at] = (counts[at] as number) + 1;
  }
  let above = 0;
  for (let at = bins; at > 0; at -= 1) {
    above += counts[at] as number;
    if (above > RARE * re.length) return (at + 1) / scale;
  }
  return 1 / scale;
}
