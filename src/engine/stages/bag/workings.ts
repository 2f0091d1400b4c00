import type { Bound, Look, StageWorkings, Working, WorkingOf } from '../../fields/workings.ts';
import type { Unit } from '../../quantity/units.ts';
import type { bagFields } from './fields.ts';
import { bestSplit, criticalValue, FEWEST, valley } from './humps.ts';
import { type Counted, type Lot, lotOf } from './lot.ts';
import { meanOf, rmsAbout } from './statistics.ts';

const counting = 'counted';
const order = 'order statistics; definition';

export const bagWorkings: StageWorkings<typeof bagFields> = {
  'rows.line': (look, i) => asPasted(look, i, 'n_line', '1', 'line'),
  'rows.label': {
    says: 'The label of the line, as one word; counted where there is none.',
    rule: 'As pasted. A label that occurs twice gets a number behind it.',
    where: {},
    source: 'as pasted',
  },
  'rows.fs': (look, i) => asPasted(look, i, 'f_s', 'Hz', 'fs'),
  'rows.off': {
    says: 'How far above the median of the lot.',
    formula: 'f_s - f_med',
    where: { f_s: 'row.fs', f_med: 'bag.fs' },
    source: 'definition',
  },
  'rows.lm': (look, i) => asPasted(look, i, 'L_m', 'H', 'lm'),
  'rows.rm': (look, i) => asPasted(look, i, 'R_m', 'Ω', 'rm'),
  'rows.c0': (look, i) => asPasted(look, i, 'C_0', 'F', 'c0'),
  'rows.standing': {
    says: 'Whether the line is a crystal of this lot.',
    rule: 'It has a frequency, and that is within half a per cent of the median of all.',
    where: { f_med: 'bag.fs' },
    source: 'a plain rule of this program',
  },
  'rows.note': {
    says: 'What is to be said of the line.',
    rule: 'Written where something was not understood, occurs twice, or is far from all others.',
    where: {},
    source: 'a plain rule of this program',
  },
  number: (look) => {
    const { rows, counted } = lot(look);
    return {
      says: 'Lines of the list, less those set aside.',
      formula: 'n_lines - n_aside',
      where: {
        n_lines: plain(rows.length, 'lines that are neither blank nor remarks'),
        n_aside: plain(rows.length - counted.length, 'lines set aside'),
      },
      source: counting,
    };
  },
  aside: (look) => {
    const { rows, counted } = lot(look);
    const without = rows.filter(({ fs }) => fs === null).length;
    return {
      says: 'Lines without a frequency, and crystals of another kind.',
      formula: 'n_none + n_other',
      where: {
        n_none: plain(without, 'lines without a frequency'),
        n_other: plain(rows.length - counted.length - without, 'crystals far from the others'),
      },
      source: counting,
    };
  },
  fs: (look) => middle(lot(look).counted, 'fs', 'f', 'Hz'),
  lowest: (look) => only(lot(look).counted[0], 'f_a', 'The first by frequency.'),
  highest: (look) => only(lot(look).counted.at(-1), 'f_z', 'The last by frequency.'),
  range: {
    says: 'From the lowest to the highest.',
    formula: 'f_high - f_low',
    where: { f_high: 'bag.highest', f_low: 'bag.lowest' },
    source: 'definition',
  },
  spread: (look) => {
    const sorted = frequencies(look);
    return {
      says: 'The root mean square of the distances from the mean, corrected for the mean being drawn from the same crystals.',
      formula: 'sqrt(N_bag / (N_bag - 1)) * d_rms',
      where: { N_bag: 'bag.number', d_rms: hertz(rmsAbout(sorted, meanOf(sorted)), allDistances) },
      source: 'sample standard deviation',
    };
  },
  lm: (look) => middle(given(look, 'lm'), 'lm', 'L', 'H'),
  rm: (look) => middle(given(look, 'rm'), 'rm', 'R', 'Ω'),
  c0: (look) => middle(given(look, 'c0'), 'c0', 'C', 'F'),
  'sets.crystals': (_, i) => ({
    says: 'Sets of two, three and so on.',
    formula: 'i + 1',
    where: { i: plain(i + 1, 'row of the table') },
    source: counting,
  }),
  'sets.within': {
    says: 'From the lowest to the highest of the set; of all neighbours by frequency, the least.',
    formula: 'f_n - f_1',
    where: { f_n: 'row.high', f_1: 'row.low' },
    source: order,
  },
  'sets.from': closestRule('lowest'),
  'sets.to': closestRule('highest'),
  'sets.low': (look, i) => labelled(look, i, 'from', 'f_1'),
  'sets.high': (look, i) => labelled(look, i, 'to', 'f_n'),
  humps: (look) => {
    const sorted = frequencies(look);
    const n = sorted.length;
    if (n < FEWEST || look('bag.clusters') === null) {
      return {
        says: 'Of fewer than eight crystals nothing can be told.',
        rule: 'Fewer than eight, or all alike.',
        where: { N_bag: 'bag.number' },
        source: 'a plain rule of this program',
      };
    }
    const split = bestSplit(sorted);
    const { middle: within, atLower, atUpper } = valley(sorted, split);
    return {
      says: 'Two, if dividing the lot explains more of its variance than it would once in twenty times in a normal lot, and if in the middle third between the two means lie at most half as many as around the poorer of them.',
      formula: 'T_2 > T_c and n_part >= 3 and 2 * n_mid <= min(n_lo, n_up) ? "two" : "one"',
      where: {
        T_2: 'bag.clusters',
        T_c: plain(criticalValue(n), 'exceeded once in twenty times by a normal lot of this size'),
        n_part: plain(Math.min(split.below, n - split.below), 'crystals in the smaller part'),
        n_mid: plain(within, 'crystals in the middle third between the two means'),
        n_lo: plain(atLower, 'crystals as near as that to the lower mean'),
        n_up: plain(atUpper, 'crystals as near as that to the upper mean'),
      },
      source:
        'Engelman and Hartigan, Percentage Points of a Test for Clusters, J. Amer. Stat. Assoc. 64, 1969; the valley is a plain rule of this program',
    };
  },
  lowerHump: (look) => part(look, 'lower'),
  upperHump: (look) => part(look, 'upper'),
  clusters: (look) => {
    const { whole, within } = bestSplit(frequencies(look));
    return {
      says: 'The lot is divided where the spread within the two parts is least; this compares the variance before and after.',
      formula: '2 * log(d_all / d_parts)',
      where: {
        d_all: hertz(whole, allDistances),
        d_parts: hertz(within, 'root mean square of the distances from the mean of the own part'),
      },
      source: 'Engelman and Hartigan, J. Amer. Stat. Assoc. 64, 1969',
    };
  },
};

