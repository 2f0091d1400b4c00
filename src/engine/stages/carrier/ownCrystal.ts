import { seriesResonance } from '../../circuit/crystal.ts';
import { sideBySide } from '../../circuit/sideBySide.ts';
import type { Problem } from '../../fields/stage.ts';
import type { CarrierSeen } from './seen.ts';

/** The crystal of the oscillator; of several side by side, one of as many alike. Hz, H, Ω, F. */
export interface OwnCrystal {
  readonly fs: number;
  readonly lm: number;
  readonly rm: number;
  readonly c0: number;
  readonly count: number;
  /** Those named, with their figures; none where it is like those of the filter. */
  readonly named: readonly Named[];
  readonly problems: readonly Problem[];
}

export interface Named {
  readonly label: string;
  readonly fs: number;
  readonly lm: number;
  readonly rm: number;
  readonly c0: number;
}

/** Most crystals side by side. */
export const MOST = 3;

type Given = Pick<
  CarrierSeen,
  'fs' | 'lm' | 'rm' | 'c0' | 'crystals' | 'crystalOffset' | 'chosen' | 'bag' | 'inFilter'
>;

/**
 * The carrier crystal: named from the bag, or like those of the filter and so many hertz off. What
 * was not measured of a named one is that of the filter's crystals.
 */
export function ownCrystal(seen: Given): OwnCrystal {
  const { fs, lm, rm, c0, crystals, crystalOffset } = seen;
  const like = { fs: fs + crystalOffset, lm, rm, c0, count: crystals, named: [] };
  const labels = labelsOf(seen.chosen ?? '');
  if (labels.length === 0) return { ...like, problems: [] };
  const wrong = wrongWith(seen, labels);
  if (wrong !== null) return { ...like, problems: [wrong] };
  const named = labels.map((label) => {
    const row = rowOf(seen, label);
    return {
      label: row?.label ?? label,
      fs: row?.fs ?? fs,
      lm: row?.lm ?? lm,
      rm: row?.rm ?? rm,
      c0: row?.c0 ?? c0,
    };
  });
  return { ...together(named), count: named.length, named, problems: alsoInFilter(seen, named) };
}

/** One of as many alike as make the same as these side by side. */
export function together(named: readonly Omit<Named, 'label'>[]) {
  const n = named.length;
  const [first] = named;
  if (n === 1 && first) return { fs: first.fs, lm: first.lm, rm: first.rm, c0: first.c0 };
  const one = sideBySide(
    named.map(({ fs, lm, rm, c0 }) => ({ lm, cm: 1 / ((2 * Math.PI * fs) ** 2 * lm), rm, c0 })),
  );
  return { fs: seriesResonance(one), lm: n * one.lm, rm: n * one.rm, c0: one.c0 / n };
}

const rowOf = ({ bag }: Given, label: string) =>
  bag?.find((row) => row.fs !== null && key(row.label ?? '') === key(label));

const key = (label: string) => label.trim().toLowerCase();

const labelsOf = (text: string): string[] => text.split(/[\s,;]+/).filter((one) => one !== '');

function wrongWith(seen: Given, labels: readonly string[]): Problem | null {
  const say = (says: string, help: string): Problem => ({
    field: 'carrier.chosen',
    weight: 'stops',
    says: `${says} A crystal like those of the filter is taken.`,
    try: help,
  });
  const unknown = labels.find((label) => rowOf(seen, label) === undefined);
  if (unknown !== undefined) {
    const none = (seen.bag ?? []).length === 0;
    return say(
      none ? 'There is no bag to choose from.' : `“${unknown.slice(0, 20)}” is not in the bag.`,
      none ? 'Paste it under Bag.' : 'Labels as in the table of the bag.',
    );
  }
  if (labels.length > MOST) {
    return say(`${labels.length} crystals are named.`, 'Three side by side are the most.');
  }
  if (new Set(labels.map(key)).size < labels.length) {
    return say('One crystal is named twice.', 'Each can be used once.');
  }
  return null;
}

function alsoInFilter({ inFilter }: Given, named: readonly Named[]): Problem[] {
  const taken = new Set((inFilter ?? []).map(({ label }) => key(label ?? '')));
  const both = named.find(({ label }) => taken.has(key(label)));
  if (!both) return [];
  return [
    {
      field: 'carrier.chosen',
      weight: 'warns',
      says: `Crystal ${both.label} stands in the filter as well.`,
      try: 'Another crystal for one of the two.',
    },
  ];
}
