import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { biasForm, biasSteps, devicePath, junctionSteps, resistorPaths } from './biasSteps.ts';
import type { transmitFields } from './fields.ts';
import { COLDEST, HOTTEST, type SmallName, smallNames } from './smallBias.ts';
import { soundCard } from './smallCard.ts';
import { deviceAt } from './smallDevice.ts';

const source =
  'exponential junction with Early effect (Gummel & Poon, BSTJ 49, 1970, 827, forward half); Kirchhoff’s laws';
const assumes =
  'The junction is as warm as the row says; the base–collector junction conducts nothing, so that it holds down to saturation.';

const ROWS = 3;
const nameOf = (index: number): SmallName => smallNames[Math.floor(index / ROWS)] ?? 'driver';
/** Rows of the table of models; the fourth is the transistor that sleeps. */
const modelNames = ['mic', 'follower', 'amplifier', 'asleep', 'driver'] as const;
const measuredPaths: Readonly<Partial<Record<SmallName, string>>> = {
  follower: 'transmit.micCurrent',
  amplifier: 'transmit.amplifierCurrent',
  driver: 'transmit.driverCurrent',
};

type BiasKey = Extract<
  keyof StageWorkings<typeof transmitFields>,
  `biases.${string}` | `models.${string}`
>;

export const biasWorkings: Pick<
  StageWorkings<typeof transmitFields>,
  BiasKey | `${SmallName}Standing`
> = {
  'biases.stage': listed('The small stages, three rows each.'),
  'biases.condition': listed(
    'A usual transistor in the air as it is; least gain at 0 °C; most gain at 60 °C.',
  ),
  'biases.gain': (look, index) => {
    const { hfe, small, source: sheet } = deviceOf(look, nameOf(index));
    const value = [hfe[1], hfe[0], small.hfeMost][index % ROWS] ?? hfe[1];
    return {
      says: 'Usual, least or most of its kind.',
      formula: 'h_FE',
      where: { h_FE: { value, unit: '1', says: 'current gain for direct current', source: sheet } },
      source: 'makers’ data sheets',
    };
  },
  'biases.temperature': (_, index) => {
    const says = 'How warm the junction is taken to be.';
    if (index % ROWS === 0) {
      return { says, formula: 'T_a', where: { T_a: 'plan.ambient' }, source: 'as typed' };
    }
    const value = index % ROWS === 1 ? COLDEST : HOTTEST;
    return {
      says,
      formula: 'T_x',
      where: { T_x: { value, unit: '°C', says: 'common practice, no source' } },
      source: 'common practice, no source',
    };
  },
  'biases.vbe': (look, index) => {
    const name = nameOf(index);
    const where = rowSteps(look, name);
    const measured = measuredPaths[name];
    if (index % ROWS === 0 && measured !== undefined && look(measured) !== null) {
      return {
        says: 'The voltage at which the junction lets the measured emitter current through.',
        left: 'I_Em',
        right: 'I_Cx + I_B',
        root: 'V_BE',
        where: { ...where, I_Em: measured },
        source,
        assumes,
      };
    }
    const form = biasForm(look, name);
    return {
      says: 'The voltage at which as much flows through the upper resistor as base and lower resistor take.',
      left: form === 'divider' ? '(V_cc - V_Bx) / R_U' : '(V_Cx - V_Bx) / R_U',
      right: form === 'single' ? 'I_B' : 'V_Bx / R_D + I_B',
      root: 'V_BE',
      where,
      source,
      assumes,
    };
  },
  'biases.ic': (look, index) =>
    fromRow(look, index, 'I_Cx', 'The collector current that belongs to this junction voltage.'),
  'biases.vb': (look, index) =>
    fromRow(
      look,
      index,
      'V_Bx',
      'Emitter voltage and junction voltage, and the little that the base resistance takes.',
    ),
  'biases.ve': (look, index) =>
    fromRow(look, index, 'R_e * (I_Cx + I_B)', 'Emitter current times the emitter’s resistors.'),
  'biases.vc': (look, index) =>
    fromRow(look, index, 'V_Cx', 'The supply less what the collector’s feed takes.'),
  micStanding: (look) => standing(look, 'mic'),
  followerStanding: (look) => standing(look, 'follower'),
  amplifierStanding: (look) => standing(look, 'amplifier'),
  driverStanding: (look) => standing(look, 'driver'),
  'models.stage': listed('The small stages, and the transistor that sleeps.'),
  'models.gm': (look, index) =>
    model(
      look,
      index,
      'I_s / V_T * (1 - V_BC / V_A) - I_F / V_A',
      'How the collector current goes with the base voltage.',
    ),
  'models.rpi': (look, index) => model(look, index, 'V_T * beta / I_s', 'Current gain over slope.'),
  'models.cpi': (look, index) =>
    isAsleep(index)
      ? model(look, index, 'C_je', 'Without voltage: the depletion layer alone.')
      : model(
          look,
          index,
          `tau_F * I_s / V_T * (1 - V_BC / V_A) + ${layer(look, index, 'C_je', 'V_BE')}`,
          'Charge under way through the base, and the depletion layer.',
        ),
  'models.cmu': (look, index) =>
    isAsleep(index)
      ? model(look, index, 'C_jc', 'Without voltage: the depletion layer alone.')
      : model(
          look,
          index,
          layer(look, index, 'C_jc', 'V_BC'),
          'The depletion layer at the voltage across it.',
        ),
  'models.ro': (look, index) => model(look, index, 'V_A / I_F', 'Early effect.'),
  'models.cec': (look, index) =>
    model(
      look,
      index,
      'tau_F * I_F / V_A',
      'The base grows narrower with collector voltage and holds less charge.',
    ),
  'models.ft': {
    says: 'Where the current gain has fallen to one.',
    formula: 'g_m / (2 * pi * (C_pi + C_mu))',
    where: { g_m: 'row.gm', C_pi: 'row.cpi', C_mu: 'row.cmu' },
    source: 'Gray & Meyer, Analysis and Design of Analog Integrated Circuits, ch. 1',
  },
};

