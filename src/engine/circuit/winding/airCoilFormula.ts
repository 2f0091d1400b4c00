import { SKIN_SPLIT } from '../wireLoss.ts';
import { cornerOf } from './medhurst.ts';

/** Steps of the arithmetic-geometric mean: enough for every coil longer than a thousandth of its width. */
const STEPS = 6;

const step = (formula: string, says: string) => ({ formula, unit: '1' as const, says });

/**
 * Steps to the inductance of a current sheet, the elliptic integrals by the arithmetic-geometric
 * mean. Bound before them: `N_a` turns, `D` diameter, `l_a` length.
 */
export const lorenzSteps: Readonly<
  Record<string, { readonly formula: string; readonly unit: '1' | 'm'; readonly says: string }>
> = {
  w_0: { formula: 'sqrt(D^2 + l_a^2)', unit: 'm', says: 'diagonal of the coil' },
  m_e: step('(D / w_0)^2', 'parameter of the integrals'),
  a_0: step('1', 'first mean'),
  b_0: step('l_a / w_0', 'second mean'),
  ...Object.fromEntries(
    Array.from({ length: STEPS }, (_, i) => [
      [`a_${i + 1}`, step(`(a_${i} + b_${i}) / 2`, 'arithmetic mean')],
      [`b_${i + 1}`, step(`sqrt(a_${i} * b_${i})`, 'geometric mean')],
    ]).flat(),
  ),
  K_e: step(`pi / (2 * a_${STEPS})`, 'complete elliptic integral, first kind'),
  S_e: step(
    `m_e / 2${Array.from({ length: STEPS }, (_, i) => ` + ${2 ** i} * ((a_${i} - b_${i}) / 2)^2`).join('')}`,
    'sum over the differences of the means',
  ),
};

/** Inductance of the sheet from the steps, and `mu_0`. */
export const lorenzFormula =
  'mu_0 * N_a^2 / (3 * l_a^2) * (w_0 * K_e * (D^2 * (1 - S_e) + l_a^2 * S_e) - D^3)';

/** Middle of the wire and length of the winding; bound before: `D_f` former, `d_a` wire, `p_a` spacing, `N_a`. */
export const airShape = {
  D: { formula: 'D_f + d_a', unit: 'm', says: 'diameter from wire to wire' },
  l_a: { formula: 'N_a * d_a * p_a', unit: 'm', says: 'length of the winding' },
} as const;

/**
 * Steps to the resistance at the frequency. Bound before: those of `airShape`, `l_t` tail, `f_0`,
 * `rho` of copper, `mu_0`.
 *
 * @param spacing middle to middle over the wire's diameter
 * @param slender length over diameter: both say where in Medhurst's table the coil stands
 */
export function airLossSteps(spacing: number, slender: number) {
  const { at, low, from, to } = cornerOf(1 / spacing, slender);
  const [a, b, c, d] = at;
  return {
    l_w: {
      formula: 'N_a * sqrt((pi * D)^2 + (d_a * p_a)^2) + 2 * l_t',
      unit: 'm',
      says: 'wire, tails included',
    },
    delta: { formula: 'sqrt(rho / (pi * f_0 * mu_0))', unit: 'm', says: 'skin depth' },
    x_s: { formula: 'd_a / 2 / delta', unit: '1', says: 'radius in skin depths' },
    k_skin: {
      formula: `x_s < ${SKIN_SPLIT} ? 1 + x_s^4 / (48 + 0.7 * x_s^4) : x_s / 2 + 0.25 + 3 / (32 * x_s)`,
      unit: '1',
      says: 'rise by the skin effect',
    },
    r_x: {
      formula: `10 / p_a - ${low}`,
      unit: '1',
      says: 'between two rows of the table, by wire over pitch',
    },
    c_x: {
      formula: to === null ? '1 - 10 * D / l_a' : `(l_a / D - ${from}) / ${to - from}`,
      unit: '1',
      says: 'between two columns, by length over diameter',
    },
    k_near: {
      formula: `(1 - r_x) * (${a} + c_x * (${b} - ${a})) + r_x * (${c} + c_x * (${d} - ${c}))`,
      unit: '1',
      says: 'rise by neighbouring turns, from the four figures of the table around it',
    },
  } as const;
}

/** Resistance at the frequency from those steps. */
export const airResistanceFormula = 'rho * l_w / (pi / 4 * d_a^2) * k_skin * k_near';

/** Self-capacitance, from `D`, `l_a` and `c_1` = 1 pF for each centimetre. */
export const airCapacitanceFormula = 'c_1 * D * (0.1126 * l_a / D + 0.08 + 0.27 * sqrt(D / l_a))';
