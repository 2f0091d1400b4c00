import { format } from '../../quantity/format.ts';
import { attenuationAt, facingEdge, type Skirt } from './placement.ts';
import { suppressionAt, TEST_TONE, voiceCurve, worstTone } from './tones.ts';

/** What the ear gets of a carrier at a frequency. */
export function heard(f: number | null, fs: number, skirt: Skirt) {
  const { gain, way, low3, high3, low6, high6 } = skirt;
  if (f === null) {
    return {
      frequency: null,
      aboveFs: null,
      attenuation: null,
      outside: null,
      sideband: null,
      tone: null,
      audioLow6: null,
      audioHigh6: null,
      audioLow3: null,
      audioHigh3: null,
      suppression300: null,
      suppression1k: null,
      suppressionWorst: null,
      audio: null,
    };
  }
  const at = (product: string, frequency: number) => ({
    product,
    frequency,
    attenuation: -gain(frequency),
  });
  const inner = edges(f, way, low3, high3);
  const megahertz = format(f, 'Hz', 7);
  return {
    frequency: f,
    aboveFs: f - fs,
    attenuation: attenuationAt(skirt, f),
    outside: way * (f - facingEdge(skirt)),
    sideband: gain(f - TEST_TONE) > gain(f + TEST_TONE) ? ('lower' as const) : ('upper' as const),
    tone: [
      at(`${megahertz} − 1 kHz`, f - TEST_TONE),
      at(`${megahertz} + 1 kHz`, f + TEST_TONE),
      at('carrier, as far as the modulator lets it through', f),
    ],
    ...edges(f, way, low6, high6),
    audioLow3: inner.audioLow6,
    audioHigh3: inner.audioHigh6,
    suppression300: suppressionAt(gain, f, way, 300),
    suppression1k: suppressionAt(gain, f, way, 1000),
    suppressionWorst: suppressionAt(gain, f, way, worstTone(gain, f, way)),
    audio: voiceCurve(gain, f, way),
  };
}

/** Audio at −6 dB: from the edge that faces the carrier to the one that does not. */
export function edges(f: number, way: 1 | -1, low6: number, high6: number) {
  const audioLow6 = Math.max(way === 1 ? f - high6 : low6 - f, 0);
  const audioHigh6 = way === 1 ? f - low6 : high6 - f;
  return { audioLow6, audioHigh6: audioHigh6 > 0 ? audioHigh6 : null };
}