function listed(says: string): Working {
  return { says, rule: 'A fixed list.', where: {}, source: 'definition' };
}

const deviceOf = (look: Look, name: SmallName) => deviceAt(look, devicePath(name));

/** Everything round the transistor from the row's own V_BE. */
const rowSteps = (look: Look, name: SmallName): Record<string, Bound> => ({
  ...resistorPaths(look, name),
  V_BE: 'row.vbe',
  T_j: 'row.temperature',
  h_FE: 'row.gain',
  ...junctionSteps(look, name),
  ...biasSteps(look, name),
});

const fromRow = (look: Look, index: number, formula: string, says: string): Working => ({
  says,
  formula,
  where: rowSteps(look, nameOf(index)),
  source,
  assumes,
});

interface Row {
  readonly vbe: number;
  readonly temperature: number;
  readonly gain: number;
  readonly ic: number;
}

/** The first row of a stage in the table of operating points. */
const usual = (look: Look, name: SmallName): Row =>
  (look('transmit.biases') as readonly Row[])[ROWS * smallNames.indexOf(name)] as Row;

const there = 'from the operating points, first row of the stage';

/** The same from another place, where the row's figures stand as numbers. */
const usualSteps = (look: Look, name: SmallName): Record<string, Bound> => {
  const row = usual(look, name);
  return {
    ...resistorPaths(look, name),
    V_BE: { value: row.vbe, unit: 'V', says: `base–emitter voltage, ${there}` },
    T_j: { value: row.temperature, unit: '°C', says: `junction temperature, ${there}` },
    h_FE: { value: row.gain, unit: '1', says: `current gain, ${there}` },
    ...junctionSteps(look, name),
    ...biasSteps(look, name),
  };
};

const standing = (look: Look, name: SmallName): Working => ({
  says: 'Collector and base current together.',
  formula: 'I_Cx + I_B',
  where: usualSteps(look, name),
  source,
  assumes,
});

/** Sheet capacitances at 0 V and the transit time, as numbers that the sheet's figures give. */
function charges(look: Look, name: SmallName): Record<string, Bound> {
  const device = deviceOf(look, name);
  const card = soundCard(device);
  const { small } = device;
  return {
    C_je: {
      value: card.cje,
      unit: 'F',
      says: 'emitter’s depletion layer at 0 V',
      source: small.source,
    },
    C_jc: {
      value: card.cjc,
      unit: 'F',
      says: 'collector’s depletion layer at 0 V',
      source: small.source,
    },
    V_J: { value: card.vje, unit: 'V', says: 'built-in voltage, typical' },
    m_J: { value: card.mje, unit: '1', says: 'grading, typical' },
    F_J: { value: card.fc, unit: '1', says: 'share of it up to which the law holds' },
    tau_F: {
      value: card.tf,
      unit: 's',
      says: 'transit time, what the sheet’s fT leaves beside the depletion layers',
      source: small.source,
    },
  };
}

const isAsleep = (index: number): boolean => modelNames[index] === 'asleep';

const modelName = (index: number): SmallName => {
  const name = modelNames[index] ?? 'driver';
  return name === 'asleep' ? 'amplifier' : name;
};

function model(look: Look, index: number, formula: string, says: string): Working {
  const name = modelName(index);
  if (isAsleep(index)) return { says, formula, where: charges(look, name), source, assumes };
  return {
    says,
    formula,
    where: {
      ...usualSteps(look, name),
      V_BC: { formula: 'V_Bx - r_b * I_B - V_Cx', unit: 'V', says: 'inner base over collector' },
      I_s: { formula: 'I_F + I_S', unit: 'A', says: 'slope current of the junction' },
      ...charges(look, name),
    },
    source: 'slopes of the same equations; Gray & Meyer, ch. 1',
    assumes,
  };
}

/** The depletion law on the side of its corner where the voltage is. */
function layer(look: Look, index: number, capacitance: string, volts: 'V_BE' | 'V_BC'): string {
  const name = modelName(index);
  const card = soundCard(deviceOf(look, name));
  const forward = volts === 'V_BE' && usual(look, name).vbe >= card.fc * card.vje;
  return forward
    ? `${capacitance} / (1 - F_J)^(1 + m_J) * (1 - F_J * (1 + m_J) + m_J * ${volts} / V_J)`
    : `${capacitance} / (1 - ${volts} / V_J)^m_J`;
}
