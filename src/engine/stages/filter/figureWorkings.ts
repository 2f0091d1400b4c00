import { couplings } from '../../circuit/couplings.ts';
import { endRatio } from '../../circuit/doubledEnds.ts';
import { ladderFormulas } from '../../circuit/ladderFormulas.ts';
import type { Bound, Look, StageWorkings, Working, WorkingOf } from '../../fields/workings.ts';
import {
  chain,
  crystalBounds,
  designOf,
  found,
  holderSteps,
  holderSymbol,
  reactanceSteps,
  step,
  toGround,
} from './bounds.ts';
import { CORNER, KEPT, LEAST, LOST } from './corners.ts';
import { chebyshevU } from './familyWorkings.ts';
import type { filterFields } from './fields.ts';

type Workings = StageWorkings<typeof filterFields>;

/** The distance between two edges. */
const width = (down: 3 | 6 | 20 | 60): Working => ({
  says: `From the lower to the upper −${down} dB point.`,
  formula: `f_${down}hi - f_${down}lo`,
  where: { [`f_${down}hi`]: `filter.high${down}`, [`f_${down}lo`]: `filter.low${down}` },
  source: 'definition',
});

/** What the chosen parts and the real ends change. */
function cost(
  key: 'width3' | 'rippleFound' | 'loss',
  symbol: string,
  unit: 'Hz' | 'dB',
): WorkingOf {
  return (look) => {
    const design = designOf(look);
    const exact = {
      width3: design.high - design.low,
      rippleFound: design.ripple,
      loss: design.loss,
    }[key];
    return {
      says: 'As built, less the same figure of the exact design.',
      formula: `${symbol} - ${symbol}_exact`,
      where: { [symbol]: `filter.${key}`, [`${symbol}_exact`]: found(exact, unit, 'exact design') },
      source: 'definition',
    };
  };
}

export const figureWorkings: Pick<
  Workings,
  | 'width3'
  | 'width6'
  | 'width20'
  | 'width60'
  | 'centre'
  | 'shape'
  | 'noiseBandwidth'
  | 'delayVariation'
  | 'qRatio'
  | 'rounding'
  | 'corners'
  | 'widthCost'
  | 'rippleCost'
  | 'lossCost'
> = {
  width3: width(3),
  width6: width(6),
  width20: width(20),
  width60: width(60),
  centre: {
    says: 'Half-way between the −3 dB points.',
    formula: '(f_3lo + f_3hi) / 2',
    where: { f_3lo: 'filter.low3', f_3hi: 'filter.high3' },
    source: 'definition',
  },
  shape: {
    says: 'How much wider the filter is at −60 dB than at −6 dB.',
    formula: 'B_60 / B_6',
    where: { B_60: 'filter.width60', B_6: 'filter.width6' },
    source: 'definition',
  },
  noiseBandwidth: (look) => ({
    says: 'The area under the response, as a power, over the power at its best point.',
    formula: 'W_H / 10^(-A_best / 10)',
    where: {
      W_H: found(designOf(look).area, 'Hz', 'area under the curve of the response, by trapezoids'),
      A_best: 'filter.loss',
    },
    source: 'definition of noise bandwidth: ∫|H|² df / |H|² at the best point',
    assumes: 'Nothing beyond the ends of the curve.',
  }),
  delayVariation: (look) => {
    const { slowest, fastest } = designOf(look);
    return {
      says: 'The longest less the shortest group delay on the curve between the −3 dB points.',
      formula: 'tau_max - tau_min',
      where: {
        tau_max: found(slowest, 's', 'longest, from the curve'),
        tau_min: found(fastest, 's', 'shortest, from the curve'),
      },
      source: 'definition',
    };
  },
  qRatio: {
    says: 'The crystal’s Q over the Q of the whole filter.',
    formula: 'Q_u * B_3 / f_mid',
    where: {
      f_s: 'filter.crystalFs',
      L_m: 'filter.crystalLm',
      R_m: 'filter.crystalRm',
      Q_u: step('2 * pi * f_s * L_m / R_m', '1', 'the crystal’s own Q'),
      B_3: 'filter.width3',
      f_mid: 'filter.centre',
    },
    source: 'common practice, no source',
  },
  rounding: (look) => rounding(look),
  corners: {
    says: 'Up to a decibel and a quarter is what twenty times f/B of Q leaves; twice as much is another filter.',
    formula: 'A_round < A_kept ? "holds" : (A_round < A_lost ? "close" : "fails")',
    where: {
      A_round: 'filter.rounding',
      A_kept: found(KEPT, 'dB', 'kept up to here'),
      A_lost: found(LOST, 'dB', 'lost from here on'),
    },
    source: 'common practice, no source',
  },
  widthCost: cost('width3', 'B_3', 'Hz'),
  rippleCost: cost('rippleFound', 'A_rip', 'dB'),
  lossCost: cost('loss', 'A_best', 'dB'),
};

