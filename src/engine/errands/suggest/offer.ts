import { candidateNetwork } from '../../stages/output/built.ts';
import type { OutputSeen } from '../../stages/output/seen.ts';
import { familyAllowed, matchAllowed, type Wishes } from '../../stages/suggest/allowed.ts';
import type { Candidate } from '../../stages/suggest/candidates.ts';
import type { Lack, Offered } from './suggestAnswer.ts';

/** What a network has to keep to be suggested. */
export interface Asked extends Wishes {
  readonly mostParts: number;
  /** dB */
  readonly marginWanted: number;
  readonly fitLeast: number;
  readonly lossMost: number;
  /** Share of the power wanted. */
  readonly powerLeast: number;
}

/**
 * Builds a network and works it just as the Network leaf does. Null where it can't be built.
 *
 * @param output what the Network leaf sees of the present rig
 */
export function offer(candidate: Candidate, output: OutputSeen, asked: Asked): Offered | null {
  const made = candidateNetwork({ ...output, ...candidate.choice });
  if ('refusal' in made) return null;
  const { results } = made;
  const { elements, loss, returnLoss, pepAntenna, worstMargin: margin, partCount: parts } = results;
  if (![loss, returnLoss, pepAntenna].every(Number.isFinite)) return null;
  const coils = results.coils.length;
  const transformers = results.transformerRatio === null ? 0 : 1;
  const capacitors = parts - coils - transformers;
  const hottest = elements.reduce<(typeof elements)[number] | null>(
    (most, row) => ((row.heat ?? 0) > (most?.heat ?? 0) ? row : most),
    null,
  );
  const lacks: Lack[] = [];
  if (margin !== null && margin < asked.marginWanted) lacks.push('margin');
  if (returnLoss < asked.fitLeast) lacks.push('fit');
  if (loss > asked.lossMost) lacks.push('loss');
  if (pepAntenna < asked.powerLeast * output.pep) lacks.push('power');
  if (parts > asked.mostParts) lacks.push('parts');
  if (!matchAllowed(candidate, asked)) lacks.push('match');
  if (!familyAllowed(candidate.family, asked)) lacks.push('family');
  return {
    entries: {
      ...Object.fromEntries(
        Object.entries(candidate.choice).map(([key, value]) => [`output.${key}`, String(value)]),
      ),
      // Parts measured in another network are none of this one.
      'output.measured': '',
    },
    words: candidate.words,
    kind: candidate.kind,
    capacitors,
    coils,
    transformers,
    parts,
    margin,
    order: results.worstOrder,
    loss,
    returnLoss,
    power: pepAntenna,
    heat: hottest?.heat ?? 0,
    hottest: hottest?.label ?? '',
    lacks,
    harmonics: results.harmonics.flatMap(({ order, frequency, level, limit, outcome }) =>
      order === null || frequency === null || level === null || limit === null || outcome === null
        ? []
        : [{ order, frequency, level, limit, outcome }],
    ),
  };
}
