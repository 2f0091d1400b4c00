import { ladderFormulas } from '../../circuit/ladderFormulas.ts';
import type { Bound, Look, StageWorkings, Working, WorkingOf } from '../../fields/workings.ts';
import {
  chain,
  crystalBounds,
  designOf,
  found,
  holderSteps,
  holderSymbol,
  reactanceMethod,
  reactanceSteps,
  step,
  susceptanceMethod,
  toGround,
} from './bounds.ts';
import { FAR } from './farOff.ts';
import type { filterFields } from './fields.ts';

type Workings = StageWorkings<typeof filterFields>;
type Rows = readonly { readonly k: number; readonly sum: number; readonly exact: number | null }[];

const rows = (look: Look, key: 'couplings' | 'meshes') => look(`filter.${key}`) as Rows;

/** An end resistance from h and an end Q. */
const end =
  (q: 'q' | 'q_L'): WorkingOf =>
  (look) => {
    const bound = q === 'q' ? 'filter.endQ' : 'filter.endQLoad';
    if (toGround(look)) {
      return {
        says: 'The ends take part in the first and last node by the end Q.',
        formula: `${q} / h_B`,
        where: { h_B: 'filter.halfSusceptance', [q]: bound },
        source: susceptanceMethod,
      };
    }
    if (look('filter.family') === 'doubled') {
      return {
        says: 'The ends take part in the first and last mesh by the end Q; two crystals side by side have half the reactance.',
        formula: `h / (${q} * p)`,
        where: {
          h: 'filter.halfSpan',
          [q]: bound,
          p: found(2, '1', 'crystals side by side'),
        },
        source: reactanceMethod,
      };
    }
    return {
      says: 'The ends take part in the first and last mesh by the end Q.',
      formula: `h / ${q}`,
      where: { h: 'filter.halfSpan', [q]: bound },
      source: reactanceMethod,
    };
  };

export const synthesisWorkings: Pick<
  Workings,
  | 'halfSpan'
  | 'halfSusceptance'
  | 'largestSum'
  | 'ends'
  | 'endsLoad'
  | 'acrossFitted'
  | 'alignment'
  | 'reach'
  | 'reachLossless'
  | 'farOff'
> = {
  largestSum: (look) => {
    const sums = rows(look, 'meshes').map(({ sum }) => sum);
    const where: Record<string, Bound> = {};
    sums.forEach((sum, i) => {
      where[`a_${i + 1}`] = found(sum, '1', `sum of couplings at crystal ${i + 1}`);
    });
    return {
      says: 'The largest of the sums.',
      formula: `max(${Object.keys(where).join(', ')})`,
      where,
      source: reactanceMethod,
    };
  },
  halfSpan: (look) => halfSpan(look),
  halfSusceptance: (look) => halfSpan(look),
  ends: end('q'),
  endsLoad: end('q_L'),
  acrossFitted: (look) => {
    if (look('filter.across') !== null) {
      return {
        says: 'As given.',
        formula: 'C_across',
        where: { C_across: 'filter.across' },
        source: 'as typed',
      };
    }
    return {
      says: 'As much as brings the greatest bandwidth down to a twentieth over the one asked for, or to more where losses want it; none where the crystals can hardly be so wide.',
      formula: 'C_ac',
      where: { C_ac: found(designOf(look).across, 'F', 'chosen so') },
      source: 'common practice, no source',
    };
  },
  farOff: (look) => {
    const { formulas, where } = ladderFormulas(
      look('filter.ladder') as Parameters<typeof ladderFormulas>[0],
      ['f_below', 'f_above'],
    );
    return {
      says: 'Ten widths below and above the passband, the worse of the two, against the best point.',
      formula: `min(-(${formulas[0]}), -(${formulas[1]})) - A_best`,
      where: {
        f_3lo: 'filter.low3',
        f_3hi: 'filter.high3',
        N_far: found(FAR, '1', 'so many widths'),
        f_below: step('f_3lo - N_far * (f_3hi - f_3lo)', 'Hz', 'far below'),
        f_above: step('f_3hi + N_far * (f_3hi - f_3lo)', 'Hz', 'far above'),
        A_best: 'filter.loss',
        ...where,
      },
      source: chain,
    };
  },
  alignment: (look) => ({
    says: toGround(look)
      ? 'Where the crystal’s susceptance cancels that of the couplings: there every node is in tune.'
      : 'Where the crystal’s reactance cancels that of the couplings: there every mesh is in tune.',
    left: toGround(look) ? '1 / X' : 'X',
    right: toGround(look) ? 'h_B * a' : 'h * a',
    root: 'f_mesh',
    where: {
      f_mesh: 'filter.alignment',
      ...(toGround(look) ? { h_B: 'filter.halfSusceptance' } : { h: 'filter.halfSpan' }),
      a: 'filter.largestSum',
      ...crystalBounds,
      ...holderSteps(look),
      ...reactanceSteps('f_mesh', 'X', holderSymbol(look)),
    },
    source: 'closed form of the equivalent circuit (IEC 60122-1)',
    assumes: 'Loss left out; it moves nothing.',
  }),
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
  reachLossless: (look) => ({
    says: 'The reactance grows ever faster towards fp, so the passband, a fixed ratio of reactances, shrinks again; this is its greatest.',
    formula: 'f_s * (sqrt(1 + u_hi) - sqrt(1 + u_lo))',
    where: {
      a: 'filter.largestSum',
      ...crystalBounds,
      ...holderSteps(
        look,
        look('filter.across') === null
          ? found(0, 'F', 'none: the widest has none')
          : 'filter.across',
      ),
      r: step(`${holderSymbol(look)} / C_m`, '1', 'what lies across the crystal over its Cm'),
      s: step('sqrt((a + 1) / (a - 1))', '1', 'root of the ratio of the edges’ reactances'),
      y: step('(s - 1) / (a + 1 - s * (a - 1))', '1', 'h against the holder’s reactance'),
      u_hi: step('y * (a + 1) / (1 + y * (a + 1)) / r', '1', 'upper edge, (f/fs)² − 1'),
      u_lo: step('y * (a - 1) / (1 + y * (a - 1)) / r', '1', 'lower edge, (f/fs)² − 1'),
    },
    source: 'closed form: maximum of the span of x/(1 + r·x), worked by hand',
    assumes: 'Crystals without loss.',
  }),
};

