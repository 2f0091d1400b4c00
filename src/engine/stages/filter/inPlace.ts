import type { Couplings } from '../../circuit/couplings.ts';
import type { Crystal } from '../../circuit/crystal.ts';
import { crystalsAt } from '../../circuit/crystalLadder.ts';
import { sideBySide } from '../../circuit/sideBySide.ts';
import type { RowOf } from '../../fields/kinds.ts';
import type { Problem } from '../../fields/stage.ts';
import type { filterFields } from './fields.ts';
import type { FilterSeen } from './seen.ts';

export type PlaceRow = RowOf<(typeof filterFields)['results']['places']['columns']>;

/** A crystal by what is measured of it. */
interface Measured {
  readonly fs: number;
  readonly lm: number;
  readonly rm: number;
  readonly c0: number;
}

/** The crystals that a filter is made of. */
export interface InPlace {
  /** What the design is made for: their mean, or the crystal of Quartz. */
  readonly mean: Measured;
  /** One for each position, from source to load, doubled ones as one; null where all are alike. */
  readonly each: readonly Crystal[] | null;
  readonly rows: readonly PlaceRow[] | null;
  readonly problems: readonly Problem[];
}

/**
 * Takes the chosen crystals out of the bag; what was not measured of one is that of Quartz.
 *
 * @param couplings whose positions are to be filled
 */
export function inPlace(seen: FilterSeen, couplings: Couplings): InPlace {
  const { fs, lm, rm, c0, chosen, bag } = seen;
  const alike = { mean: { fs, lm, rm, c0 }, each: null, rows: null };
  const labels = labelsOf(chosen ?? '');
  if (labels.length === 0) return { ...alike, problems: [] };
  const lines = new Map<string, BagRow>();
  for (const row of bag ?? []) {
    if (row.label !== null && row.fs !== null) lines.set(key(row.label), row);
  }
  const problems = wrongWith(labels, lines, crystalsNeeded(couplings));
  if (problems.length > 0) return { ...alike, problems };
  const found = labels.map((label) => {
    const row = lines.get(key(label));
    const own = { fs: row?.fs ?? fs, lm: row?.lm ?? lm, rm: row?.rm ?? rm, c0: row?.c0 ?? c0 };
    return { label: row?.label ?? label, ...own };
  });
  const meanOf = (of: keyof Measured) =>
    found.reduce((sum, one) => sum + one[of], 0) / found.length;
  const mean = { fs: meanOf('fs'), lm: meanOf('lm'), rm: meanOf('rm'), c0: meanOf('c0') };
  return {
    mean,
    each: byPosition(found, couplings).map((here) =>
      sideBySide(
        here.map((one) => ({
          lm: one.lm,
          cm: 1 / ((2 * Math.PI * one.fs) ** 2 * one.lm),
          rm: one.rm,
          c0: one.c0,
        })),
      ),
    ),
    rows: found.map((one, i) => ({ position: i + 1, off: one.fs - mean.fs, ...one })),
    problems: [],
  };
}

/** How many crystals a filter takes. */
export const crystalsNeeded = (couplings: Couplings): number =>
  couplings.k.reduce((sum, _, i) => sum + crystalsAt(couplings, i + 1), crystalsAt(couplings, 0));

/** A list of crystals from source to load, gathered by the position that they stand at. */
export function byPosition<T>(all: readonly T[], couplings: Couplings): T[][] {
  let next = 0;
  return Array.from({ length: couplings.k.length + 1 }, (_, i) => {
    const first = next;
    next += crystalsAt(couplings, i);
    return all.slice(first, next);
  });
}

type BagRow = NonNullable<FilterSeen['bag']>[number];

const key = (label: string) => label.trim().toLowerCase();

/** Labels are parted by commas, semicolons or lines where there are any, else by spaces. */
function labelsOf(text: string): string[] {
  const by = /[,;\n\r]/.test(text.trim()) ? /[,;\n\r]+/ : /\s+/;
  return text
    .split(by)
    .map((label) => label.trim())
    .filter((label) => label !== '');
}

function wrongWith(
  labels: readonly string[],
  lines: ReadonlyMap<string, BagRow>,
  wanted: number,
): Problem[] {
  const say = (says: string, help: string): Problem[] => [
    { field: 'filter.chosen', weight: 'stops', says: `${says} All are taken as alike.`, try: help },
  ];
  if (lines.size === 0) return say('There is no bag to choose from.', 'Paste it under Bag.');
  const unknown = labels.filter((label) => !lines.has(key(label)));
  if (unknown.length > 0) {
    const names = unknown.slice(0, 3).map((label) => `“${label.slice(0, 20)}”`);
    return say(
      `${names.join(', ')}${unknown.length > 3 ? ' and others are' : unknown.length > 1 ? ' are' : ' is'} not in the bag.`,
      `Labels as the bag has them: ${[...lines.values()]
        .slice(0, 3)
        .map(({ label }) => label)
        .join(', ')} …`,
    );
  }
  const twice = labels.find((label, i) => labels.findIndex((one) => key(one) === key(label)) < i);
  if (twice !== undefined) {
    return say(`${twice} stands at two places.`, 'Each crystal can be used once.');
  }
  if (labels.length !== wanted) {
    return say(
      `The filter has ${wanted} crystals, and ${labels.length} ${labels.length === 1 ? 'is' : 'are'} named.`,
      labels.length < wanted
        ? 'Name one for each place.'
        : 'Leave some out, or ask for more poles.',
    );
  }
  return [];
}
