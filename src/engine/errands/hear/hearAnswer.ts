import type { Waterfall } from '../../circuit/audio/waterfall.ts';
import type { Variant } from '../../stages/compare/variants.ts';

/** Samples a second of all that is heard. */
export const RATE = 16_000;

/** A picture of audio as bytes of ink: 255 is the strongest, 0 what is too weak to be drawn. */
export interface SoundPicture extends Omit<Waterfall, 'level'> {
  /** Hz from one frequency to the next, s from one moment to the next. */
  readonly step: number;
  readonly every: number;
  readonly level: Uint8Array;
}

/** Something to listen to. */
export interface Heard {
  /** `0` is the voice as it was spoken, the others are filters. */
  readonly name: '0' | Variant['name'];
  /** Samples, all equally strong; null where the filter came to nothing. */
  readonly audio: Float32Array<ArrayBuffer> | null;
  readonly picture: SoundPicture | null;
  /** Long-term spectrum, dB against the voice at its strongest, every `spectrumStep` Hz from 0 on. */
  readonly spectrum: Float64Array | null;
  /** What is wrong with the filter, in words. */
  readonly says: readonly string[];
}

/** All that there is to listen to, the voice first. */
export interface HearAnswer {
  readonly rate: typeof RATE;
  readonly seconds: number;
  readonly spectrumStep: number;
  /** Whether the final's own curve could be used. */
  readonly final: 'exact' | 'knee' | 'straight';
  readonly heard: readonly Heard[];
}
