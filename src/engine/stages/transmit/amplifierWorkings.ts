import type { StabilityScan } from '../../circuit/amplifier/stabilityScan.ts';
import type { ThirdOrder } from '../../circuit/amplifier/thirdOrder.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { transmitFields } from './fields.ts';
import { milliwatt } from './levelWorkings.ts';
import { noiseWorking, shareWorking } from './noiseRows.ts';
import { type CircuitName, frequencyOf, portSteps } from './portSteps.ts';
import { type SmallName, smallNames } from './smallBias.ts';
import { SCAN_FROM, SCAN_POINTS, SCAN_TO, SWING_KEEPS, TONE_SPACING } from './smallCircuits.ts';

const nodal = 'nodal analysis of the hybrid-pi model at the operating frequency';
const speech = 'nodal analysis of the hybrid-pi model at 1 kHz';

type AmplifierKey =
  | `amplifier${'Gain' | 'Input' | 'InputC' | 'Output' | 'OutputC' | 'Noise' | 'Intercept' | 'Clip' | 'K' | 'KAt'}`
  | `amplifierNoises.${'part' | 'share'}`
  | 'secondOutput'
  | `third${'Gain' | 'Input' | 'Output' | 'Clip'}`
  | 'micStageGain'
  | 'micLoad'
  | 'micClip'
  | `follower${'Source' | 'Input' | 'Output' | 'Clip'}`
  | `driver${'Gain' | 'Input' | 'InputC' | 'Source' | 'Output' | 'Clip' | 'K' | 'KAt'}`;

/** The two-way amplifier and the driver. */
export const amplifierWorkings: Pick<StageWorkings<typeof transmitFields>, AmplifierKey> = {
  micStageGain: (look) => ({
    says: 'Voltage gain of the first stage times that of the follower.',
    formula:
      '10 * log10((x_out^2 + y_out^2) / (x_in^2 + y_in^2) * (x_out2^2 + y_out2^2) / (x_in2^2 + y_in2^2))',
    where: {
      ...portSteps(look, 'mic', 0, ['in', 'out']),
      ...portSteps(look, 'follower', 0, ['in', 'out'], '2'),
    },
    source: speech,
  }),
  micLoad: (look) =>
    look('transmit.micInput') === null
      ? resistance(
          look,
          'mic',
          0,
          'transmit.micSource',
          'The current that the microphone sends in, in phase with the voltage there.',
        )
      : {
          says: 'As measured.',
          formula: 'R_mic0',
          where: { R_mic0: 'transmit.micInput' },
          source: 'as typed',
        },
  followerSource: (look) =>
    resistance(
      look,
      'mic',
      1,
      'transmit.followerInput',
      'Driven from the follower’s side, with the microphone at the input.',
    ),
  followerInput: (look) =>
    resistance(
      look,
      'follower',
      0,
      'transmit.followerSource',
      'The current that goes in, in phase with the voltage there.',
    ),
  followerOutput: (look) =>
    resistance(
      look,
      'follower',
      1,
      'transmit.modulatorImpedance',
      'Driven from the modulator’s side.',
    ),
  micClip: (look) => clipOf(look, 'mic'),
  followerClip: (look) => clipOf(look, 'follower'),
  amplifierGain: (look) => gainOf(look, 'amplifier'),
  driverGain: (look) => gainOf(look, 'driver'),
  amplifierInput: (look) =>
    resistance(
      look,
      'first',
      0,
      'transmit.modulatorImpedance',
      'The current that the source sends in, in phase with the voltage there.',
    ),
  amplifierInputC: (look) => capacitance(look, 'first', 0, 'transmit.modulatorImpedance'),
  driverInput: (look) =>
    resistance(
      look,
      'driver',
      0,
      'transmit.driverSource',
      'The current that the source sends in, in phase with the voltage there.',
    ),
  driverInputC: (look) => capacitance(look, 'driver', 0, 'transmit.driverSource'),
  amplifierOutput: (look) =>
    resistance(
      look,
      'first',
      1,
      'transmit.amplifierLoad',
      'Driven from the load’s side, with the modulator at the input.',
    ),
  amplifierOutputC: (look) => capacitance(look, 'first', 1, 'transmit.amplifierLoad'),
  secondOutput: (look) =>
    resistance(
      look,
      'second',
      1,
      'transmit.amplifierLoad',
      'Driven from the load’s side, with its own input resistance as the source.',
    ),
  driverOutput: (look) =>
    resistance(
      look,
      'driver',
      1,
      'transmit.finalInput',
      'Driven from the final’s side of the transformer.',
    ),
  driverSource: (look) => driverSource(look),
  thirdGain: (look) => ({
    ...gainOf(look, 'amplifier'),
    where: {
      ...portSteps(look, 'third', 0, ['in', 'out']),
      R_L: 'transmit.amplifierLoad',
      R_i: 'transmit.thirdInput',
    },
  }),
  thirdInput: (look) =>
    resistance(
      look,
      'third',
      0,
      'transmit.thirdInput',
      'The current that a matching source sends in, in phase with the voltage there.',
    ),
  thirdOutput: (look) =>
    resistance(look, 'third', 1, 'transmit.amplifierLoad', 'Driven from the load’s side.'),
  thirdClip: (look) => clipOf(look, 'amplifier', 'third'),
  amplifierNoise: noiseWorking,
  'amplifierNoises.part': {
    says: 'All resistors and both currents of the circuit.',
    rule: 'A fixed list.',
    where: {},
    source: 'definition',
  },
  'amplifierNoises.share': shareWorking,
  amplifierIntercept: (look) => {
    const { tone, product } = (look('transmit.bendFound') as ThirdOrder | null) ?? {
      tone: 1,
      product: 1,
    };
    return {
      says: 'The product grows three times as fast as the tones, in decibels: where they would meet.',
      formula: '10 * log10(P_1 * sqrt(P_1 / P_3) / P_ref)',
      where: {
        P_1: { value: tone, unit: 'W', says: 'output of each of two tones that bring a watt' },
        P_3: {
          value: product,
          unit: 'W',
          says: 'their product 2f1 − f2 then, if nothing ran out: by the method of nonlinear currents',
        },
        P_ref: milliwatt,
      },
      source: 'Wambacq & Sansen, Distortion Analysis of Analog Integrated Circuits, ch. 5',
      assumes: `Tones ${TONE_SPACING / 1e3} kHz apart, far below the most it can give; source and load as the load at the collector.`,
    };
  },
  amplifierClip: (look) => clipOf(look, 'amplifier'),
  driverClip: (look) => clipOf(look, 'driver'),
  amplifierK: (look) => stabilityOf(look, 'amplifier'),
  driverK: (look) => stabilityOf(look, 'driver'),
  amplifierKAt: (look) => placeOf(look, 'amplifier'),
  driverKAt: (look) => placeOf(look, 'driver'),
};

