import { leastPiQ } from '../../circuit/piMatch.ts';
import type { ValueOf } from '../../fields/kinds.ts';
import type { outputFields } from '../output/fields.ts';
import { filters } from './filters.ts';

type OutputInputs = (typeof outputFields)['inputs'];

/** Inputs of the Network leaf that a suggestion may say. */
export type SuggestedKey =
  | 'match'
  | 'loadedQ'
  | 'lowpass'
  | 'order'
  | 'cutoffRatio'
  | 'ripple'
  | 'traps'
  | 'stopBy'
  | 'stopRatio'
  | 'stopWanted';

/** Values for those inputs: all that the network it makes asks for. */
export type Choice = { readonly [K in SuggestedKey]?: ValueOf<OutputInputs[K]> };

/** Stands for what a choice does not say, because its network does not ask for it. */
export const unsaid = {
  match: 'none',
  loadedQ: 3,
  lowpass: 'none',
  order: 7,
  cutoffRatio: 1.2,
  ripple: 0.044,
  traps: 'none',
  stopBy: 'notch',
  stopRatio: 1.6,
  stopWanted: 45,
} as const satisfies Required<Choice>;

/** Which of the user's choices leaves it out. */
export type Family = 'none' | 'halfWave' | 'prototypes' | 'traps' | 'elliptic';

/** A network to be built and worked. */
export interface Candidate {
  readonly choice: Choice;
  readonly family: Family;
  /** Of networks of one kind only the best is shown. */
  readonly kind: string;
  /** What it is, in words. */
  readonly words: string;
}

/** A match, or a filter, by itself. */
export interface Half {
  readonly choice: Choice;
  readonly kind: string;
  readonly words: string;
}

/** A filter to stand behind a match. */
export interface Filter extends Half {
  readonly family: Family;
  /** Worth trying behind a pi match, too: there it is only to save a few parts. */
  readonly behindPi: boolean;
}

/** Loaded Q of a pi match alone, and of one with a filter behind it. */
const piAlone = [2, 2.5, 3, 4, 5, 6, 7, 8] as const;
const piBefore = [2, 3, 4] as const;

let kept: { readonly by: string; readonly list: readonly Candidate[] } | null = null;

/** Every network that is looked through, for this load and antenna, in Ω. */
export function candidates(collectorLoad: number, antenna: number): readonly Candidate[] {
  const least = leastPiQ(collectorLoad, antenna);
  const near = Math.max(collectorLoad / antenna, antenna / collectorLoad) < 2;
  const [alone, before] = [above(piAlone, least), above(piBefore, least)];
  // The list hangs on nothing else: most changes of load leave it as it is.
  const by = `${near} ${alone} ${before}`;
  if (kept?.by !== by) kept = { by, list: listed(near, alone, before) };
  return kept.list;
}

function listed(near: boolean, alone: readonly number[], before: readonly number[]): Candidate[] {
  const straight: Half[] = [
    { choice: { match: 'transformer' }, kind: 'transformer', words: 'transformer' },
    ...(near
      ? [{ choice: { match: 'none' }, kind: 'straight', words: 'straight on' } as const]
      : []),
  ];
  return [
    ...straight.flatMap((match) => [none, ...all].map((filter) => joined(match, filter))),
    ...alone.map((q) => joined(pi(q), none)),
    ...before.flatMap((q) =>
      all.filter(({ behindPi }) => behindPi).map((filter) => joined(pi(q), filter)),
    ),
  ];
}

const none: Filter = {
  choice: { lowpass: 'none' },
  family: 'none',
  kind: 'none',
  words: 'no filter',
  behindPi: true,
};

const all: readonly Filter[] = filters();

function joined(match: Half, filter: Filter): Candidate {
  return {
    choice: { ...match.choice, ...filter.choice },
    family: filter.family,
    kind: `${match.kind} ${filter.kind}`,
    words: `${match.words}, ${filter.words}`,
  };
}

const pi = (loadedQ: number): Half => ({
  choice: { match: 'pi', loadedQ },
  kind: 'pi',
  words: `pi match with a loaded Q of ${loadedQ}`,
});

/** Values that a pi match can have; where the least is above all of them, the next one up. */
function above(values: readonly number[], least: number): readonly number[] {
  const there = values.filter((q) => q >= least + 0.05);
  const next = Math.ceil(least * 2 + 0.2) / 2;
  return there.length > 0 ? there : next <= 15 ? [next] : [];
}
