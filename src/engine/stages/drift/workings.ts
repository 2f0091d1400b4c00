import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { driftFields } from './fields.ts';
import { CUBIC, MIDDLE } from './warmth.ts';

type Where = Record<string, Bound>;

const equivalent = 'closed form of the equivalent circuit (IEC 60122-1)';
const derivative = 'derivative of the loop’s reactance, worked by hand';

const divider: Where = { C_1: 'carrier.c1', C_pi: 'carrier.cpi', C_2: 'carrier.c2' };

const share1: Bound = {
  formula: '(C_2 / (C_1 + C_pi + C_2))^2',
  unit: '1',
  says: 'how much of C1 counts in the divider',
};
const share2: Bound = {
  formula: '((C_1 + C_pi) / (C_1 + C_pi + C_2))^2',
  unit: '1',
  says: 'how much of C2 counts in the divider',
};
const cubic: Bound = {
  value: CUBIC * 1e6,
  unit: 'ppm/K',
  says: 'cubic term of the AT cut, ppm for a kelvin cubed',
};
const kelvin: Bound = { value: 1, unit: 'K', says: 'one kelvin' };

/** Shift of quartz over a warming of `d`, as a fraction. */
const shift = (d: string) => `(a_T * ${d} + c_T * ${d} * (${d} / K_1)^2 / 1e6)`;

const middle = (look: Look): { formula: string; where: Where } =>
  look('filter.low6') === null || look('filter.high6') === null
    ? { formula: 'f_s', where: { f_s: 'carrier.crystalFs' } }
    : {
        formula: '((f_6l + f_6h) / 2)',
        where: { f_6l: 'filter.low6', f_6h: 'filter.high6' },
      };

const others: Where = { p_C: 'drift.ofParts', p_t: 'drift.ofTransistor' };

/** Series capacitance at one end of the spread. */
function seriesEnd(way: 1 | -1): Working {
  const plus = way === 1 ? '+' : '-';
  const minus = way === 1 ? '-' : '+';
  return {
    says:
      way === 1
        ? 'The crystal high and the divider small: less has to be pulled.'
        : 'The crystal low and the divider large: more has to be pulled.',
    formula: '1 / (2 * pi * f_c * (X_x - 1 / (2 * pi * f_c * C_d)))',
    where: {
      f_c: 'carrier.frequency',
      f_s: 'carrier.crystalFs',
      L_m: 'carrier.crystalLm',
      R_m: 'carrier.crystalRm',
      C_0: 'carrier.crystalC0',
      n_x: 'carrier.together',
      f_tol: 'drift.spread',
      C_osc: 'carrier.divider',
      t_C: 'drift.partSpread',
      f_e: { formula: `f_s ${plus} f_tol`, unit: 'Hz', says: 'series resonance at this end' },
      C_d: { formula: `C_osc * (1 ${minus} t_C)`, unit: 'F', says: 'divider at this end' },
      X_m: {
        formula: '2 * pi * L_m / n_x * (f_c - f_e) * (f_c + f_e) / f_c',
        unit: 'Ω',
        says: 'reactance of the motional arm',
      },
      a_x: { formula: '1 - 2 * pi * f_c * n_x * C_0 * X_m', unit: '1', says: 'by C0' },
      b_x: { formula: '2 * pi * f_c * C_0 * R_m', unit: '1', says: 'by C0 and loss' },
      X_x: {
        formula: '(X_m * a_x - R_m / n_x * b_x) / (a_x^2 + b_x^2)',
        unit: 'Ω',
        says: 'reactance of the crystal',
      },
    },
    source: equivalent,
  };
}

