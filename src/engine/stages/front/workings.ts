import { coupledFormula } from '../../circuit/coupledFormula.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { BUTTERWORTH } from './design.ts';
import type { frontFields } from './fields.ts';
import { SECOND, USUAL } from './work.ts';

type Where = Record<string, Bound>;

const kq = 'coupled-resonator design by k and q: Zverev, Handbook of Filter Synthesis, 1967';
const chain = 'chain matrices of the ladder, any text on two-ports';

const isThree = (look: Look): boolean => look('front.circuits') === 3;

const shape = (look: Look) => BUTTERWORTH[look('front.circuits') === 3 ? 3 : 2];

const tuned: Where = { f_0: 'plan.nominal', L: 'front.coil' };

const node: Bound = {
  formula: '1 / ((2 * pi * f_0)^2 * L)',
  unit: 'F',
  says: 'what tunes the coil alone',
};

/** What the symbols of the band-pass stand for. */
const parts = (three: boolean): Where => ({
  f_0: 'plan.nominal',
  L: 'front.coil',
  Q_L: 'front.coilQ',
  R_e: 'front.end',
  C_f: 'front.feed',
  C_e: 'front.endC',
  C_k: 'front.couple',
  ...(three ? { C_m: 'front.middleC' } : {}),
});

/** How much less comes through at a frequency than at the operating frequency, dB. */
function taken(look: Look, symbol: string, path: string, says: string): Working {
  const three = isThree(look);
  return {
    says,
    formula: `20 * log10(abs${coupledFormula(three, symbol)} / abs${coupledFormula(three, 'f_0')})`,
    where: { ...parts(three), [symbol]: path },
    source: chain,
  };
}

