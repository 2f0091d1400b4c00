import { SILICON } from '../../circuit/amplifier/transistorCard.ts';
import type { Bound, Look } from '../../fields/workings.ts';
import type { SmallName } from './smallBias.ts';
import { soundCard } from './smallCard.ts';
import { deviceAt } from './smallDevice.ts';

/** Path of the choice of a stage's transistor. */
export const devicePath = (name: SmallName): string =>
  name === 'mic' || name === 'follower' ? 'transmit.micDevice' : `transmit.${name}Device`;

/** How a stage's base is fed: a follower always by a divider. */
export const biasForm = (look: Look, name: SmallName): unknown =>
  name === 'follower' ? 'divider' : look(`transmit.${name}Bias`);

/** Paths of a stage's resistors and supply by their symbols. */
export const resistorPaths = (look: Look, name: SmallName): Record<string, Bound> => ({
  V_cc: 'plan.supply',
  R_U: `transmit.${name}Upper`,
  ...(biasForm(look, name) === 'single' ? {} : { R_D: `transmit.${name}Lower` }),
  R_E: `transmit.${name}Emitter`,
  R_B:
    name === 'follower'
      ? { value: 0, unit: 'Ω', says: 'a follower has no second emitter resistor' }
      : `transmit.${name}Bridged`,
  R_C:
    name === 'mic' || name === 'amplifier'
      ? `transmit.${name}Feed`
      : { value: 0, unit: 'Ω', says: 'nothing, or a winding, between supply and collector' },
});

/** The junction's exponential law at the row's temperature, from the row's V_BE, T_j and h_FE. */
export function junctionSteps(look: Look, name: SmallName): Record<string, Bound> {
  const device = deviceAt(look, devicePath(name));
  const card = soundCard(device);
  const { small, source } = device;
  return {
    k_B: { value: 1.380649e-23, unit: 'J/K', says: 'Boltzmann’s constant, exact' },
    q_e: { value: 1.602176634e-19, unit: 'C', says: 'elementary charge, exact' },
    V_T: { formula: 'k_B * T_j / q_e', unit: 'V', says: 'thermal voltage' },
    T_0: { value: SILICON.tnom, unit: '°C', says: 'temperature that the figures hold for' },
    V_G: { value: SILICON.eg, unit: 'V', says: 'band gap of silicon' },
    I_S0: {
      value: card.is,
      unit: 'A',
      says: `saturation current, from ${small.vbe[0]} V at ${small.vbe[1] * 1e3} mA`,
      source: small.source,
    },
    I_S: {
      formula: 'I_S0 * exp((T_j / T_0 - 1) * V_G / V_T + 3 * log(T_j / T_0))',
      unit: 'A',
      says: 'saturation current at this temperature',
    },
    beta: {
      formula: 'h_FE * (T_j / T_0)^1.5',
      unit: '1',
      says: 'current gain at this temperature',
    },
    V_A: { value: small.early, unit: 'V', says: 'Early voltage', source: small.source },
    r_b: { value: card.rb, unit: 'Ω', says: 'resistance of the base', source },
    I_F: {
      formula: 'I_S * (exp(V_BE / V_T) - 1)',
      unit: 'A',
      says: 'what the junction lets through',
    },
    I_B: { formula: 'I_F / beta', unit: 'A', says: 'base current' },
  };
}

/** From the junction's voltage to all currents and voltages round the transistor. */
export function biasSteps(look: Look, name: SmallName): Record<string, Bound> {
  const form = biasForm(look, name);
  const fromSupply = form === 'divider';
  const down = form === 'single' ? '' : ' / R_D';
  const steps: Record<string, Bound> = {
    R_e: { formula: 'R_E + R_B', unit: 'Ω', says: 'emitter to ground' },
    V_B0: {
      formula: 'V_BE + (R_e + r_b) * I_B',
      unit: 'V',
      says: 'base voltage as if no collector current flowed',
    },
  };
  if (fromSupply) {
    steps.V_r0 = {
      formula: 'V_cc - V_B0 + r_b * I_B',
      unit: 'V',
      says: 'and collector over inner base',
    };
    steps.R_r = { formula: 'R_C + R_e', unit: 'Ω', says: 'what each ampere takes from that' };
  } else {
    steps.I_U0 = {
      formula: down ? 'V_B0 / R_D + I_B' : 'I_B',
      unit: 'A',
      says: 'and current in the upper resistor',
    };
    steps.V_r0 = {
      formula: 'V_cc - R_C * I_U0 - V_B0 + r_b * I_B',
      unit: 'V',
      says: 'and collector over inner base',
    };
    steps.R_r = {
      formula: down ? 'R_C * (1 + R_e / R_D) + R_e' : 'R_C + R_e',
      unit: 'Ω',
      says: 'what each ampere takes from that',
    };
  }
  steps.I_Cx = {
    formula: 'I_F * (1 + V_r0 / V_A) / (1 + I_F * R_r / V_A)',
    unit: 'A',
    says: 'collector current with the Early effect',
  };
  steps.V_Bx = { formula: 'V_B0 + R_e * I_Cx', unit: 'V', says: 'base voltage' };
  steps.I_U = fromSupply
    ? { formula: '(V_cc - V_Bx) / R_U', unit: 'A', says: 'current in the upper resistor' }
    : {
        formula: down ? 'V_Bx / R_D + I_B' : 'I_B',
        unit: 'A',
        says: 'current that the base and its lower resistor want',
      };
  steps.V_Cx = {
    formula: fromSupply ? 'V_cc - R_C * I_Cx' : 'V_cc - R_C * (I_Cx + I_U)',
    unit: 'V',
    says: 'collector voltage',
  };
  return steps;
}
