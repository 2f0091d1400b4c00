import { type FigureName, figures } from './buildFigures.ts';
import { type Chance, chance } from './chance.ts';
import { quantiles } from './envelope.ts';
import { type Histogram, histogram } from './histogram.ts';
import { asksAnything, broken, type CriterionName, criteria, type Mask } from './mask.ts';
import { type PartShare, ranked } from './ranked.ts';
import { regression } from './regression.ts';
import { added } from './sums.ts';
import type { Group, Trial } from './trials.ts';
import { groups } from './trials.ts';
import type { YieldTally } from './yieldShare.ts';

/** Of so many builds the response stays under these lines, at each frequency. */
export const FRACTIONS = [0.05, 0.25, 0.5, 0.75, 0.95] as const;

/** Yields that people ask for. */
export const GOALS = [0.9, 0.95] as const;

/** How one figure comes out over all builds. Hz or dB. */
export interface FigureSpread {
  readonly name: FigureName;
  /** With nothing off. */
  readonly wanted: number;
  readonly mean: number;
  readonly deviation: number;
  /** 5, 50 and 95 % of the builds have less. */
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  readonly histogram: Histogram;
  /** Which parts make it vary, the worst first. */
  readonly parts: readonly PartShare[];
  /** What straight lines account for of its variance; the rest are bends. */
  readonly explained: number;
}

/** One limit of the mask. */
export interface Criterion {
  readonly name: CriterionName;
  readonly limit: number;
  /** Builds that break it, and those that break nothing else. */
  readonly fails: number;
  readonly alone: number;
}

/** Yield if one thing were as good as this. */
export interface At {
  readonly value: number;
  readonly chance: Chance;
}

/** What a better or worse choice of parts would bring. */
export interface Steps {
  readonly at: readonly At[];
  /** The loosest value with which each of the goals is met; null where none is tight enough. */
  readonly enough: readonly (number | null)[];
}

/** What came of all builds. */
export interface YieldAnswer {
  readonly builds: number;
  readonly frequency: Float64Array;
  readonly wanted: Float64Array;
  /** Response that the fractions of the builds stay below, dB. */
  readonly envelope: readonly Float64Array[];
  readonly figures: readonly FigureSpread[];
  readonly mask: Mask;
  /** Null where the mask asks nothing. */
  readonly yield: Chance | null;
  /** Whether the filter keeps to the mask with nothing off. */
  readonly wantedPasses: boolean;
  readonly criteria: readonly Criterion[];
  /** Yield if one group of parts were perfect, the most helpful first. */
  readonly perfect: readonly { readonly group: Group; readonly chance: Chance }[];
  readonly capacitors: Steps | null;
  readonly frequencies: Steps | null;
  /** Builds that the last three were tried on, and how many of these are good as they are. */
  readonly tried: number;
  readonly triedYield: number;
}

/** Puts the shares together and draws the conclusions. */
export function yieldAnswer(shares: readonly YieldTally[]): YieldAnswer {
  const first = shares[0] as YieldTally;
  const { order, factors, frequency, wanted, wantedFigures, units, trials, tried } = first;
  const { builds, mask, spreads } = order;
  const found = inOrder(shares, builds);
  const sums = added(shares.map((share) => share.sums));
  const fits = regression(sums, builds);
  const bins = total(shares.map((share) => share.envelope));
  const passes = total(shares.map((share) => share.passes));
  const breaks = new Uint8Array(builds);
  for (let i = 0; i < builds; i += 1) breaks[i] = broken(mask, found, i * figures.length);
  const at = (trial: Trial, i: number): At => ({
    value: trial.value,
    chance: chance(passes[i] ?? 0, tried),
  });
  const steps = (group: Group): Steps | null => {
    const list = trials
      .map((trial, i) => ({ trial, at: at(trial, i) }))
      .filter(({ trial }) => trial.group === group)
      .map((one) => one.at);
    return list.length === 0 ? null : { at: list, enough: GOALS.map((goal) => enough(list, goal)) };
  };
  const asks = asksAnything(mask);
  const goodOf = (first: number) => breaks.subarray(0, first).filter((bits) => bits === 0).length;
  return {
    builds,
    frequency,
    wanted,
    envelope: quantiles(bins, wanted, builds, FRACTIONS),
    figures: figures.flatMap((name, place) => {
      const known = wantedFigures[place] as number;
      const fit = fits[place];
      if (Number.isNaN(known) || !fit) return [];
      const parts = ranked(factors, fit, units[place] as number, spreads);
      return [spreadOf(name, place, known, found, parts, fit.explained)];
    }),
    mask,
    yield: asks ? chance(goodOf(builds), builds) : null,
    wantedPasses: broken(mask, wantedFigures) === 0,
    criteria: asks ? counted(mask, breaks, wantedFigures) : [],
    perfect: groups
      .flatMap((group) => {
        const i = trials.findIndex((trial) => trial.group === group && trial.value === 0);
        return i < 0 ? [] : [{ group, chance: chance(passes[i] ?? 0, tried) }];
      })
      .sort((a, b) => b.chance.share - a.chance.share),
    capacitors: steps('capacitors'),
    frequencies: steps('frequency'),
    tried,
    triedYield: goodOf(tried) / tried,
  };
}