export const frontWorkings: StageWorkings<typeof frontFields> = {
  width: (look) =>
    look('front.widthGiven') === null
      ? {
          says: 'A share of the operating frequency that ordinary coils can make.',
          formula: 'w_u * f_0',
          where: {
            f_0: 'plan.nominal',
            w_u: { value: USUAL.width, unit: '1', says: 'usual share' },
          },
          source: 'common practice, no source',
        }
      : {
          says: 'As typed.',
          formula: 'B_bp',
          where: { B_bp: 'front.widthGiven' },
          source: 'as typed',
        },
  coil: (look) =>
    look('front.coilGiven') === null
      ? {
          says: 'A coil whose reactance suits toroids and trimmers.',
          formula: 'X_u / (2 * pi * f_0)',
          where: {
            f_0: 'plan.nominal',
            X_u: { value: USUAL.reactance, unit: 'Ω', says: 'usual reactance' },
          },
          source: 'common practice, no source',
        }
      : {
          says: 'As typed.',
          formula: 'L_g',
          where: { L_g: 'front.coilGiven' },
          source: 'as typed',
        },
  loadedQ: (look) => ({
    says: 'What the Butterworth response asks of the end circuits.',
    formula: 'q * f_0 / B',
    where: {
      q: { value: shape(look).q, unit: '1', says: 'end Q of the prototype' },
      f_0: 'plan.nominal',
      B: 'front.width',
    },
    source: kq,
  }),
  coupleExact: (look) => ({
    says: 'A share of the tuning capacitance, by the width.',
    formula: 'k * B / f_0 * C_0',
    where: {
      k: { value: shape(look).k, unit: '1', says: 'coupling of the prototype' },
      B: 'front.width',
      ...tuned,
      C_0: node,
    },
    source: kq,
  }),
  couple: (look) => fitted(look, 'front.couple', 'front.coupleExact'),
  feedExact: {
    says: 'So that the end, through this capacitor, loads the circuit to its Q beside the coil’s own loss.',
    formula: '1 / (2 * pi * f_0 * R_e * sqrt(R_p / R_e - 1))',
    where: {
      ...tuned,
      R_e: 'front.end',
      Q_e: 'front.loadedQ',
      Q_L: 'front.coilQ',
      R_p: {
        formula: '2 * pi * f_0 * L / (1 / Q_e - 1 / Q_L)',
        unit: 'Ω',
        says: 'resistance that the end should look like across the circuit',
      },
    },
    source: 'series to parallel change of a capacitor and a resistor',
  },
  feed: (look) => fitted(look, 'front.feed', 'front.feedExact'),
  endC: {
    says: 'What is left to tune the coil with: the couplings count.',
    formula: 'C_0 - C_k - C_f * x^2 / (1 + x^2)',
    where: {
      ...tuned,
      C_0: node,
      C_k: 'front.couple',
      C_f: 'front.feed',
      R_e: 'front.end',
      x: {
        formula: '1 / (2 * pi * f_0 * C_f * R_e)',
        unit: '1',
        says: 'reactance over resistance of the end',
      },
    },
    source: 'series to parallel change of a capacitor and a resistor',
  },
  middleC: {
    says: 'Both couplings count.',
    formula: 'C_0 - 2 * C_k',
    where: { ...tuned, C_0: node, C_k: 'front.couple' },
    source: kq,
  },
  loss: (look) => {
    const three = isThree(look);
    return {
      says: 'Power that the source could give over what reaches the end.',
      formula: `20 * log10(abs${coupledFormula(three, 'f_0')} / 2)`,
      where: parts(three),
      source: chain,
    };
  },
  'response.level': (look) => {
    const { says, formula, where, source } = taken(
      look,
      'f',
      'point.frequency',
      'Against the operating frequency.',
    ) as { says: string; formula: string; where: Where; source: string };
    return { says, formula: `-(${formula})`, where, source };
  },
  'leftovers.what': {
    says: 'The places where something unwanted is sure to lie.',
    rule: 'Image, oscillator, its second harmonic, and the intermediate frequency itself.',
    where: {},
    source: 'arithmetic of a mixer',
  },
  'leftovers.frequency': (_, index) => ({
    says: 'As the Conversion leaf has it.',
    formula: index === 2 ? '2 * f_lo' : 'f_x',
    where:
      index === 2
        ? { f_lo: 'convert.oscillator' }
        : {
            f_x:
              index === 0
                ? 'convert.image'
                : index === 1
                  ? 'convert.oscillator'
                  : 'carrier.frequency',
          },
    source: 'arithmetic of a mixer',
  }),
  'leftovers.before': (_, index) => {
    if (index === 0) {
      return {
        says: 'Sum and difference leave the mixer with the same strength.',
        formula: 'A_same',
        where: { A_same: { value: 0, unit: 'dB', says: 'equally strong' } },
        source: 'arithmetic of a mixer',
      };
    }
    const second = { value: SECOND, unit: 'dB', says: 'its second harmonic below it' } as const;
    return {
      says: 'As the Conversion leaf has it.',
      formula: index === 2 ? 'A_x - A_2' : 'A_x',
      where: {
        A_x: index === 3 ? 'convert.carrierLeft' : 'convert.oscillatorLeft',
        ...(index === 2 ? { A_2: second } : {}),
      },
      source: 'balance of the mixer; second harmonic: common practice, no source',
    };
  },
  'leftovers.taken': (look) =>
    taken(
      look,
      'f',
      'row.frequency',
      'How much less comes through than at the operating frequency.',
    ),
  'leftovers.left': {
    says: 'At the mixer, less what the band-pass takes.',
    formula: 'A_0 - A_t',
    where: { A_0: 'row.before', A_t: 'row.taken' },
    source: 'definition',
  },
  'leftovers.outcome': {
    says: 'Against what is wanted; close within 6 dB of it.',
    formula: '-A_left >= A_want ? "holds" : -A_left >= A_want - A_c ? "close" : "fails"',
    where: {
      A_left: 'row.left',
      A_want: 'front.wanted',
      A_c: { value: 6, unit: 'dB', says: 'what counts as close' },
    },
    source: 'this program’s own scale',
  },
  imageRejection: (look) =>
    taken(
      look,
      'f_im',
      'convert.image',
      'How much less comes through than at the operating frequency.',
    ),
  halfwayRejection: (look) =>
    taken(
      look,
      'f_half',
      'convert.halfway',
      'How much less comes through than at the operating frequency.',
    ),
};

/** The capacitor fitted: the exact one, or the nearest of a series. */
function fitted(look: Look, path: string, exact: string): Working {
  const series = look('front.fitted') as 'exact' | 'e24' | 'e12';
  return series === 'exact'
    ? {
        says: 'As wanted.',
        formula: 'C_x',
        where: { C_x: exact },
        source: 'as chosen',
      }
    : {
        says: `The value of ${series.toUpperCase()} nearest by ratio.`,
        formula: 'C_s',
        where: {
          C_x: exact,
          C_s: {
            value: look(path) as number,
            unit: 'F',
            says: `nearest of ${series.toUpperCase()} to the value wanted`,
          },
        },
        source: 'IEC 60063',
      };
}
