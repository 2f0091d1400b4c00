import type { Ladder } from '../../circuit/ladder.ts';
import { delayFormula, returnLossFormula } from '../../circuit/ladderFigureFormulas.ts';
import { ladderFormulas } from '../../circuit/ladderFormulas.ts';
import { LEVEL_STEP } from '../../circuit/passband.ts';
import type { Bound, Look, StageWorkings, WorkingOf } from '../../fields/workings.ts';
import { chain, designOf, found, step } from './bounds.ts';
import type { filterFields } from './fields.ts';

type Workings = StageWorkings<typeof filterFields>;

const ladderOf = (look: Look): Ladder => look('filter.ladder') as Ladder;

/** An edge: the frequency at which the gain is so far below the best. */
function edge(key: string, symbol: string, down: number): WorkingOf {
  return (look) => {
    const { formulas, where } = ladderFormulas(ladderOf(look), [symbol]);
    return {
      says: `Going outwards from the passband, where the response is ${down} dB below its best point.`,
      left: `-(${formulas[0]}) - A_best`,
      right: 'A_down',
      root: symbol,
      where: {
        [symbol]: `filter.${key}`,
        A_best: 'filter.loss',
        A_down: found(down, 'dB', 'so far down'),
        ...where,
      },
      source: chain,
    };
  };
}

/** A gain along a curve. */
const gain =
  (ladderAt: (look: Look) => Ladder): WorkingOf =>
  (look) => {
    const { formulas, where } = ladderFormulas(ladderAt(look), ['f']);
    return {
      says: 'Power in the load over the most that the source could give, through one part after the other.',
      formula: formulas[0] ?? '',
      where: { f: 'point.frequency', ...where },
      source: chain,
    };
  };

export const responseWorkings: Pick<
  Workings,
  | 'response.gain'
  | 'response.delay'
  | 'response.returnLoss'
  | 'exactResponse.gain'
  | 'peak'
  | 'loss'
  | 'rippleFound'
  | 'returnLoss'
  | 'low3'
  | 'high3'
  | 'low6'
  | 'high6'
  | 'low20'
  | 'high20'
  | 'low60'
  | 'high60'
> = {
  'response.gain': gain(ladderOf),
  'exactResponse.gain': gain((look) => designOf(look).ladder),
  'response.delay': (look) => {
    const { formula, where } = delayFormula(ladderOf(look), 'f');
    return {
      says: 'How fast the phase turns with frequency: each part’s matrix carries its own derivative along.',
      formula,
      where: { f: 'point.frequency', ...where },
      source: chain,
    };
  },
  'response.returnLoss': (look) => {
    const { formula, where } = returnLossFormula(ladderOf(look), 'f');
    return {
      says: 'What the filter takes in against what it throws back, at its source’s end.',
      formula,
      where: { f: 'point.frequency', ...where },
      source: chain,
    };
  },
  peak: (look) => {
    const { formulas, where } = ladderFormulas(ladderOf(look), ['f_below', 'f_above']);
    return {
      says: 'The top of the highest hump: as much is passed one hertz below as one hertz above.',
      left: `10^((${formulas[0]}) / 10)`,
      right: `10^((${formulas[1]}) / 10)`,
      root: 'f_peak',
      where: {
        f_peak: 'filter.peak',
        d_f: found(LEVEL_STEP, 'Hz', 'to either side'),
        f_below: step('f_peak - d_f', 'Hz', 'one hertz below'),
        f_above: step('f_peak + d_f', 'Hz', 'one hertz above'),
        ...where,
      },
      source: chain,
    };
  },
  loss: (look) => {
    const { formulas, where } = ladderFormulas(ladderOf(look), ['f_peak']);
    return {
      says: 'The gain at the best point, with the sign of a loss.',
      formula: `-(${formulas[0]})`,
      where: { f_peak: 'filter.peak', ...where },
      source: chain,
    };
  },
  rippleFound: (look) => {
    const { dipAt } = designOf(look);
    if (dipAt === null) {
      return {
        says: 'The passband is one hump: there is no dip.',
        formula: '0 * A_best',
        where: { A_best: 'filter.loss' },
        source: 'definition',
      };
    }
    const { formulas, where } = ladderFormulas(ladderOf(look), ['f_dip']);
    return {
      says: 'The deepest dip between two humps, against the best point.',
      formula: `-(${formulas[0]}) - A_best`,
      where: {
        f_dip: found(dipAt, 'Hz', 'where the deepest dip is'),
        A_best: 'filter.loss',
        ...where,
      },
      source: chain,
    };
  },
  returnLoss: (look) => {
    const { formula, where } = returnLossFormula(ladderOf(look), 'f_worst');
    const at: Bound = found(
      designOf(look).worstMatchAt,
      'Hz',
      'the worst point of the curve within the middle eight tenths of the passband',
    );
    return {
      says: 'What the filter takes in against what it throws back, where that is worst.',
      formula,
      where: { f_worst: at, ...where },
      source: chain,
    };
  },
  low3: edge('low3', 'f_3lo', 3),
  high3: edge('high3', 'f_3hi', 3),
  low6: edge('low6', 'f_6lo', 6),
  high6: edge('high6', 'f_6hi', 6),
  low20: edge('low20', 'f_20lo', 20),
  high20: edge('high20', 'f_20hi', 20),
  low60: edge('low60', 'f_60lo', 60),
  high60: edge('high60', 'f_60hi', 60),
};