const circuitOf = (name: SmallName): CircuitName => (name === 'amplifier' ? 'first' : name);
const loads: Readonly<Record<SmallName, string>> = {
  mic: 'transmit.followerInput',
  follower: 'transmit.modulatorImpedance',
  amplifier: 'transmit.amplifierLoad',
  driver: 'transmit.finalInput',
};

const gainOf = (look: Look, name: 'amplifier' | 'driver'): Working => ({
  says: 'Power in the load over power into the input.',
  formula: '10 * log10((x_out^2 + y_out^2) / R_L * R_i / (x_in^2 + y_in^2))',
  where: {
    ...portSteps(look, circuitOf(name), 0, ['in', 'out']),
    R_L: loads[name],
    R_i: `transmit.${name}Input`,
  },
  source: nodal,
});

/** Resistance in parallel at an end, from what its closing resistor with 1 V behind it sends in. */
function resistance(
  look: Look,
  circuit: CircuitName,
  driven: 0 | 1,
  end: string,
  says: string,
): Working {
  const at = driven === 0 ? 'in' : 'out';
  return {
    says,
    formula: `1 / (U_1 * x_${at} / (R_x * (x_${at}^2 + y_${at}^2)) - 1 / R_x)`,
    where: { ...portSteps(look, circuit, driven, [at]), R_x: end },
    source: nodal,
  };
}

function capacitance(look: Look, circuit: CircuitName, driven: 0 | 1, end: string): Working {
  const at = driven === 0 ? 'in' : 'out';
  return {
    says: 'The current in quadrature with the voltage there, as a capacitance.',
    formula: `-U_1 * y_${at} / (2 * pi * f_0 * R_x * (x_${at}^2 + y_${at}^2))`,
    where: { ...portSteps(look, circuit, driven, [at]), R_x: end, ...frequencyOf(circuit) },
    source: nodal,
  };
}

interface ModelRow {
  readonly gm: number | null;
  readonly ro: number | null;
}
interface BiasRow {
  readonly ic: number;
  readonly vc: number;
  readonly ve: number;
}

