import { THERMAL_VOLTAGE } from '../../circuit/feedbackAmplifier.ts';
import { type TransistorKey, transistors } from '../../data/devices.ts';
import type { Bound, Look } from '../../fields/workings.ts';

/** The two-way amplifier's noise step by step: its resistive model, then each noise as a conductance. */
export function noiseSteps(look: Look): Record<string, Bound> {
  const key = look('transmit.amplifierDevice') as TransistorKey;
  const { hfe, ft, base, source } = transistors[key] ?? transistors.n2222;
  const twice = look('transmit.amplifierAsleep') === 'all' ? '2 * ' : '';
  const bare = look('transmit.amplifierBias') === 'divider';
  return {
    I_E: 'transmit.amplifierStanding',
    R_E: 'transmit.amplifierEmitter',
    R_F1: 'transmit.amplifierFeedback',
    ...(bare ? {} : { R_U: 'transmit.amplifierUpper' }),
    R_F: {
      formula: `1 / (${twice}(${bare ? '1 / R_F1' : '1 / R_F1 + 1 / R_U'}))`,
      unit: 'Ω',
      says: 'all resistance from collector to base, the sleeping half’s included where it stays',
    },
    R_L: 'transmit.amplifierLoad',
    f_0: 'plan.nominal',
    V_T: { value: THERMAL_VOLTAGE, unit: 'V', says: 'thermal voltage kT/q at 300 K' },
    h_FE: { value: hfe[1], unit: '1', says: 'current gain for direct current', source },
    f_T: { value: ft, unit: 'Hz', says: 'transition frequency', source },
    r_b: { value: base, unit: 'Ω', says: 'resistance of the base', source },
    beta: {
      formula: 'h_FE / sqrt(1 + (h_FE * f_0 / f_T)^2)',
      unit: '1',
      says: 'current gain at the operating frequency',
    },
    r_e: { formula: 'V_T / I_E', unit: 'Ω', says: 'emitter resistance' },
    r_in: {
      formula: 'r_b + (beta + 1) * (r_e + R_E)',
      unit: 'Ω',
      says: 'resistance looking into the base, without the feedback',
    },
    g_m: { formula: 'beta / r_in', unit: 'S', says: 'collector current over base voltage' },
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
  };
}
