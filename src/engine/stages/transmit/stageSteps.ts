import { THERMAL_VOLTAGE } from '../../circuit/feedbackAmplifier.ts';
import { type TransistorKey, transistors } from '../../data/devices.ts';
import type { Bound, Look } from '../../fields/workings.ts';

/** Which small stage: the two-way amplifier or the driver. */
export type SmallName = 'amplifier' | 'driver';

/**
 * The hybrid-pi model of a small stage step by step, for the workings: current gain, emitter
 * resistance, branch at the base, transconductance, voltage gain. Symbols carry a mark behind them
 * so that two stages can stand in one formula.
 */
export function stageSteps(look: Look, name: SmallName, mark = ''): Record<string, Bound> {
  const key = look(`transmit.${name}Device`) as TransistorKey;
  const { hfe, ft, base, source } = transistors[key] ?? transistors.n2222;
  const s = (symbol: string) => `${symbol}${mark}`;
  return {
    [s('I_E')]: `transmit.${name}Current`,
    [s('R_E')]: `transmit.${name}Emitter`,
    [s('R_F')]: `transmit.${name}Feedback`,
    [s('R_L')]: `transmit.${name}Load`,
    f_0: 'plan.nominal',
    V_T: { value: THERMAL_VOLTAGE, unit: 'V', says: 'thermal voltage kT/q at 300 K' },
    [s('h_FE')]: { value: hfe[1], unit: '1', says: 'current gain for direct current', source },
    [s('f_T')]: { value: ft, unit: 'Hz', says: 'transition frequency', source },
    [s('r_b')]: { value: base, unit: 'Ω', says: 'resistance of the base', source },
    [s('beta')]: {
      formula: `${s('h_FE')} / sqrt(1 + (${s('h_FE')} * f_0 / ${s('f_T')})^2)`,
      unit: '1',
      says: 'current gain at the operating frequency',
    },
    [s('r_e')]: { formula: `V_T / ${s('I_E')}`, unit: 'Ω', says: 'emitter resistance' },
    [s('r_in')]: {
      formula: `${s('r_b')} + (${s('beta')} + 1) * (${s('r_e')} + ${s('R_E')})`,
      unit: 'Ω',
      says: 'resistance looking into the base, without the feedback',
    },
    [s('g_m')]: {
      formula: `${s('beta')} / ${s('r_in')}`,
      unit: 'S',
      says: 'collector current over base voltage',
    },
    [s('A_v')]: {
      formula: `-(${s('g_m')} - 1 / ${s('R_F')}) / (1 / ${s('R_F')} + 1 / ${s('R_L')})`,
      unit: '1',
      says: 'voltage gain',
    },
    [s('R_i')]: {
      formula: `1 / (1 / ${s('r_in')} + (1 - ${s('A_v')}) / ${s('R_F')})`,
      unit: 'Ω',
      says: 'input resistance',
    },
  };
}

/** Output resistance of a small stage from its steps and the symbol of its source. */
export const outputFormula = (source: string, mark = ''): string =>
  `1 / (1 / R_F${mark} + (g_m${mark} - 1 / R_F${mark}) / R_F${mark} / (1 / R_F${mark} + 1 / r_in${mark} + 1 / ${source}))`;

/** Greatest power of a small stage from its steps: by current or by voltage, whichever is less. */
export const clipFormula = (mark = ''): string =>
  `min(I_E${mark} * abs(A_v${mark}) / g_m${mark}, V_cc - V_b)^2 / (2 * R_L${mark})`;
