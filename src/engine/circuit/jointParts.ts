import type { Link, PartChain } from './partChain.ts';
import {
  departureWith,
  fromLoad,
  fromSource,
  openAt,
  partTrial,
  past,
  type Wanted,
} from './partTrial.ts';

/** Capacitors that there are only so many of. */
export interface Stock {
  /** How many there are of each kind. */
  readonly count: Int32Array;
  /** The kinds that a menu's entry is made of; −1 for none. */
  readonly first: Int32Array;
  readonly second: Int32Array;
}

/** What may be fitted. */
export interface Choices {
  /** For each capacitor the values that may stand in its place, F, rising. */
  readonly menus: readonly Float64Array[];
  /** For each capacitor the first and last entry of its menu that a move may end at; all if left out. */
  readonly limits?: readonly (readonly [first: number, last: number])[];
  /** Only where counts matter; then all capacitors have the same menu. */
  readonly stock?: Stock;
}

/** What was chosen. */
export interface Joint {
  /** For each capacitor its entry in its menu. */
  readonly choice: Int32Array;
  /** Sum of the weighted squares of the departure from what is wanted, dB². */
  readonly sum: number;
}

/** How much to look for. */
export interface Effort {
  /** How many of the starts are followed, the best first. */
  readonly tries: number;
  /** Most trials of pairs from each start. */
  readonly pairs: number;
  /** Departure, as a sum of squares in dB², that is good enough to stop at. */
  readonly enough: number;
}

const USUAL: Effort = { tries: 2, pairs: 400, enough: 0 };

/** How far a single move looks along a menu, and how far each of a pair does. */
const REACH = [-1, 1, -2, 2, -4, 4];
/** The same where counts make a menu long. */
const FAR = [...REACH, -8, 8, -16, 16, -32, 32, -64, 64];
const PAIR = [0, -1, 1, -2, 2];
/** A gain of less than a millionth is none. */
const BETTER = 1 - 1e-6;

/**
 * Chooses all capacitors of a ladder together, so that its response departs least from the wanted
 * one: each in turn is moved along its menu, then two at a time, until nothing gets better. It
 * never ends worse than the best of the starts.
 *
 * Own method: descent by single and pair moves on the chain's exact response. What does not change
 * is worked once: a trial of one capacitor costs one complex product for each frequency.
 *
 * @param starts choices to begin from, each of entries that may be had together
 */
export function jointParts(
  chain: PartChain,
  wanted: Wanted,
  choices: Choices,
  starts: readonly Int32Array[],
  effort: Partial<Effort> = {},
): Joint {
  const { tries, ...limits } = { ...USUAL, ...effort };
  const search = searchOf(chain, wanted, choices, limits);
  const begun = starts
    .map((choice) => ({ choice: choice.slice(), sum: search.measure(choice) }))
    .sort((a, b) => a.sum - b.sum);
  let best: Joint = begun[0] ?? { choice: new Int32Array(), sum: Number.POSITIVE_INFINITY };
  for (const { choice, sum } of begun.slice(0, tries)) {
    if (best.sum <= limits.enough) break;
    const found = { choice, sum: search.descend(choice, sum) };
    if (found.sum < best.sum) best = found;
  }
  return best;
}

/** Sum of the weighted squares of the departure of a choice, dB². */
export function departureOf(chain: PartChain, wanted: Wanted, values: Float64Array): number {
  const menus = Array.from(values, (value) => Float64Array.of(value));
  return searchOf(chain, wanted, { menus }, USUAL).measure(new Int32Array(values.length));
}

