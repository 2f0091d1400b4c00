import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { Arrangement } from './arrangement.ts';
import type { powerFields } from './fields.ts';
import { BOLTZMANN, CHARGE, FALL, WELL } from './runaway.ts';

const balance =
  'feedback of heat and current, closed form; Gray & Meyer, on output stages (from memory)';

/** How the final's transistors stand together, as constants of a formula. */
function standing(look: Look): { readonly sides: Bound; readonly gang: Bound } {
  const { sides = 1, gang = 1 } = (look('power.arrangement') ?? {}) as Partial<Arrangement>;
  return {
    sides: { value: sides, unit: '1', says: 'sides: two in push-pull' },
    gang: { value: gang, unit: '1', says: 'transistors side by side on each side' },
  };
}

/** Steps from heat and bias to the thermal loop; `n_tr` and the like are fields. */
function loopWhere(look: Look): Record<string, Bound> {
  const card = look('power.modelCard') as { readonly bf?: number } | null | undefined;
  return {
    k_V: {
      value: FALL,
      unit: '1',
      says: 'fall of the base–emitter voltage in volts for each kelvin',
      source: '(1.2 V − VBE)/T, from memory',
    },
    per: { value: 1, unit: 'K', says: 'one kelvin' },
    one: { value: 1, unit: 'V', says: 'one volt' },
    V_cc: 'plan.supply',
    R_dr: 'power.drift',
    R_bs: 'power.biasSource',
    R_sh: 'power.shunt',
    n_s: standing(look).sides,
    n_tr: 'power.devices',
    beta_F: { value: card?.bf ?? 1, unit: '1', says: 'current gain of the model card' },
    R_B: {
      formula: 'n_tr / ((1 / R_bs + n_s / R_sh) * (beta_F + 1))',
      unit: 'Ω',
      says: 'what the bias path adds to each emitter resistor',
    },
    R_hot: {
      formula: 'k_V * one / per * V_cc * R_dr',
      unit: 'Ω',
      says: 'fall of the base–emitter voltage for each ampere more',
    },
  };
}

const thermalVoltage: Record<string, Bound> = {
  k_B: { value: BOLTZMANN, unit: 'J/K', says: 'Boltzmann’s constant', source: 'SI brochure' },
  q_e: { value: CHARGE, unit: 'C', says: 'elementary charge', source: 'SI brochure' },
  T_a: 'plan.ambient',
  V_T: { formula: 'k_B * T_a / q_e', unit: 'V', says: 'thermal voltage' },
};

const sinkPath = { R_jc: 'transmit.toCase', R_cs: 'transmit.contact' } as const;

const onSink = (look: Look) =>
  look('transmit.cooling') !== 'free' && typeof look('transmit.toCase') === 'number';

function heatPath(look: Look): Working {
  return onSink(look)
    ? {
        says: 'The ways in series; the heat sink is warmed by all of them.',
        formula: 'R_jc + R_cs + n_tr * R_sa',
        where: { ...sinkPath, n_tr: 'power.devices', R_sa: 'transmit.sink' },
        source: 'thermal resistances in series',
        assumes: 'All share one heat sink and are equally warm.',
      }
    : {
        says: 'The transistor stands free.',
        formula: 'R_ja',
        where: { R_ja: 'transmit.toAmbient' },
        source: 'thermal resistance of the case',
      };
}

/** The square law of the supply. */
const swing: Record<string, Bound> = {
  V_s: 'point.supply',
  V_cc: 'plan.supply',
  V_sat: 'transmit.saturation',
  x_s: {
    formula: 'max(0 * V_s, V_s - V_sat) / (V_cc - V_sat)',
    unit: '1',
    says: 'swing of the collector over that at the planned supply',
  },
};

