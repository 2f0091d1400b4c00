import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { transmitFields } from './fields.ts';
import { ANTENNA_OFF, FREQUENCY_RATIO, type LimitKey, limitKeys } from './limitRows.ts';
import { deviceAt } from './smallDevice.ts';

const straight = 'The current rises in a straight line with the envelope from its standing value.';
const balance = 'energy balance: direct power in, radio power out, the rest is heat';

const currents = {
  V_cc: 'plan.supply',
  I_q: 'transmit.quiescent',
  I_dc: 'transmit.dcCurrent',
  P_c: 'transmit.collectorPower',
} as const;

type HeatKey =
  | 'dissipation'
  | 'dissipationEach'
  | 'sinkKind'
  | 'overSink.speech'
  | 'overSink.tone'
  | 'dissipationTone'
  | 'dissipationTwoTone'
  | 'dissipationSpeech'
  | 'junction'
  | 'junctionTone'
  | 'sinkSpeech'
  | 'sinkTone'
  | 'sinkAdvice'
  | 'limits.what'
  | 'limits.used'
  | 'limits.outcome'
  | 'limits.stands';

export const heatWorkings: Pick<StageWorkings<typeof transmitFields>, HeatKey> = {
  dissipation: {
    says: 'What the supply gives at full power and the load doesn’t get.',
    formula: 'V_cc * I_dc - P_c',
    where: { V_cc: 'plan.supply', I_dc: 'transmit.dcCurrent', P_c: 'transmit.collectorPower' },
    source: balance,
  },
  dissipationEach: (look) => ({
    says: 'Shared evenly.',
    formula: `P_d${devicesOf(look) === 1 ? '' : ' / n_tr'}`,
    where: { P_d: 'transmit.dissipation', ...devices(look) },
    source: balance,
    assumes: 'Emitter resistors make them share.',
  }),
  sinkKind: {
    says: 'The smallest of the usual heat sinks that does.',
    rule: 'Looked up among the usual ones by what speech and tone ask for.',
    where: { R_sa_sp: 'transmit.sinkSpeech', R_sa_tone: 'transmit.sinkTone' },
    source: 'free-air figures from memory, ±20 %',
  },
  'overSink.speech': (look) => overSinkOf(look, 'transmit.dissipationSpeech'),
  'overSink.tone': (look) => overSinkOf(look, 'transmit.dissipationTone'),
  dissipationTone: {
    says: 'Heat at the envelope x where it is greatest: at full power or, in a stage that draws little at rest, below it.',
    formula: 'V_cc * (I_q + (I_dc - I_q) * x) - P_c * x^2',
    where: {
      ...currents,
      x: {
        formula: 'min(1, V_cc * (I_dc - I_q) / (2 * P_c))',
        unit: '1',
        says: 'envelope of the tone that heats most, over the full one',
      },
    },
    source: balance,
    assumes: straight,
  },
  dissipationTwoTone: {
    says: 'The mean supply current of two tones, less half the peak envelope power.',
    formula: 'V_cc * I_dc2 - P_c / 2',
    where: {
      V_cc: 'plan.supply',
      I_dc2: 'transmit.twoToneCurrent',
      P_c: 'transmit.collectorPower',
    },
    source: balance,
    assumes: straight,
  },
  dissipationSpeech: {
    says: 'The mean supply current on speech, less the mean radio power.',
    formula: 'V_cc * (I_q + (I_dc - I_q) * sqrt(pi * d_sp) / 2) - P_c * d_sp',
    where: { ...currents, d_sp: 'transmit.speechMean' },
    source: balance,
    assumes: `${straight} Speech without a pause, its envelope spread as Rayleigh’s law has it.`,
  },
  junction: (look) => junctionOf(look, 'transmit.dissipationSpeech'),
  junctionTone: (look) => junctionOf(look, 'transmit.dissipationTone'),
  sinkSpeech: (look) => sinkOf(look, 'transmit.dissipationSpeech'),
  sinkTone: (look) => sinkOf(look, 'transmit.dissipationTone'),
  sinkAdvice: {
    says: 'Whether the free-standing case is enough, and if not, which heat sink is.',
    rule: 'None where air temperature plus heat times the resistance from junction to air stays within what is allowed; else the figure worked out for speech and for a steady tone.',
    where: {
      P_d_sp: 'transmit.dissipationSpeech',
      P_d_tone: 'transmit.dissipationTone',
      R_ja: 'transmit.toAmbient',
      T_a: 'plan.ambient',
      T_ok: 'transmit.junctionAllowed',
    },
    source: 'thermal resistances in series',
  },
  'limits.what': {
    says: 'The limits that a bench final meets first.',
    rule: 'A fixed list: voltage, current, heat, speed of the final; heat and voltage of the driver.',
    where: {},
    source: 'makers’ public data sheets',
  },
  'limits.used': (look, index) => usedOf(look, limitKeys[index] ?? 'voltage'),
  'limits.outcome': {
    says: 'Up to 80 % holds, up to 100 % is close.',
    formula: 'u_row > 1 ? "fails" : u_row > 0.8 ? "close" : "holds"',
    where: { u_row: 'row.used' },
    source: 'common practice, no source',
  },
  'limits.stands': {
    says: 'The figure that stands and the limit it is held against.',
    rule: 'Both figures of the share that is used, written out.',
    where: { u_row: 'row.used' },
    source: 'makers’ public data sheets',
  },
};