const allDistances = 'root mean square of the distances from the mean, over all crystals';

const lots = { text: '', lot: lotOf('') };
/** The lot as read; kept, since every row of the table asks for it. */
function lot(look: Look): Lot {
  const text = (look('bag.crystals') as string | null) ?? '';
  if (lots.text !== text) Object.assign(lots, { text, lot: lotOf(text) });
  return lots.lot;
}

const frequencies = (look: Look) => lot(look).counted.map(({ fs }) => fs);
const plain = (value: number, says: string): Bound => ({ value, unit: '1', says });
const hertz = (value: number, says: string): Bound => ({ value, unit: 'Hz', says });

function asPasted(
  look: Look,
  i: number,
  symbol: string,
  unit: Unit,
  key: 'line' | 'fs' | 'lm' | 'rm' | 'c0',
): Working {
  const row = lot(look).rows[i];
  return {
    says: 'As pasted.',
    formula: symbol,
    where: { [symbol]: { value: row?.[key] ?? 0, unit, says: `line ${row?.line} of the list` } },
    source: 'as pasted',
  };
}

function given(look: Look, key: 'lm' | 'rm' | 'c0'): Counted[] {
  return lot(look)
    .counted.filter((row) => row[key] !== null)
    .sort((a, b) => (a[key] ?? 0) - (b[key] ?? 0));
}

/** The one in the middle, or half-way between the two. */
function middle(
  sorted: readonly Counted[],
  key: 'fs' | 'lm' | 'rm' | 'c0',
  letter: string,
  unit: Unit,
): Working {
  const half = sorted.length / 2;
  const of = (place: number): Bound => ({
    value: sorted[place]?.[key] ?? 0,
    unit,
    says: `crystal ${sorted[place]?.label}, number ${place + 1} of ${sorted.length} by this figure`,
  });
  const [low, high] = [`${letter}_a`, `${letter}_b`];
  return Number.isInteger(half)
    ? {
        says: 'Half-way between the two in the middle.',
        formula: `(${low} + ${high}) / 2`,
        where: { [low]: of(half - 1), [high]: of(half) },
        source: order,
      }
    : {
        says: 'The one in the middle.',
        formula: low,
        where: { [low]: of(Math.floor(half)) },
        source: order,
      };
}

function only(row: Counted | undefined, symbol: string, says: string): Working {
  return {
    says,
    formula: symbol,
    where: { [symbol]: hertz(row?.fs ?? 0, `crystal ${row?.label}`) },
    source: order,
  };
}

function labelled(look: Look, i: number, end: 'from' | 'to', symbol: string): Working {
  const sets = look('bag.sets') as readonly { from: string; to: string }[];
  const label = sets[i]?.[end];
  return only(
    lot(look).counted.find((row) => row.label === label),
    symbol,
    end === 'from' ? 'The lowest of the set.' : 'The highest of the set.',
  );
}

function closestRule(which: string): WorkingOf {
  return {
    says: `The ${which} of the set.`,
    rule: 'By rising frequency, each run of so many neighbours is looked at; the shortest is taken, of two alike the lower.',
    where: {},
    source: order,
  };
}

function part(look: Look, which: 'lower' | 'upper'): Working {
  const sorted = frequencies(look);
  const { below } = bestSplit(sorted);
  const own = which === 'lower' ? sorted.slice(0, below) : sorted.slice(below);
  const middleOf = sorted[0] ?? 0;
  return {
    says: 'The mean of this part; the lot is divided where the spread within the two parts is least.',
    formula: 'f_low + d_mean',
    where: {
      f_low: 'bag.lowest',
      d_mean: hertz(
        meanOf(own) - middleOf,
        `mean distance of its ${own.length} crystals from the lowest`,
      ),
    },
    source: 'least squares',
  };
}
