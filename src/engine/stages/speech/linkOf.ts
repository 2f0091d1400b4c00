import { WIDE } from '../../circuit/audio/wideFilter.ts';
import { linkSpectrum } from '../../circuit/speech/linkSpectrum.ts';
import type { SpeechSeen } from './seen.ts';

/** Rate that the link is worked at, samples a second, and points over it: 31 Hz from one to the next, when the
 *  voice through the filter is known every 50 Hz. */
const RATE = 8000;
const POINTS = 256;
/** Nothing that a filter does is seen deeper than this, dB. */
const DEEP = -200;

/** How an edge of the filter is moved outwards, Hz. */
export interface Moved {
  readonly lower: number;
  readonly higher: number;
}

type Placed = Pick<SpeechSeen, 'ways' | 'micLow' | 'micHigh'> & {
  readonly audio: NonNullable<SpeechSeen['audio']>;
  readonly bandwidth: number;
};

/**
 * Speech and noise at the detector with both equally strong in the noise bandwidth.
 *
 * @param moved which edges are moved
 */
export function linkOf({ audio, ways, micLow, micHigh, bandwidth }: Placed, moved: Moved) {
  const own = new Float64Array(POINTS).fill(DEEP);
  const wide = new Float64Array(POINTS).fill(DEEP);
  const middle = ((audio.tone[0] ?? 0) + (audio.tone[audio.tone.length - 1] ?? 0)) / 2;
  for (let i = 0; i < POINTS; i += 1) {
    // The wanted sideband is laid upwards, whichever it is.
    const offset = (RATE * (i - POINTS / 2)) / POINTS;
    own[i] = gainAt(audio, offset < middle ? offset + moved.lower : offset - moved.higher);
    wide[i] = offset >= WIDE.low && offset <= WIDE.high ? 0 : DEEP;
  }
  const sender = (ways === 'receives' ? wide : own).map(
    (gain, i) => gain + edges((RATE * (i - POINTS / 2)) / POINTS, micLow, micHigh),
  );
  const receiver = ways === 'sends' ? wide : own;
  return linkSpectrum({ rate: RATE, sender, receiver, ratio: 0, bandwidth });
}

/** The filter on either side of the carrier, dB: the wanted sideband at positive tones. */
function gainAt({ tone, wanted, opposite }: Placed['audio'], offset: number): number {
  const first = tone[0] ?? 0;
  const step = (tone[1] ?? 0) - first;
  const size = Math.abs(offset);
  const of = offset > 0 ? wanted : opposite;
  if (size >= first) return between(of, (size - first) / step);
  // Between the first tone on one side and the first one on the other.
  const [from, to] = [opposite[0] ?? DEEP, wanted[0] ?? DEEP];
  return from + ((to - from) * (offset + first)) / (2 * first);
}

function between(of: Float64Array, at: number): number {
  const last = of.length - 1;
  if (at >= last) return of[last] ?? DEEP;
  const k = Math.floor(at);
  const from = of[k] ?? DEEP;
  return from + ((of[k + 1] ?? DEEP) - from) * (at - k);
}

/** What the microphone amplifier's edges leave of a tone, dB. */
function edges(tone: number, low: number | null, high: number | null): number {
  if (tone === 0) return low === null ? 0 : DEEP;
  const under = low === null ? 0 : (low / tone) ** 2;
  const over = high === null ? 0 : (tone / high) ** 2;
  return -10 * Math.log10((1 + under) * (1 + over));
}
