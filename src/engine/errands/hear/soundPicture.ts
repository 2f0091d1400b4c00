import { waterfall } from '../../circuit/audio/waterfall.ts';
import { RATE, type SoundPicture } from './hearAnswer.ts';

/** Lowest level that a picture shows, dB under the strongest. */
export const FLOOR = -45;

/** Window, highest frequency in Hz, moments in a second. */
const SIZE = 512;
const HIGHEST = 4000;
const MOMENTS = 32;

/** A picture of audio, small enough to be sent about. */
export function soundPicture(audio: Float64Array): SoundPicture {
  const seconds = audio.length / RATE;
  const wanted = Math.max(2, Math.round(seconds * MOMENTS));
  const { moments, frequencies, level } = waterfall(audio, RATE, SIZE, HIGHEST, wanted);
  return {
    moments,
    frequencies,
    step: RATE / SIZE,
    every: seconds / (moments - 1),
    level: Uint8Array.from(level, (db) => Math.round(255 * Math.max(0, 1 - db / FLOOR) ** 0.8)),
  };
}
