import { speechLevel } from './speechBands.ts';

/** What lies between a mouth and an ear, for the index. */
export interface Link {
  /** Samples a second that `sender` and `receiver` are known for. */
  readonly rate: number;
  /** Gain of the sender's and the receiver's filter, dB, evenly over the rate with the carrier in the
   *  middle, as `basebandFrequencies` has it; null: everything passes. */
  readonly sender: Float64Array;
  readonly receiver: Float64Array | null;
  /** Signal to noise, dB, in a bandwidth, Hz, in front of the receiver's filter. */
  readonly ratio: number;
  readonly bandwidth: number;
}

/** Powers in a hertz at the detector, at k·step: of speech, and of the path's noise. */
export interface LinkSpectrum {
  /** Hz */
  readonly step: number;
  readonly speech: Float64Array;
  readonly noise: Float64Array;
}

/**
 * Speech with normal effort through sender and receiver, and the path's white noise through the
 * receiver. The receiver is on tune; powers of both sidebands are added.
 *
 * @source closed form: as `hearOver` works it, in powers
 */
export function linkSpectrum(link: Link): LinkSpectrum {
  const { rate, sender, receiver, ratio, bandwidth } = link;
  const step = rate / sender.length;
  const middle = sender.length / 2;
  const power = (of: Float64Array | null, k: number) =>
    of === null ? 1 : 10 ** ((of[k] as number) / 10);
  const speech = new Float64Array(middle);
  const noise = new Float64Array(middle);
  const voice = spokenAt(step, middle);
  let sent = 0;
  for (let k = 1; k < middle; k += 1) {
    const spoken = voice[k] as number;
    const [up, down] = [middle + k, middle - k];
    const [sentUp, sentDown] = [power(sender, up), power(sender, down)];
    const [gotUp, gotDown] = [power(receiver, up), power(receiver, down)];
    sent += (spoken / 2) * (sentUp + sentDown) * step;
    speech[k] = spoken * (sentUp * gotUp + sentDown * gotDown);
    noise[k] = 2 * (gotUp + gotDown);
  }
  const density = sent / (10 ** (ratio / 10) * bandwidth);
  return { step, speech, noise: noise.map((one) => one * density) };
}

let known: { readonly step: number; readonly spoken: Float64Array } | null = null;

/** Power of normal speech in a hertz at k·step: the same for every link. */
function spokenAt(step: number, length: number): Float64Array {
  if (known?.step === step && known.spoken.length === length) return known.spoken;
  const spoken = new Float64Array(length);
  for (let k = 1; k < length; k += 1) spoken[k] = 10 ** (speechLevel(k * step) / 10);
  known = { step, spoken };
  return spoken;
}