function searchOf(
  chain: PartChain,
  wanted: Wanted,
  { menus, limits, stock }: Choices,
  { pairs, enough }: Omit<Effort, 'tries'>,
) {
  const trial = partTrial(chain, wanted);
  const { links, places } = chain;
  const size = 4 * chain.w.length;
  const row = new Float64Array(size);
  const ahead = new Float64Array(size);
  const columns = Array.from({ length: links.length + 1 }, () => new Float64Array(size));
  const linkOf = new Int32Array(places.length);
  links.forEach(({ part }, e) => {
    if (part >= 0) linkOf[part] = e;
  });
  const left = stock ? stock.count.slice() : null;
  let trials = 0;

  const value = (part: number, entry: number) => menus[part]?.[entry] ?? 0;
  /** The value of an entry that a move may end at. */
  const offered = (part: number, entry: number) => {
    const [first, last] = limits?.[part] ?? [0, entry];
    return entry < first || entry > last ? undefined : menus[part]?.[entry];
  };
  const link = (e: number) => links[e] as Link;
  const column = (e: number) => columns[e] as Float64Array;
  const valueAt = (e: number, choice: Int32Array) => {
    const { part } = link(e);
    return part < 0 ? 0 : value(part, choice[part] as number);
  };

  /** Columns from the load back to just behind each link, from `last` on downwards. */
  const backTo = (first: number, last: number, choice: Int32Array) => {
    for (let e = last; e > first; e -= 1) {
      past(trial, link(e), valueAt(e, choice), column(e + 1), column(e), false);
    }
  };
  const start = (choice: Int32Array) => {
    fromLoad(trial, column(links.length));
    backTo(-1, links.length - 1, choice);
    fromSource(trial, row);
  };
  const take = (entry: number, many: number) => {
    if (!stock || !left) return;
    for (const kind of [stock.first[entry] as number, stock.second[entry] as number]) {
      if (kind >= 0) left[kind] = (left[kind] as number) - many;
    }
  };
  /** Whether there are capacitors left for an entry. */
  const has = (entry: number) => {
    if (!stock || !left) return true;
    const a = stock.first[entry] as number;
    const b = stock.second[entry] as number;
    if (a === b) return (left[a] as number) >= 2;
    return (a < 0 || (left[a] as number) > 0) && (b < 0 || (left[b] as number) > 0);
  };

  const measure = (choice: Int32Array): number => {
    start(choice);
    const e = linkOf[0] as number;
    for (let before = 0; before < e; before += 1) {
      past(trial, link(before), valueAt(before, choice), row, row, true);
    }
    openAt(trial, link(e), row, column(e + 1));
    const c = value(0, choice[0] as number);
    return departureWith(trial, link(e).shunt, c, Number.POSITIVE_INFINITY);
  };

  /** Moves one capacitor along its menu as long as that helps; `row` and its column are ready. */
  const moveOne = (e: number, choice: Int32Array, least: number): number => {
    const { part, shunt } = link(e);
    openAt(trial, link(e), row, column(e + 1));
    let best = least;
    take(choice[part] as number, -1);
    for (let from = -1; from !== choice[part]; ) {
      from = choice[part] as number;
      for (const step of stock ? FAR : REACH) {
        const entry = from + step;
        const c = offered(part, entry);
        if (c === undefined || !has(entry)) continue;
        const sum = departureWith(trial, shunt, c, best);
        if (sum >= best) continue;
        best = sum;
        choice[part] = entry;
      }
    }
    take(choice[part] as number, 1);
    return best;
  };

  /** Moves two capacitors together. */
  const movePair = (first: number, second: number, choice: Int32Array, least: number): number => {
    const [a, b] = [link(first), link(second)];
    const [fromA, fromB] = [choice[a.part] as number, choice[b.part] as number];
    take(fromA, -1);
    take(fromB, -1);
    let best = least;
    for (let i = 0; i < (stock ? PAIR.length + 1 : PAIR.length); i += 1) {
      const entryA = i < PAIR.length ? fromA + (PAIR[i] as number) : fromB;
      const valueA = entryA === fromA ? value(a.part, fromA) : offered(a.part, entryA);
      if (valueA === undefined || !has(entryA)) continue;
      take(entryA, 1);
      past(trial, a, valueA, row, ahead, true);
      for (let e = first + 1; e < second; e += 1) {
        past(trial, link(e), valueAt(e, choice), ahead, ahead, true);
      }
      openAt(trial, b, ahead, column(second + 1));
      for (let j = 0; j < (stock ? PAIR.length + 1 : PAIR.length); j += 1) {
        const entryB = j < PAIR.length ? fromB + (PAIR[j] as number) : fromA;
        const valueB = entryB === fromB ? value(b.part, fromB) : offered(b.part, entryB);
        if (valueB === undefined || !has(entryB)) continue;
        trials += 1;
        const sum = departureWith(trial, b.shunt, valueB, best);
        if (sum >= best) continue;
        best = sum;
        choice[a.part] = entryA;
        choice[b.part] = entryB;
      }
      take(entryA, -1);
    }
    take(choice[a.part] as number, 1);
    take(choice[b.part] as number, 1);
    return best;
  };

  /** The next two capacitors, the one after, and the one that mirrors it. */
  const partners = (part: number): number[] => {
    const last = places.length - 1;
    if (stock) return Array.from({ length: last - part }, (_, i) => part + 1 + i);
    return [...new Set([part + 1, part + 2, last - part])].filter(
      (other) => other > part && other <= last,
    );
  };

  const pass = (
    choice: Int32Array,
    sum: number,
    move: (e: number, choice: Int32Array, sum: number) => number,
  ): number => {
    let best = sum;
    start(choice);
    for (let e = 0; e < links.length; e += 1) {
      if (link(e).part >= 0) best = move(e, choice, best);
      past(trial, link(e), valueAt(e, choice), row, row, true);
    }
    return best;
  };
  const singles = (choice: Int32Array, sum: number): number => {
    let best = sum;
    for (let before = Number.POSITIVE_INFINITY; best < before * BETTER && best > enough; ) {
      before = best;
      best = pass(choice, best, moveOne);
    }
    return best;
  };
  const descend = (choice: Int32Array, sum: number): number => {
    if (stock && left) {
      left.set(stock.count);
      for (const entry of choice) take(entry, 1);
    }
    trials = 0;
    let best = singles(choice, sum);
    for (let before = Number.POSITIVE_INFINITY; best < before * BETTER && best > enough; ) {
      before = best;
      best = pass(choice, best, (e, now, least) => {
        let found = least;
        for (const other of partners(link(e).part)) {
          if (trials > pairs || found <= enough) break;
          const second = linkOf[other] as number;
          const better = movePair(e, second, now, found);
          // Those behind the second have not changed, those up to it have.
          if (better < found) backTo(e, second, now);
          found = better;
        }
        return found;
      });
      if (best < before * BETTER) best = singles(choice, best);
    }
    return best;
  };
  return { measure, descend };
}