function clipOf(look: Look, name: SmallName, circuit: CircuitName = circuitOf(name)): Working {
  const models = look('transmit.models') as readonly ModelRow[];
  const biases = look('transmit.biases') as readonly BiasRow[];
  const model = models[{ mic: 0, follower: 1, amplifier: 2, driver: 4 }[name]];
  const bias = biases[3 * smallNames.indexOf(name)];
  const points = 'from the operating points';
  return {
    says: 'How far collector current and collector voltage may swing before the one is down to nothing or the other to what the transistor keeps; whichever comes first.',
    formula:
      '10 * log10(min(I_C / I_1, (V_C - V_E - V_k) / V_1)^2 * (x_out^2 + y_out^2) / (2 * R_L) / P_ref)',
    where: {
      ...portSteps(look, circuit, 0, ['out', 'n', 'c', 'e']),
      g_m: { value: model?.gm ?? 0, unit: 'S', says: 'slope, from the table of models' },
      r_o: {
        value: model?.ro ?? 0,
        unit: 'Ω',
        says: 'output resistance, from the table of models',
      },
      I_C: { value: bias?.ic ?? 0, unit: 'A', says: `collector current, ${points}` },
      V_C: { value: bias?.vc ?? 0, unit: 'V', says: `collector voltage, ${points}` },
      V_E: { value: bias?.ve ?? 0, unit: 'V', says: `emitter voltage, ${points}` },
      V_k: {
        value: SWING_KEEPS,
        unit: 'V',
        says: 'kept by the transistor; common practice, no source',
      },
      I_1: {
        formula:
          'sqrt((g_m * (x_n - x_e) + (x_c - x_e) / r_o)^2 + (g_m * (y_n - y_e) + (y_c - y_e) / r_o)^2)',
        unit: 'A',
        says: 'collector current for one volt behind the source',
      },
      V_1: {
        formula: 'sqrt((x_c - x_e)^2 + (y_c - y_e)^2)',
        unit: 'V',
        says: 'collector–emitter voltage for one volt behind the source',
      },
      R_L: loads[name],
      P_ref: milliwatt,
    },
    source: 'load line of a class-A stage, by nodal analysis',
  };
}

/** What stands before the driver, through its transformer. */
function driverSource(look: Look): Working {
  const third = look('transmit.thirdGain') !== null;
  if (look('plan.scheme') === 'conversion' && !third) {
    return {
      says: 'The transformer behind the band-pass is wound to match.',
      formula: 'R_in_drv',
      where: { R_in_drv: 'transmit.driverInput' },
      source: 'ideal transformer',
    };
  }
  return {
    says: 'The amplifier’s output before it, through the transformer that makes of the driver its load.',
    formula: 'R_out2 * R_in_drv / R_L',
    where: {
      R_out2: third ? 'transmit.thirdOutput' : 'transmit.secondOutput',
      R_in_drv: 'transmit.driverInput',
      R_L: 'transmit.amplifierLoad',
    },
    source: 'ideal transformer',
  };
}

const scanOf = (look: Look, name: 'amplifier' | 'driver'): StabilityScan =>
  (look('transmit.stability') as Readonly<Record<'amplifier' | 'driver', StabilityScan>>)[name];

function stabilityOf(look: Look, name: 'amplifier' | 'driver'): Working {
  const { s } = scanOf(look, name);
  const where: Record<string, Bound> = {};
  ['11', '12', '21', '22'].forEach((pair, i) => {
    const says = `s${pair} at that frequency, by nodal analysis`;
    where[`a_${pair}`] = { value: s[2 * i] ?? 0, unit: '1', says: `real part of ${says}` };
    where[`b_${pair}`] = { value: s[2 * i + 1] ?? 0, unit: '1', says: `imaginary part of ${says}` };
  });
  where.p = { formula: 'a_12 * a_21 - b_12 * b_21', unit: '1', says: 'real part of s12·s21' };
  where.q = { formula: 'a_12 * b_21 + b_12 * a_21', unit: '1', says: 'imaginary part of s12·s21' };
  where.d_re = {
    formula: 'a_11 * a_22 - b_11 * b_22 - p',
    unit: '1',
    says: 'real part of s11·s22 − s12·s21',
  };
  where.d_im = {
    formula: 'a_11 * b_22 + b_11 * a_22 - q',
    unit: '1',
    says: 'imaginary part of s11·s22 − s12·s21',
  };
  return {
    says: 'How much less than everything comes back, over what goes round.',
    formula: '(1 - a_11^2 - b_11^2 - a_22^2 - b_22^2 + d_re^2 + d_im^2) / (2 * sqrt(p^2 + q^2))',
    where,
    source: 'J. M. Rollett, Stability and Power-Gain Invariants of Linear Twoports, 1962',
    assumes: `Looked for at ${SCAN_POINTS} frequencies; above some hundred megahertz the model of the transistor is rough and the wiring counts.`,
  };
}

const placeOf = (look: Look, name: 'amplifier' | 'driver'): Working => ({
  says: 'Of the frequencies looked at, evenly spaced in octaves, the one where the factor is least.',
  formula: 'f_a * (f_b / f_a)^(i / N)',
  where: {
    f_a: { value: SCAN_FROM, unit: 'Hz', says: 'lower end of the search' },
    f_b: { value: SCAN_TO, unit: 'Hz', says: 'upper end of the search' },
    i: {
      value: scanOf(look, name).least ?? 0,
      unit: '1',
      says: 'steps up from there to the least',
    },
    N: { value: SCAN_POINTS - 1, unit: '1', says: 'steps in all' },
  },
  source: 'search over a list',
});