/**
 * The equation whose root h is: with these parts the gain is alike at two points B apart.
 * h in Ω, for crystals to ground h_B in S.
 */
function halfSpan(look: Look): Working {
  const design = designOf(look);
  const dual = toGround(look);
  const { formulas, where } = ladderFormulas(design.ladder, ['f_lo', 'f_hi']);
  const k = rows(look, 'couplings');
  const a = rows(look, 'meshes');
  const doubled = look('filter.family') === 'doubled';
  const root = dual ? 'h_B' : 'h';
  const symbols: Record<string, Bound> = {
    [root]: dual ? 'filter.halfSusceptance' : 'filter.halfSpan',
    q: 'filter.endQ',
    q_L: 'filter.endQLoad',
    a: 'filter.largestSum',
    f_mesh: 'filter.alignment',
    C_st: 'filter.stray',
    ...(dual ? { C_ac: 'filter.acrossFitted' } : {}),
    ...(doubled ? { p: found(2, '1', 'crystals side by side at the ends') } : {}),
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
    const tag = name.slice(3);
    if (name.startsWith('C_k')) {
      const row = k[byPart(design.ladder.coupling)];
      symbols[`k_${tag}`] = found(row?.k ?? 0, '1', 'coupling');
      const formula = dual
        ? `h_B * k_${tag} / (2 * pi * f_mesh)`
        : `1 / (2 * pi * f_mesh * h * k_${tag}) - C_st`;
      symbols[name] = step(formula, 'F', term.says);
    } else if (name.startsWith('C_s')) {
      const row = a[byPart(design.ladder.series)];
      symbols[`a_${tag}`] = found(row?.sum ?? 0, '1', 'sum of couplings there');
      const formula = dual
        ? `C_ac + h_B * (a - a_${tag}) / (2 * pi * f_mesh)`
        : `1 / (2 * pi * f_mesh * h * (a - a_${tag}))`;
      symbols[name] = step(formula, 'F', term.says);
    } else if (name === 'R_S' || name === 'R_L') {
      const q = name === 'R_S' ? 'q' : 'q_L';
      const formula = dual ? `${q} / h_B` : doubled ? `h / (${q} * p)` : `h / ${q}`;
      symbols[name] = step(formula, 'Ω', term.says);
    } else {
      symbols[name] = term;
    }
  }
  return {
    says: 'All parts follow from h. It is chosen so that two frequencies the wanted width apart are passed equally, 3 dB below the best, losses included.',
    left: formulas[0] ?? '',
    right: formulas[1] ?? '',
    root,
    where: symbols,
    source: `${dual ? susceptanceMethod : reactanceMethod}; smallest h by bracketing`,
  };
}