/** How many transistors share the heat. */
const devicesOf = (look: Look): number => {
  const form = look('transmit.finalForm');
  return form === 'single'
    ? 1
    : (look('transmit.finalDevices') as number) * (form === 'pushPull' ? 2 : 1);
};

const devices = (look: Look): Record<string, Bound> =>
  devicesOf(look) === 1
    ? {}
    : { n_tr: { value: devicesOf(look), unit: '1', says: 'transistors that share the heat' } };

const each = (look: Look): string => (devicesOf(look) === 1 ? '' : ' / n_tr');

/** Junction temperature at one heat sink of the curve. */
const overSinkOf = (look: Look, power: string): Working => ({
  says: 'Air temperature, and the heat times the resistances on its way into the air.',
  formula: `T_a + P_heat * ((R_jc + R_cs)${each(look)} + R_x)`,
  where: {
    ...devices(look),
    T_a: 'plan.ambient',
    P_heat: power,
    R_jc: 'transmit.toCase',
    R_cs: 'transmit.contact',
    R_x: 'point.sink',
  },
  source: 'thermal resistances in series',
});

function junctionOf(look: Look, power: string): Working {
  const free = look('transmit.cooling') === 'free' || look('transmit.toCase') === null;
  return free
    ? {
        says: 'Air temperature, and the heat times the resistance on its way into the air.',
        formula: `T_a + P_heat * R_ja${each(look)}`,
        where: { ...devices(look), T_a: 'plan.ambient', P_heat: power, R_ja: 'transmit.toAmbient' },
        source: 'thermal resistances in series',
        assumes: 'The transistor stands free.',
      }
    : {
        says: 'Air temperature, and the heat times the resistances on its way into the air.',
        formula: `T_a + P_heat * ((R_jc + R_cs)${each(look)} + R_sa)`,
        where: {
          ...devices(look),
          T_a: 'plan.ambient',
          P_heat: power,
          R_jc: 'transmit.toCase',
          R_cs: 'transmit.contact',
          R_sa: 'transmit.sink',
        },
        source: 'thermal resistances in series',
        assumes: 'All heat goes through the heat sink.',
      };
}

const sinkOf = (look: Look, power: string): Working => ({
  says: 'What the junction may rise over the air, over the heat, less what lies before the heat sink.',
  formula: `(T_ok - T_a) / P_heat - (R_jc + R_cs)${each(look)}`,
  where: {
    ...devices(look),
    T_ok: 'transmit.junctionAllowed',
    T_a: 'plan.ambient',
    P_heat: power,
    R_jc: 'transmit.toCase',
    R_cs: 'transmit.contact',
  },
  source: 'thermal resistances in series',
});

/** The share of one limit that is used. */
function usedOf(look: Look, key: LimitKey): Working {
  const driver = deviceAt(look, 'transmit.driverDevice');
  const temperature = { T_ok: 'transmit.junctionAllowed', T_a: 'plan.ambient' } as const;
  const forms: Record<LimitKey, readonly [string, string, Record<string, Bound>]> = {
    voltage: [
      'The collector swings as far above the supply as below it.',
      '(2 * V_cc - V_sat) / V_ceo',
      { V_cc: 'plan.supply', V_sat: 'transmit.saturation', V_ceo: 'transmit.limitVce' },
    ],
    antennaOff: [
      'Without a load the collector may swing to about four times the supply.',
      'k_off * V_cc / V_ceo',
      {
        k_off: { value: ANTENNA_OFF, unit: '1', says: 'common practice, no source' },
        V_cc: 'plan.supply',
        V_ceo: 'transmit.limitVce',
      },
    ],
    current: [
      'The tip of each transistor’s current pulse against the limit.',
      'I_max1 / I_c_max',
      { I_max1: 'transmit.peakEach', I_c_max: 'transmit.limitIc' },
    ],
    speech: [
      'The junction’s rise over the air against the rise allowed.',
      '(T_j - T_a) / (T_ok - T_a)',
      { T_j: 'transmit.junction', ...temperature },
    ],
    tone: [
      'The junction’s rise over the air against the rise allowed.',
      '(T_j - T_a) / (T_ok - T_a)',
      { T_j: 'transmit.junctionTone', ...temperature },
    ],
    frequency: [
      'A transition frequency of ten times the operating frequency leaves useful gain.',
      'k_f * f_0 / f_T',
      {
        k_f: { value: FREQUENCY_RATIO, unit: '1', says: 'common practice, no source' },
        f_0: 'plan.nominal',
        f_T: 'transmit.transition',
      },
    ],
    gain: [
      'Current gain asked for against the one there is.',
      'A_I / beta_fin',
      { A_I: 'transmit.currentGainAsked', beta_fin: 'transmit.currentGainThere' },
    ],
    driverHeat: [
      'The driver turns all it draws into heat while you pause.',
      'I_drv * V_cc * R_ja / (T_ok - T_a)',
      {
        I_drv: 'transmit.driverStanding',
        V_cc: 'plan.supply',
        R_ja: {
          value: driver.toAmbient,
          unit: 'K/W',
          says: 'junction to air, free-standing',
          source: driver.source,
        },
        ...temperature,
      },
    ],
    driverVoltage: [
      'The driver’s collector swings as far above the supply as below it.',
      '2 * V_cc / V_ceo',
      {
        V_cc: 'plan.supply',
        V_ceo: {
          value: driver.vceo,
          unit: 'V',
          says: 'collector voltage, base open',
          source: driver.source,
        },
      },
    ],
  };
  const [says, formula, where] = forms[key];
  return { says, formula, where, source: 'makers’ public data sheets' };
}