export const driftWorkings: StageWorkings<typeof driftFields> = {
  perDegree: {
    says: 'All three together.',
    formula: 'p_x + p_C + p_t',
    where: { p_x: 'drift.ofCrystal', ...others },
    source: 'sum',
  },
  ofCrystal: {
    says: 'The pulled crystal shifts as the crystal does.',
    formula: 'f_c * a_T',
    where: { f_c: 'carrier.frequency', a_T: 'drift.slope' },
    source: 'AT-cut curves of crystal makers',
    assumes: 'Motional capacitance and holder keep their values.',
  },
  ofParts: (look) => {
    const withC = look('carrier.seriesC') !== null && look('carrier.hzPerPf') !== null;
    const withL = look('carrier.seriesL') !== null;
    return {
      says: 'Each part’s change times what it pulls.',
      formula: `-p_st * a_C * (C_1 * k_1 + C_2 * k_2)${withC ? ' - p_ser * C_ser * a_C' : ''}${withL ? ' - 2 * pi * f_c * L_ser * a_L * 2 * pi * f_c * C_osc^2 * p_st' : ''}`,
      where: {
        p_st: 'carrier.hzPerStray',
        a_C: 'drift.capacitors',
        ...divider,
        k_1: share1,
        k_2: share2,
        ...(withC ? { p_ser: 'carrier.hzPerPf', C_ser: 'carrier.seriesC' } : {}),
        ...(withL
          ? {
              f_c: 'carrier.frequency',
              L_ser: 'carrier.seriesL',
              a_L: 'drift.coil',
              C_osc: 'carrier.divider',
            }
          : {}),
      },
      source: derivative,
    };
  },
  ofTransistor: (look) => {
    const some = (look('carrier.cpi') as number) > 0;
    return {
      says: 'At the same current the transconductance falls as the temperature rises, and with it the base’s capacitance.',
      formula: some ? 'p_st * k_1 * (C_pi + C_cb) / T_a' : '0 * p_st * C_pi / T_a',
      where: {
        p_st: 'carrier.hzPerStray',
        ...divider,
        k_1: share1,
        ...(some ? { C_cb: 'carrier.ccb' } : {}),
        T_a: 'plan.ambient',
      },
      source: 'hybrid-pi model: Cπ + Cμ = gm/2πfT, gm = qI/kT',
      assumes: 'Current and transition frequency stay.',
    };
  },
  wanders: {
    says: 'The crystal by its cubic, everything else by its slope.',
    formula: `f_c * ${shift('d_T')} + (p_C + p_t) * d_T`,
    where: {
      f_c: 'carrier.frequency',
      a_T: 'drift.slope',
      c_T: cubic,
      K_1: kelvin,
      d_T: 'drift.warmer',
      ...others,
    },
    source: 'Bechmann, Proc. IRE 48, 1960: AT cut; the cubic term from memory',
  },
  against: (look) => ({
    says: 'The filter’s crystals shift by the same share.',
    formula: `d_f - ${middle(look).formula} * ${shift('d_T')}`,
    where: {
      d_f: 'drift.wanders',
      ...middle(look).where,
      a_T: 'drift.slope',
      c_T: cubic,
      K_1: kelvin,
      d_T: 'drift.warmer',
    },
    source: 'Bechmann, Proc. IRE 48, 1960: AT cut',
    assumes: 'One batch: filter and carrier crystals are cut alike and equally warm.',
  }),
  'overWarmth.carrier': {
    says: 'The crystal by its cubic, everything else by its slope.',
    formula: `f_c * ${shift('d')} + (p_C + p_t) * d`,
    where: {
      f_c: 'carrier.frequency',
      a_T: 'drift.slope',
      c_T: cubic,
      K_1: kelvin,
      ...others,
      T: 'point.temperature',
      T_0: { value: MIDDLE, unit: 'K', says: '25 °C' },
      d: { formula: 'T - T_0', unit: 'K', says: 'warmer by' },
    },
    source: 'Bechmann, Proc. IRE 48, 1960: AT cut; the cubic term from memory',
  },
  'overWarmth.filter': (look) => ({
    says: 'The middle of the passband shifts as its crystals do.',
    formula: `${middle(look).formula} * ${shift('d')}`,
    where: {
      ...middle(look).where,
      a_T: 'drift.slope',
      c_T: cubic,
      K_1: kelvin,
      T: 'point.temperature',
      T_0: { value: MIDDLE, unit: 'K', says: '25 °C' },
      d: { formula: 'T - T_0', unit: 'K', says: 'warmer by' },
    },
    source: 'Bechmann, Proc. IRE 48, 1960: AT cut',
  }),
  bufferPull: {
    says: 'The buffer lies across C2.',
    formula: '-p_st * k_2 * C_buf',
    where: { p_st: 'carrier.hzPerStray', ...divider, k_2: share2, C_buf: 'drift.buffer' },
    source: derivative,
    assumes: 'Small against C2.',
  },
  startLoaded: {
    says: 'A resistance across C2 takes its share of the transconductance.',
    formula:
      'm_st * (1 - (C_1 + C_pi) / (g_m * C_2 * R_buf)) / (1 + 1 / (2 * pi * f_c * C_2 * R_buf)^2)',
    where: {
      m_st: 'carrier.startMargin',
      ...divider,
      g_m: 'carrier.gm',
      R_buf: 'drift.bufferResistance',
      f_c: 'carrier.frequency',
    },
    source: 'closed form of the three-capacitor oscillator with a resistance at its emitter',
  },
  leastC: seriesEnd(-1),
  mostC: seriesEnd(1),
  covers: {
    says: 'Whether a usual trimmer, with a fixed capacitor beside it, reaches from the one to the other.',
    rule: 'Looked up among the usual foil trimmers with E24 capacitors beside them.',
    where: { C_min: 'drift.leastC', C_max: 'drift.mostC' },
    source: 'common practice, from memory',
  },
  trimmer: {
    says: 'The smallest that reaches from the one to the other.',
    rule: 'Looked up among the usual foil trimmers with E24 capacitors beside them.',
    where: { C_min: 'drift.leastC', C_max: 'drift.mostC' },
    source: 'common practice, from memory',
  },
  'waysOut.way': told('In the order of what they cost.'),
  'waysOut.reaches': told('The oscillator’s reach with that one thing changed.'),
  'waysOut.says': told('With the figure that decides.'),
};

function told(says: string): Working {
  return {
    says,
    rule: says,
    where: { f_c: 'carrier.frequency', f_hi: 'carrier.reachHigh', f_lo: 'carrier.reachLow' },
    source: 'reach of the oscillator; the order is common practice, no source',
  };
}