/** What the family itself has lost four fifths of the way out. */
function ownLoss(look: Look): { formula: string; where: Record<string, Bound> } {
  if (look('filter.family') === 'butterworth') {
    return { formula: '10 * log10(1 + w_c^(2 * n))', where: { n: 'filter.crystals' } };
  }
  if (look('filter.family') === 'doubled') {
    const n = look('filter.crystals') as number;
    return {
      formula: `max(A_dip, 10 * log10(1 + (rho - (1 - (w_c * rho * q)^2) / rho)^2 * ${chebyshevU(n, 'w_c * rho * q')}^2 / 4))`,
      where: {
        n: 'filter.crystals',
        q: 'filter.endQ',
        rho: found(endRatio(n), '1', 'ends against the reactance of a coupling'),
        A_dip: found(couplings('doubled', n, 0).ripple ?? 0, 'dB', 'deepest dip of the family'),
      },
    };
  }
  return {
    formula:
      'max(A_r, 10 * log10(1 + epsilon^2 * (w_c * Omega_3 > 1 ? cosh(n * acosh(w_c * Omega_3)) : cos(n * acos(w_c * Omega_3)))^2))',
    where: {
      n: 'filter.crystals',
      A_r: 'filter.ripple',
      epsilon: step('sqrt(10^(A_r / 10) - 1)', '1', 'ε of the ripple'),
      Omega_3: step(
        'cosh(acosh(1 / epsilon) / n)',
        '1',
        'half power against the edge of the ripple',
      ),
    },
  };
}

function rounding(look: Look): Working {
  const design = designOf(look);
  const { formulas, where } = ladderFormulas(design.ladder, ['f_a', 'f_b']);
  const own = ownLoss(look);
  const dual = toGround(look);
  const at = (x: string) =>
    dual ? `f_s * sqrt(1 + 1 / (${x} + r))` : `f_s * sqrt(1 + ${x} / (1 + r * ${x}))`;
  const [unit, against] = dual
    ? ['1 / (2 * pi * f_s * C_m)', 'against Cm’s susceptance']
    : ['2 * pi * f_s * C_m', 'against Cm’s reactance'];
  return {
    says: `The exact design, four fifths of the way from the middle to each edge by ${dual ? 'susceptance' : 'reactance'}, against the family without loss; the worse side counts.`,
    formula: 'A_more < A_least ? 0 : A_more',
    where: {
      ...crystalBounds,
      f_lo: found(design.low, 'Hz', 'lower −3 dB point of the exact design'),
      f_hi: found(design.high, 'Hz', 'upper −3 dB point of the exact design'),
      A_exact: found(design.loss, 'dB', 'loss of the exact design'),
      w_c: found(CORNER, '1', 'how far out'),
      ...holderSteps(look),
      ...reactanceSteps('f_lo', 'X_lo', holderSymbol(look)),
      ...reactanceSteps('f_hi', 'X_hi', holderSymbol(look)),
      r: step(`${holderSymbol(look)} / C_m`, '1', 'what lies across the crystal over its Cm'),
      x_lo: step(`${dual ? '1 / X_lo' : 'X_lo'} * ${unit}`, '1', `lower edge, ${against}`),
      x_hi: step(`${dual ? '1 / X_hi' : 'X_hi'} * ${unit}`, '1', `upper edge, ${against}`),
      x_mid: step('(x_lo + x_hi) / 2', '1', 'middle'),
      x_c: step('w_c * (x_hi - x_lo) / 2', '1', 'out to the corner'),
      x_a: step('x_mid - x_c', '1', 'lower corner'),
      x_b: step('x_mid + x_c', '1', 'upper corner'),
      f_a: step(at('x_a'), 'Hz', 'lower corner'),
      f_b: step(at('x_b'), 'Hz', 'upper corner'),
      ...own.where,
      A_own: step(own.formula, 'dB', 'the family there, without loss'),
      ...where,
      A_more: step(
        `max(-(${formulas[0]}), -(${formulas[1]})) - A_exact - A_own`,
        'dB',
        'what the worse corner lacks',
      ),
      A_least: found(LEAST, 'dB', 'less than this is none'),
    },
    source: chain,
  };
}