/** Figures of all builds in the order of their numbers. */
function inOrder(shares: readonly YieldTally[], builds: number): Float32Array {
  const width = figures.length;
  const all = new Float32Array(builds * width);
  for (const { share, found } of shares) {
    for (let own = 0; own * width < found.length; own += 1) {
      const build = share.index + own * share.of;
      for (let k = 0; k < width; k += 1) {
        all[build * width + k] = found[own * width + k] as number;
      }
    }
  }
  return all;
}

function total(parts: readonly Uint32Array[]): Uint32Array {
  const [first, ...others] = parts;
  if (!first || others.length === 0) return first ?? new Uint32Array(0);
  const all = first.slice();
  for (const part of others) {
    for (let i = 0; i < all.length; i += 1) all[i] = (all[i] as number) + (part[i] as number);
  }
  return all;
}

function spreadOf(
  name: FigureName,
  place: number,
  wanted: number,
  found: Float32Array,
  parts: readonly PartShare[],
  explained: number,
): FigureSpread {
  const n = found.length / figures.length;
  const values = new Float32Array(n);
  let mean = 0;
  for (let i = 0; i < n; i += 1) {
    const value = found[i * figures.length + place] as number;
    values[i] = value;
    mean += value / n;
  }
  let square = 0;
  for (let i = 0; i < n; i += 1) square += ((values[i] as number) - mean) ** 2;
  values.sort();
  const part = (fraction: number) => values[Math.round(fraction * (n - 1))] ?? 0;
  return {
    name,
    wanted,
    mean,
    deviation: Math.sqrt(square / Math.max(1, n - 1)),
    low: part(0.05),
    middle: part(0.5),
    high: part(0.95),
    histogram: histogram(values, name === 'width' ? 1 : 0.01),
    parts,
    explained,
  };
}

function counted(mask: Mask, breaks: Uint8Array, wanted: Float64Array): Criterion[] {
  return criteria.flatMap(({ name, figure }, i) => {
    const limit = mask[name];
    if (limit === null || Number.isNaN(wanted[figures.indexOf(figure)])) return [];
    let fails = 0;
    let alone = 0;
    for (let k = 0; k < breaks.length; k += 1) {
      const bits = breaks[k] as number;
      if ((bits >> i) & 1) fails += 1;
      if (bits === 1 << i) alone += 1;
    }
    return [{ name, limit, fails, alone }];
  });
}

/** The loosest value that still gives a yield, by straight lines between those tried. */
function enough(list: readonly At[], goal: number): number | null {
  const rising = [...list].sort((a, b) => a.value - b.value);
  let best: number | null = null;
  rising.forEach((here, i) => {
    if (here.chance.share >= goal) best = here.value;
    const before = rising[i - 1];
    if (before && before.chance.share >= goal && here.chance.share < goal) {
      const part = (before.chance.share - goal) / (before.chance.share - here.chance.share);
      best = before.value + part * (here.value - before.value);
    }
  });
  return best;
}