export const powerWorkings: StageWorkings<typeof powerFields> = {
  devices: (look) => ({
    says: 'Those on each side, and both sides of a push-pull stage.',
    formula: 'n_s * n_p',
    where: { n_s: standing(look).sides, n_p: standing(look).gang },
    source: 'counted, by the form of the final',
  }),
  standingEach: {
    says: 'They share it alike.',
    formula: 'I_q / n_tr',
    where: { I_q: 'transmit.quiescent', n_tr: 'power.devices' },
    source: 'closed form',
    assumes: 'Alike and equally warm: choose them for it, or let the emitter resistors see to it.',
  },
  ballastStanding: {
    says: 'Ohm’s law.',
    formula: 'R_bal * I_q1',
    where: { R_bal: 'power.ballast', I_q1: 'power.standingEach' },
    source: 'Ohm’s law',
  },
  ballastCrest: (look) => ({
    says: 'Ohm’s law at the tip of the current pulse.',
    formula: 'R_bal * I_max / n_p',
    where: {
      R_bal: 'power.ballast',
      I_max: 'transmit.peakCurrent',
      n_p: standing(look).gang,
    },
    source: 'Ohm’s law',
  }),
  heatPath,
  drift: (look) =>
    look('power.tracking') === 'sink' && onSink(look)
      ? {
          says: 'The bias diode is as warm as the heat sink: the way up to there is left.',
          formula: 'R_jc + R_cs',
          where: sinkPath,
          source: 'thermal resistances in series',
          assumes: 'The diode falls by as much for each kelvin as the base–emitter voltage does.',
        }
      : heatPath(look),
  thermalLoop: (look) => ({
    says: 'A kelvin lowers the base–emitter voltage, that raises the current, that makes heat, and that brings so many kelvins more.',
    formula: 'R_hot * I_q1 / (V_T + I_q1 * (R_bal + R_B))',
    where: {
      ...loopWhere(look),
      ...thermalVoltage,
      I_q1: 'power.standingEach',
      R_bal: 'power.ballast',
    },
    source: balance,
    assumes: 'Little drive; the collector has the whole supply; slow changes.',
  }),
  runawayCurrent: (look) => ({
    says: 'The standing current at which that loop becomes 1.',
    formula: 'V_T / (R_hot - R_bal - R_B)',
    where: { ...loopWhere(look), ...thermalVoltage, R_bal: 'power.ballast' },
    source: balance,
  }),
  ballastNeeded: (look) => ({
    says: 'With this much the loop stays below 1 at any current.',
    formula: 'max(0 * R_hot, R_hot - R_B)',
    where: loopWhere(look),
    source: balance,
  }),
  steady: {
    says: 'Below a half holds, below 1 is close.',
    formula: 'k_th >= 1 ? "fails" : k_th > k_well ? "close" : "holds"',
    where: {
      k_th: 'power.thermalLoop',
      k_well: { value: WELL, unit: '1', says: 'common practice, no source' },
    },
    source: 'common practice, no source',
  },
  ballastAdvice: {
    says: 'What comes of the thermal loop.',
    rule: 'By the thermal loop at the standing current, and the current at which it would be 1.',
    where: { k_th: 'power.thermalLoop', R_bal: 'power.ballast' },
    source: balance,
  },
  feedUsed: (look) =>
    typeof look('power.feed') === 'number'
      ? {
          says: 'As you measured it.',
          formula: 'L_fm',
          where: { L_fm: 'power.feed' },
          source: 'as typed',
        }
      : {
          says: 'So many times the load of a collector, as Windings asks for.',
          formula: 'k_X * R_c / (n_s * 2 * pi * f_0)',
          where: {
            k_X: 'windings.reactanceTimes',
            R_c: 'transmit.collectorLoad',
            n_s: standing(look).sides,
            f_0: 'plan.nominal',
          },
          source: 'XL = 2πfL',
        },
  driverUsed: (look) =>
    typeof look('power.driverLead') === 'number'
      ? {
          says: 'As you measured it.',
          formula: 'L_dm',
          where: { L_dm: 'power.driverLead' },
          source: 'as typed',
        }
      : {
          says: 'The leakage of the driver’s transformer, as its base winding has it.',
          formula: 'sigma_P * L_P * R_base / R_L_drv',
          where: {
            sigma_P: 'transmit.driverLeakage',
            L_P: 'transmit.driverWinding',
            R_base: 'transmit.finalInput',
            R_L_drv: 'transmit.driverLoad',
          },
          source: 'inductance goes as the square of the turns, and so do resistances',
        },
  'overSupply.power': {
    says: 'The swing squared.',
    formula: 'P_PEP * x_s^2',
    where: { ...swing, P_PEP: 'plan.pep' },
    source: 'P = V²/(2R), closed form',
    assumes: 'The same load, driven until the collector reaches down to what it keeps for itself.',
  },
  'overSupply.efficiency': {
    says: 'Power at the antenna over supply times current; the current goes with the swing.',
    formula: 'P_PEP * x_s / (V_s * I_dc)',
    where: { ...swing, P_PEP: 'plan.pep', I_dc: 'transmit.dcCurrent' },
    source: 'closed form',
    assumes: 'The conduction angle stays.',
  },
  cardSource: {
    says: 'Your own card, or the chosen transistor’s.',
    rule: 'A whole card of yours goes before that of the chosen transistor; bare parameters of yours replace those alone.',
    where: { card: 'power.card' },
    source: 'published notation of circuit simulators',
  },
  'cardRows.parameter': {
    says: 'Its name in the published notation.',
    rule: 'A fixed list, and whatever your card names besides.',
    where: {},
    source: 'Antognetti & Massobrio, Semiconductor Device Modeling with SPICE, ch. 2 (from memory)',
  },
  'cardRows.what': {
    says: 'In plain words.',
    rule: 'A fixed list.',
    where: {},
    source: 'Antognetti & Massobrio, Semiconductor Device Modeling with SPICE, ch. 2 (from memory)',
  },
  'cardRows.value': {
    says: 'As the exact answer takes it.',
    rule: 'From your card where it has one; else the published value if it is a whole card, or the chosen transistor’s; the transit time goes with a transition frequency of your own.',
    where: { f_T: 'transmit.transition' },
    source: 'the card named above',
  },
  'cardRows.whence': {
    says: 'Which of the two it was taken from.',
    rule: 'Your card goes before the chosen transistor’s.',
    where: {},
    source: 'the cards themselves',
  },
};
