import { ladderFormulas } from '../../circuit/ladderFormulas.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import {
  cohn,
  crystalBounds,
  designOf,
  found,
  reactanceMethod,
  reactanceSteps,
  step,
  young,
} from './bounds.ts';
import type { filterFields } from './fields.ts';

type Workings = StageWorkings<typeof filterFields>;
type Rows = readonly { readonly k: number; readonly sum: number; readonly exact: number | null }[];

const rows = (look: Look, key: 'couplings' | 'meshes') => look(`filter.${key}`) as Rows;

/** Steps that Chebyshev's formulas share. */
const chebyshevSteps: Record<string, Bound> = {
  n: 'filter.crystals',
  A_r: 'filter.ripple',
  beta: step('-log(tanh(A_r * log(10) / 40))', '1', 'β of the ripple'),
  gamma: step('sinh(beta / (2 * n))', '1', 'γ of ripple and order'),
  Omega_3: step(
    'cosh(acosh(1 / sqrt(10^(A_r / 10) - 1)) / n)',
    '1',
    'where the response is at half power, against the edge of the ripple',
  ),
};

const sine = (i: string) => `sin((2 * ${i} - 1) * pi / (2 * n))`;

export const synthesisWorkings: Pick<
  Workings,
  | 'halfSpan'
  | 'largestSum'
  | 'endQ'
  | 'ends'
  | 'alignment'
  | 'couplings.k'
  | 'meshes.sum'
  | 'reach'
  | 'reachLossless'
> = {
  endQ: (look) => {
    const family = look('filter.family');
    if (family === 'butterworth') {
      return {
        says: 'The first element of the maximally flat prototype.',
        formula: '2 * sin(pi / (2 * n))',
        where: { n: 'filter.crystals' },
        source: young,
      };
    }
    if (family === 'chebyshev') {
      return {
        says: 'The first element of the equal-ripple prototype, taken from the edge of the ripple to half power.',
        formula: `2 * ${sine('1')} / gamma * Omega_3`,
        where: chebyshevSteps,
        source: young,
      };
    }
    return {
      says: 'With all elements alike, half the distance between the half-power points: there the loss of the chain is a factor of two.',
      left: 'cos(n * acos(q / 2))^2 + (sin(n * acos(q / 2)) / sin(acos(q / 2)))^2',
      right: '2',
      root: 'q',
      where: { q: 'filter.endQ', n: 'filter.crystals' },
      source: `${cohn}; loss as T² + U² of Chebyshev’s polynomials`,
    };
  },
  'couplings.k': (look) => {
    const family = look('filter.family');
    const i = { i: 'row.junction' };
    if (family === 'equal') {
      return {
        says: 'All couplings are alike: one over the half-power edge.',
        formula: '1 / q',
        where: { q: 'filter.endQ' },
        source: cohn,
      };
    }
    const below = `2 * sqrt(${sine('i')} * ${sine('(i + 1)')})`;
    if (family === 'butterworth') {
      return {
        says: 'One over the root of two neighbouring elements of the prototype.',
        formula: `1 / (${below})`,
        where: { n: 'filter.crystals', ...i },
        source: young,
      };
    }
    return {
      says: 'One over the root of two neighbouring elements of the prototype, taken to half power.',
      formula: `sqrt(gamma^2 + sin(i * pi / n)^2) / (${below}) / Omega_3`,
      where: { ...chebyshevSteps, ...i },
      source: young,
    };
  },
  'meshes.sum': (look, index) => {
    const k = rows(look, 'couplings');
    const sides: Record<string, Bound> = {};
    const left = k[index - 1];
    const right = k[index];
    if (left) sides.k_left = found(left.k, '1', `coupling at junction ${index}`);
    if (right) sides.k_right = found(right.k, '1', `coupling at junction ${index + 1}`);
    return {
      says: 'What the coupling capacitors on its two sides add to a mesh.',
      formula: Object.keys(sides).join(' + '),
      where: sides,
      source: reactanceMethod,
    };
  },
  largestSum: (look) => {
    const sums = rows(look, 'meshes').map(({ sum }) => sum);
    const where: Record<string, Bound> = {};
    sums.forEach((sum, i) => {
      where[`a_${i + 1}`] = found(sum, '1', `sum of couplings of mesh ${i + 1}`);
    });
    return {
      says: 'The largest of the mesh sums.',
      formula: `max(${Object.keys(where).join(', ')})`,
      where,
      source: reactanceMethod,
    };
  },
  halfSpan: (look) => halfSpan(look),
  ends: {
    says: 'The ends take part in the first and last mesh by the end Q.',
    formula: 'h / q',
    where: { h: 'filter.halfSpan', q: 'filter.endQ' },
    source: reactanceMethod,
  },
  alignment: {
    says: 'Where the crystal’s reactance cancels that of the couplings: there every mesh is in tune.',
    left: 'X',
    right: 'h * a',
    root: 'f_mesh',
    where: {
      f_mesh: 'filter.alignment',
      h: 'filter.halfSpan',
      a: 'filter.largestSum',
      ...crystalBounds,
      ...reactanceSteps('f_mesh', 'X'),
    },
    source: 'closed form of the equivalent circuit (IEC 60122-1)',
    assumes: 'Loss left out; it moves nothing.',
  },
  reach: (look) => {
    const { widestLow, widestHigh } = designOf(look);
    return {
      says: 'The width of the widest of all ladders of this family: h was searched through.',
      formula: 'f_hi - f_lo',
      where: {
        f_hi: found(widestHigh, 'Hz', 'upper −3 dB point of the widest'),
        f_lo: found(widestLow, 'Hz', 'lower −3 dB point of the widest'),
      },
      source: 'search over h, each ladder analysed with its losses',
      assumes: 'For two crystals h stops where coupling and holder are of the same size.',
    };
  },
  reachLossless: {
    says: 'The reactance grows ever faster towards fp, so the passband, a fixed ratio of reactances, shrinks again; this is its greatest.',
    formula: 'f_s * (sqrt(1 + u_hi) - sqrt(1 + u_lo))',
    where: {
      a: 'filter.largestSum',
      ...crystalBounds,
      r: step('C_0 / C_m', '1', 'holder over motional capacitance'),
      s: step('sqrt((a + 1) / (a - 1))', '1', 'root of the ratio of the edges’ reactances'),
      y: step('(s - 1) / (a + 1 - s * (a - 1))', '1', 'h against the holder’s reactance'),
      u_hi: step('y * (a + 1) / (1 + y * (a + 1)) / r', '1', 'upper edge, (f/fs)² − 1'),
      u_lo: step('y * (a - 1) / (1 + y * (a - 1)) / r', '1', 'lower edge, (f/fs)² − 1'),
    },
    source: 'closed form: maximum of the span of x/(1 + r·x), worked by hand',
    assumes: 'Crystals without loss.',
  },
};

