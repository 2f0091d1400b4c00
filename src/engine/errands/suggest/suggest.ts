import type { OutputSeen } from '../../stages/output/seen.ts';
import { candidates } from '../../stages/suggest/candidates.ts';
import { helpFor } from './helpFor.ts';
import { inOrder, type Prefer } from './inOrder.ts';
import { type Asked, offer } from './offer.ts';
import type { Offered, SuggestAnswer } from './suggestAnswer.ts';

/** Most runners-up that are shown. */
const SHOWN = 10;

/** Networks between two looks at the clock. */
const SLICE = 10;

/** Builds and works every network, and puts those that pass in order. */
export function* suggest(
  output: OutputSeen,
  asked: Asked & { readonly prefer: Prefer },
): Generator<number, SuggestAnswer, void> {
  const list = candidates(output.collectorLoad, output.antenna);
  const worked: Offered[] = [];
  for (let i = 0; i < list.length; i += 1) {
    const candidate = list[i];
    const one = candidate === undefined ? null : offer(candidate, output, asked);
    if (one !== null) worked.push(one);
    if (i % SLICE === 0) yield i / list.length;
  }
  const better = inOrder(asked.prefer);
  const passing = worked.filter(({ lacks }) => lacks.length === 0).sort(better);
  const ranked = bestOfEach(passing);
  const nearest = [...worked].sort(
    (a, b) => shortBy(a, asked, output.pep) - shortBy(b, asked, output.pep) || better(a, b),
  );
  return {
    looked: list.length,
    passed: passing.length,
    ranked: ranked.slice(0, SHOWN),
    nearest: passing.length > 0 ? [] : bestOfEach(nearest.filter(isAllowed)).slice(0, 3),
    help: passing.length > 0 ? [] : helpFor(worked, asked, better),
    all: bestOfEach([...passing, ...nearest.filter(isAllowed)]).map(
      ({ words, parts, margin, lacks }) => ({ words, parts, margin, lacks }),
    ),
  };
}

/** The first of each kind. */
function bestOfEach(sorted: readonly Offered[]): Offered[] {
  const seen = new Set<string>();
  return sorted.filter(({ kind }) => {
    if (seen.has(kind)) return false;
    seen.add(kind);
    return true;
  });
}

/** Does it keep to what the user wants it made of? */
const isAllowed = ({ lacks }: Offered): boolean =>
  !lacks.some((lack) => lack === 'parts' || lack === 'match' || lack === 'family');

/** By how many decibels it misses what is asked, all together. */
export function shortBy(one: Offered, asked: Asked, pep: number): number {
  return (
    Math.max(0, asked.marginWanted - (one.margin ?? asked.marginWanted)) +
    Math.max(0, asked.fitLeast - one.returnLoss) +
    Math.max(0, one.loss - asked.lossMost) +
    Math.max(0, 10 * Math.log10((asked.powerLeast * pep) / one.power))
  );
}
