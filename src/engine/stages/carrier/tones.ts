/** First and last tone of the voice for which suppression is judged, and their spacing, Hz. */
export const VOICE = { low: 300, high: 2700, step: 100 } as const;
/** Tones of the chart, Hz. */
const CHART = { low: 100, high: 3500, step: 50 } as const;
/** Audio tone that is sent through the modulator to see which sideband comes out, Hz. */
export const TEST_TONE = 1000;

/** Gain of the filter in dB at a frequency in Hz. */
export type Gain = (f: number) => number;

/**
 * How far the other sideband lies below the wanted one, dB, the same tone on both sides.
 *
 * @param carrier Hz
 * @param way +1 where the carrier lies above the passband, −1 below
 * @param tone audio, Hz
 */
export const suppressionAt = (gain: Gain, carrier: number, way: 1 | -1, tone: number): number =>
  gain(carrier - way * tone) - gain(carrier + way * tone);

/** The tone of the voice with the least suppression, Hz. */
export function worstTone(gain: Gain, carrier: number, way: 1 | -1): number {
  let worst: number = VOICE.low;
  let least = Number.POSITIVE_INFINITY;
  for (let tone: number = VOICE.low; tone <= VOICE.high; tone += VOICE.step) {
    const s = suppressionAt(gain, carrier, way, tone);
    if (s < least) {
      least = s;
      worst = tone;
    }
  }
  return worst;
}

/** The voice on both sides of a carrier, for the chart. */
export interface VoiceCurve {
  /** Hz */
  readonly tone: Float64Array;
  /** dB */
  readonly wanted: Float64Array;
  readonly opposite: Float64Array;
  readonly suppression: Float64Array;
}

/** Each tone of the chart through the filter, on the wanted side and on the other. */
export function voiceCurve(gain: Gain, carrier: number, way: 1 | -1): VoiceCurve {
  const points = Math.round((CHART.high - CHART.low) / CHART.step) + 1;
  const curve = {
    tone: new Float64Array(points),
    wanted: new Float64Array(points),
    opposite: new Float64Array(points),
    suppression: new Float64Array(points),
  };
  for (let i = 0; i < points; i += 1) {
    const tone = CHART.low + i * CHART.step;
    const wanted = gain(carrier - way * tone);
    const opposite = gain(carrier + way * tone);
    curve.tone[i] = tone;
    curve.wanted[i] = wanted;
    curve.opposite[i] = opposite;
    curve.suppression[i] = wanted - opposite;
  }
  return curve;
}
