import { audioEdges } from '../../circuit/audio/audioEdges.ts';
import { basebandFrequencies, basebandTaps } from '../../circuit/audio/baseband.ts';
import { conditions } from '../../circuit/audio/fading.ts';
import { type FinalOverDrive, finalCurve } from '../../circuit/audio/finalCurve.ts';
import { hearOver, type Over } from '../../circuit/audio/hearOver.ts';
import { effective, levelMatch } from '../../circuit/audio/levelMatch.ts';
import { powerSpectrum } from '../../circuit/audio/powerSpectrum.ts';
import type { Taps } from '../../circuit/audio/taps.ts';
import { wideFilter } from '../../circuit/audio/wideFilter.ts';
import { ladderResponse } from '../../circuit/ladderResponse.ts';
import { voice } from '../../circuit/speech/voice.ts';
import type { CarrierSeen } from '../../stages/carrier/seen.ts';
import type { Variant } from '../../stages/compare/variants.ts';
import type { FilterSeen } from '../../stages/filter/seen.ts';
import { designVariant } from '../compare/designVariant.ts';
import { under } from '../compare/named.ts';
import type { Share } from '../errand.ts';
import { type HearAnswer, type Heard, RATE } from './hearAnswer.ts';
import type { HearSeen } from './seen.ts';
import { soundPicture } from './soundPicture.ts';

/** What comes to the errand besides the rig; none of it is kept. */
export interface HearBeside {
  /** One's own sound at `RATE`; null for the voice by formula. */
  readonly audio: Float32Array | null;
  /** The final over its drive, where that has been worked. */
  readonly final: FinalOverDrive | null;
}

/** How long the voice by formula is, s, and which throw of the dice it is. */
const SECONDS = 10;
const SEED = 1;
/** The noise is the same for each filter: what differs is the filter. */
const NOISE_SEED = 7;

const WINDOW = 1024;

/** What one share brings: the filters that it worked. */
export type HearPart = Omit<HearAnswer, 'heard'> & {
  readonly heard: readonly (Heard & { readonly place: number })[];
};

/** Makes what is heard through each filter; yields the share done. */
export function* hearWork(seen: HearSeen, share: Share): Generator<number, HearPart, void> {
  const beside = seen.beside as HearBeside | null;
  const spoken = spokenOf(beside?.audio ?? null);
  const size = effective(spoken) || 1;
  const strongest = strongestOf(spoken);
  const final = finalOf(seen, beside?.final ?? null);
  const places = [null, ...seen.variants].map((variant, place) => ({ variant, place }));
  const mine = places.filter(({ place }) => place % share.of === share.index);
  const heard: (Heard & { place: number })[] = [];
  for (const { variant, place } of mine) {
    const { audio, says } = variant ? through(seen, variant, final, spoken) : plain(spoken);
    if (audio) levelMatch(audio, spoken);
    heard.push({
      place,
      name: variant?.name ?? '0',
      audio: audio ? Float32Array.from(audio, (one) => (LOUD * one) / size) : null,
      picture: audio && soundPicture(audio),
      spectrum: audio && spectrumOf(audio, strongest),
      says,
    });
    yield heard.length / mine.length;
  }
  return {
    rate: RATE,
    seconds: spoken.length / RATE,
    spectrumStep: RATE / WINDOW,
    final: final.is,
    heard,
  };
}

/** Effective value of what is played: its crests stay under full scale. */
const LOUD = 0.1;

/** Puts the shares together, in the order in which filters are named. */
export const mergeHeard = (parts: readonly HearPart[]): HearAnswer => {
  const [first] = parts as [HearPart];
  const heard = parts.flatMap((part) => part.heard).sort((a, b) => a.place - b.place);
  return { ...first, heard: heard.map(({ place: _, ...one }) => one) };
};

const plain = (audio: Float64Array) => ({ audio: audio.slice(), says: [] as readonly string[] });

/** The voice by formula, made once. */
let made: Float64Array | null = null;

function spokenOf(own: Float32Array | null): Float64Array {
  if (own) return Float64Array.from(own);
  made ??= voice(SECONDS, RATE, SEED);
  return made;
}

interface Final {
  readonly is: HearAnswer['final'];
  readonly over: Over['final'];
}

function finalOf(seen: HearSeen, curve: FinalOverDrive | null): Final {
  const { over } = seen;
  if (seen.final === 'straight') return { is: 'straight', over: null };
  if (seen.final === 'exact' && curve) {
    return { is: 'exact', over: { over, knee: finalCurve(curve) } };
  }
  return { is: 'knee', over: { over, knee: seen.knee } };
}

/** The voice through one filter, or why there is none. */
function through(seen: HearSeen, variant: Variant, final: Final, spoken: Float64Array) {
  const { results, says, heard } = designVariant(
    variant,
    under('filter_', seen) as FilterSeen,
    under('carrier_', seen) as CarrierSeen,
  );
  const { ladder, noiseBandwidth } = results;
  const carrier = heard?.frequency ?? null;
  if (!ladder || carrier === null) return { audio: null, says };
  const frequency = basebandFrequencies(carrier, RATE);
  const gain = new Float64Array(frequency.length);
  const phase = new Float64Array(frequency.length);
  ladderResponse(ladder, frequency, { gain, phase });
  const own = basebandTaps(gain, phase);
  const wide = wideFilter(seen.side, RATE);
  const bandwidth = seen.noiseBandwidth ?? noiseBandwidth ?? 0;
  const audio = hearOver(spoken, {
    rate: RATE,
    microphone: edges(seen.micLow, seen.micHigh),
    sender: seen.ways === 'receives' ? wide : own,
    final: final.over,
    fading: seen.fadingUsed === 'none' ? null : conditions[seen.fadingUsed],
    noise:
      seen.ratioUsed === null || bandwidth === 0
        ? null
        : { ratio: seen.ratioUsed, bandwidth, of: 'crest' },
    offTune: seen.offTune,
    receiver: seen.ways === 'sends' ? wide : own,
    speaker: edges(seen.speakerLow, seen.speakerHigh),
    seed: NOISE_SEED,
  });
  return { audio, says };
}

const edges = (low: number | null, high: number | null): Taps | null =>
  low === null && high === null
    ? null
    : audioEdges(low ?? 0, high ?? Number.POSITIVE_INFINITY, RATE);

const strongestOf = (audio: Float64Array): number =>
  powerSpectrum(audio, RATE, WINDOW).reduce((most, one) => Math.max(most, one), 0);

/** Long-term spectrum against the strongest of the voice, dB. */
function spectrumOf(audio: Float64Array, strongest: number): Float64Array {
  const power = powerSpectrum(audio, RATE, WINDOW);
  return power.map((one) => 10 * Math.log10(one / (strongest || 1) + 1e-12));
}
