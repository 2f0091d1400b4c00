import { speechBands } from './speechBands.ts';
import { spreadOfMasking } from './spreadOfMasking.ts';

/** What is taken into account besides speech against noise. */
export interface Listening {
  /** Strong low bands cover higher ones. */
  readonly masking: boolean;
  /** A good ear's own noise, and that shouting is harder to follow; levels are then those at the ear. */
  readonly ear: boolean;
}

const plain: Listening = { masking: false, ear: false };

/** Peaks of speech stand so much over its level; beneath them so much is of use. dB */
const PEAKS = 15;
const RANGE = 30;

/**
 * Speech intelligibility index: how much of what carries meaning is over the noise, from 0 to 1.
 *
 * A planning figure: above 0.75 a good link, below 0.45 a poor one.
 *
 * @param speech, noise spectrum level in each band of `speechBands`, dB; −Infinity for nothing
 * @param audible receives the audible part of each band, 0 to 1
 * @source ANSI S3.5-1997, one-third octave procedure: S = Σ Iᵢ·Aᵢ, Aᵢ = (SNRᵢ + 15)/30 from 0 to 1
 */
export function intelligibility(
  speech: Float64Array,
  noise: Float64Array,
  listening: Listening = plain,
  audible: Float64Array = new Float64Array(speechBands.length),
): number {
  const covered = listening.masking ? spreadOfMasking(speech, noise) : noise;
  let sum = 0;
  speechBands.forEach((band, i) => {
    const level = speech[i] as number;
    const against = covered[i] as number;
    const disturbance = listening.ear ? Math.max(against, band.ear) : against;
    const over = level === -Infinity ? -Infinity : level - disturbance;
    const heard = Math.min(1, Math.max(0, (over + PEAKS) / RANGE));
    // Over normal effort by more than 10 dB the sounds themselves get worse.
    const strain = listening.ear
      ? Math.min(1, Math.max(0, 1 - (level - band.speech - 10) / 160))
      : 1;
    audible[i] = heard * strain;
    sum += band.importance * (audible[i] as number);
  });
  return sum;
}
