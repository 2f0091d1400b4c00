import type { Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { transmitFields } from './fields.ts';
import { milliwatt } from './levelWorkings.ts';
import { BIAS_ALLOWANCE } from './smallStages.ts';
import { clipFormula, outputFormula, type SmallName, stageSteps } from './stageSteps.ts';

const hybridPi =
  'hybrid-pi model solved on its two nodes (Gray & Meyer, Analysis and Design of Analog Integrated Circuits, ch. 8)';
const hybridAssumes =
  'Only the size of the current gain counts, not its phase; Cob and the transistor’s own output resistance are left out.';

const supplyAllowance = {
  value: BIAS_ALLOWANCE,
  unit: 'V',
  says: 'kept by emitter bias and saturation; common practice, no source',
} as const;

type AmplifierKey =
  | 'amplifierGain'
  | 'amplifierInput'
  | 'amplifierOutput'
  | 'amplifierNoise'
  | 'amplifierClip'
  | 'driverGain'
  | 'driverInput'
  | 'driverClip';

/** The two-way amplifier and the driver. */
export const amplifierWorkings: Pick<StageWorkings<typeof transmitFields>, AmplifierKey> = {
  amplifierGain: (look) => gainOf(look, 'amplifier'),
  driverGain: (look) => gainOf(look, 'driver'),
  amplifierInput: (look) => inputOf(look, 'amplifier'),
  driverInput: (look) => inputOf(look, 'driver'),
  amplifierOutput: (look) => ({
    says: 'The resistance looking into the collector, driven from the modulator’s impedance.',
    formula: outputFormula('R_s'),
    where: { ...stageSteps(look, 'amplifier'), R_s: 'transmit.modulatorImpedance' },
    source: hybridPi,
    assumes: hybridAssumes,
  }),
  amplifierNoise: (look) => ({
    says: 'The noise of both resistors, the base and both currents, as a share of the source’s own.',
    formula:
      '10 * log10(1 + R_L * ((r_b + R_E) * (1 / r_in - g_m * b)^2 + (1 + b)^2 / R_F + g_B * (((beta + 1) * r_e + beta * R_E) / r_in + g_m * (r_b + R_E) * b)^2 + g_C * (R_E / r_in + (1 - g_m * R_E) * b)^2))',
    where: {
      ...stageSteps(look, 'amplifier'),
      q: { value: 1.602176634e-19, unit: 'C', says: 'elementary charge, exact' },
      k: { value: 1.380649e-23, unit: 'J/K', says: 'Boltzmann’s constant, exact' },
      T_0: { value: 290, unit: 'K', says: 'reference temperature' },
      I_B: { formula: 'I_E / (h_FE + 1)', unit: 'A', says: 'base current' },
      g_B: {
        formula: 'q * I_B / (2 * k * T_0)',
        unit: 'S',
        says: 'shot noise of the base current as a conductance',
      },
      g_C: {
        formula: 'q * (I_E - I_B) / (2 * k * T_0)',
        unit: 'S',
        says: 'shot noise of the collector current as a conductance',
      },
      b: {
        formula: '(1 / R_L + 1 / r_in + 1 / R_F) / (g_m - 1 / R_F)',
        unit: '1',
        says: 'what a current at the collector is worth at the base',
      },
    },
    source: 'hybrid-pi model with thermal and shot noise (Gray & Meyer, ch. 11)',
    assumes: `${hybridAssumes} The source equals the load.`,
  }),
  amplifierClip: (look) => clipOf(look, 'amplifier'),
  driverClip: (look) => clipOf(look, 'driver'),
};

const gainOf = (look: Look, name: SmallName): Working => ({
  says: 'Power in the load over power into the base: the voltage gain squared times input over load.',
  formula: '10 * log10(A_v^2 * R_i / R_L)',
  where: stageSteps(look, name),
  source: hybridPi,
  assumes: hybridAssumes,
});

const inputOf = (look: Look, name: SmallName): Working => ({
  says: 'The base branch, and beside it the feedback resistor made smaller by the gain across it.',
  formula: 'R_i',
  where: stageSteps(look, name),
  source: hybridPi,
  assumes: hybridAssumes,
});

const clipOf = (look: Look, name: SmallName): Working => ({
  says: 'The collector’s peak voltage where the current has swung down to nothing, or the supply is used up, whichever comes first.',
  formula: `10 * log10(${clipFormula()} / P_ref)`,
  where: {
    ...stageSteps(look, name),
    V_cc: 'plan.supply',
    V_b: supplyAllowance,
    P_ref: milliwatt,
  },
  source: 'load line of a class-A stage',
  assumes: 'The collector is fed through a transformer or choke.',
});
