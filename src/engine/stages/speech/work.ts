import { type IndexOver, indexAt, indexOver } from '../../circuit/speech/indexOver.ts';
import type { LinkSpectrum } from '../../circuit/speech/linkSpectrum.ts';
import { spectrumIndex } from '../../circuit/speech/spectrumIndex.ts';
import { bandEdges, speechBands } from '../../circuit/speech/speechBands.ts';
import { rememberBut } from '../../fields/remember.ts';
import { noResults, type Work } from '../../fields/stage.ts';
import { dbOfPowerRatio, powerRatioOfDb } from '../../quantity/decibel.ts';
import { format } from '../../quantity/format.ts';
import { speechFields } from './fields.ts';
import { linkOf } from './linkOf.ts';
import type { SpeechSeen } from './seen.ts';

/** Grades of the index. Source: ANSI S3.5-1997, from memory. */
export const GRADES = { good: 0.75, poor: 0.45 } as const;

/** The chart: signal over noise, dB. */
const CHART = { from: -10, to: 40, step: 2.5 } as const;

/** So far over the noise hardly any of it is heard, dB: what counts as none. */
export const QUIET = 40;

interface Prepared {
  readonly spectrum: LinkSpectrum | null;
  readonly filters: readonly { readonly filter: string; readonly over: IndexOver }[];
}

/** The filter as it is and with either edge moved, for any signal over noise. */
const preparedOf = rememberBut<SpeechSeen, 'ratio' | 'speechMean', Prepared>(
  ['ratio', 'speechMean'],
  (seen) => {
    const { audio, bandwidth, more } = seen;
    if (audio === null || bandwidth === null || bandwidth <= 0) {
      return { spectrum: null, filters: [] };
    }
    const placed = { ...seen, audio, bandwidth };
    const spectrum = linkOf(placed, { lower: 0, higher: 0 });
    return {
      spectrum,
      filters: [
        { filter: 'As it is', over: indexOver(spectrum) },
        {
          filter: `Lower edge ${format(more, 'Hz', 3)} lower`,
          over: indexOver(linkOf(placed, { lower: more, higher: 0 })),
        },
        {
          filter: `Upper edge ${format(more, 'Hz', 3)} higher`,
          over: indexOver(linkOf(placed, { lower: 0, higher: more })),
        },
      ],
    };
  },
);

/** How much of what carries meaning gets through. */
export function workSpeech(seen: SpeechSeen): Work<typeof speechFields> {
  const { ratio, speechMean } = seen;
  const nothing = { results: noResults(speechFields), problems: [] };
  const { spectrum, filters: prepared } = preparedOf(seen);
  if (spectrum === null) return nothing;
  // The ratio is that of the peak; what counts is speech's mean.
  const mean = dbOfPowerRatio(speechMean);
  const now = (ratio ?? QUIET) + mean;
  const filters = prepared.map(({ filter, over }) => ({
    filter,
    over,
    index: indexAt(over, now),
    best: indexAt(over, QUIET + mean),
  }));
  const [asIs, lower, higher] = filters;
  if (!asIs || !lower || !higher) return nothing;
  const { index, best } = asIs;
  const ratios = Float64Array.from(
    { length: (CHART.to - CHART.from) / CHART.step + 1 },
    (_, i) => CHART.from + i * CHART.step,
  );
  const along = ({ over }: typeof asIs) => ratios.map((one) => indexAt(over, one + mean));
  return {
    results: {
      index,
      best,
      share: best === 0 ? null : index / best,
      grade: index > GRADES.good ? 'good' : index < GRADES.poor ? 'poor' : 'fair',
      edges: filters.map((one) => ({
        filter: one.filter,
        index: one.index,
        gain: one.index - index,
        best: one.best,
      })),
      bands: bandsOf(spectrum, now),
      overNoise: {
        ratio: ratios,
        asIs: along(asIs),
        lower: along(lower),
        higher: along(higher),
      },
    },
    problems: [],
  };
}

/** Each band by what is heard of it. */
function bandsOf({ step, speech, noise }: LinkSpectrum, ratio: number) {
  const audible = new Float64Array(speechBands.length);
  const density = powerRatioOfDb(-ratio);
  spectrumIndex(
    step,
    speech,
    noise.map((one) => one * density),
    audible,
  );
  return speechBands.map(({ middle, importance }, i) => {
    const [low, high] = bandEdges(middle);
    const width = high - low;
    const part = audible[i] ?? 0;
    return {
      middle,
      importance,
      width,
      heard: part * width,
      audible: part,
      brings: importance * part,
    };
  });
}