/** The equation whose root h is: with these parts the gain is alike at two points B apart. */
function halfSpan(look: Look): Working {
  const design = designOf(look);
  const { formulas, where } = ladderFormulas(design.ladder, ['f_lo', 'f_hi']);
  const k = rows(look, 'couplings');
  const a = rows(look, 'meshes');
  const symbols: Record<string, Bound> = {
    h: 'filter.halfSpan',
    q: 'filter.endQ',
    a: 'filter.largestSum',
    f_mesh: 'filter.alignment',
    C_st: 'filter.stray',
    f_lo: found(design.low, 'Hz', 'lower −3 dB point of the exact design'),
    B: found(
      design.high - design.low,
      'Hz',
      design.outcome === 'met' ? 'the width asked for' : 'the nearest width there is',
    ),
    f_hi: step('f_lo + B', 'Hz', 'upper −3 dB point'),
  };
  // Every part of the ladder as it follows from h, instead of its number.
  for (const [name, term] of Object.entries(where)) {
    const value = 'value' in term ? term.value : null;
    const byPart = (of: Float64Array) => of.indexOf(value ?? Number.NaN);
    if (name.startsWith('C_k')) {
      const row = k[byPart(design.ladder.coupling)];
      const tag = name.slice(3);
      symbols[`k_${tag}`] = found(row?.k ?? 0, '1', 'coupling');
      symbols[name] = step(`1 / (2 * pi * f_mesh * h * k_${tag}) - C_st`, 'F', term.says);
    } else if (name.startsWith('C_s')) {
      const row = a[byPart(design.ladder.series)];
      const tag = name.slice(3);
      symbols[`a_${tag}`] = found(row?.sum ?? 0, '1', 'sum of couplings of its mesh');
      symbols[name] = step(`1 / (2 * pi * f_mesh * h * (a - a_${tag}))`, 'F', term.says);
    } else if (name === 'R_S' || name === 'R_L') {
      symbols[name] = step('h / q', 'Ω', term.says);
    } else {
      symbols[name] = term;
    }
  }
  return {
    says: 'All parts follow from h. It is chosen so that two frequencies the wanted width apart are passed equally, 3 dB below the best, losses included.',
    left: formulas[0] ?? '',
    right: formulas[1] ?? '',
    root: 'h',
    where: symbols,
    source: `${reactanceMethod}; smallest h by bracketing`,
  };
}
