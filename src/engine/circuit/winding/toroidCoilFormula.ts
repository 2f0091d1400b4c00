import { SKIN_SPLIT } from '../wireLoss.ts';

/** Length of one turn round a core's section, half a wire off it. */
export const turnFormula = '2 * h + D_a - D + pi * d_o';

/**
 * Steps to the Q of a coil of whole turns, in the order in which they follow from each other. Bound
 * before them: `N`, `A_L`, `l_t` tail, `d_w` copper and `d_o` over the enamel, `D` hole, `D_a` outside,
 * `h` height, `f_0`, `rho` of copper, `mu_0`, `Q_core`.
 */
export const coilSteps = {
  l_w: { formula: `N * (${turnFormula}) + 2 * l_t`, unit: 'm', says: 'wire, tails included' },
  R_dc: {
    formula: 'rho * l_w / (pi / 4 * d_w^2)',
    unit: 'Ω',
    says: 'resistance for direct current',
  },
  delta: { formula: 'sqrt(rho / (pi * f_0 * mu_0))', unit: 'm', says: 'skin depth' },
  x_s: { formula: 'd_w / 2 / delta', unit: '1', says: 'radius in skin depths' },
  k_skin: {
    formula: `x_s < ${SKIN_SPLIT} ? 1 + x_s^4 / (48 + 0.7 * x_s^4) : x_s / 2 + 0.25 + 3 / (32 * x_s)`,
    unit: '1',
    says: 'rise by the skin effect',
  },
  s_p: {
    formula: 'min(1, N * d_w / (pi * (D_a + D) / 2 * (11 / 12)))',
    unit: '1',
    says: 'copper over mean pitch',
  },
  R_ac: {
    formula: 'R_dc * k_skin * (1 + 2.4 * s_p^1.4)',
    unit: 'Ω',
    says: 'with skin effect and neighbouring turns',
  },
} as const;

/** Q of the coil from the steps. */
export const coilQFormula = '1 / (R_ac / (2 * pi * f_0 * A_L * N^2) + 1 / Q_core)';

/** Steps to the self-capacitance; bound before them `h`, `D_a`, `D`, `d_o`, `d_w`, `eps_r`. */
export const capacitanceSteps = {
  l_1: { formula: turnFormula, unit: 'm', says: 'length of one turn' },
  k_d: { formula: 'log(d_o / d_w)', unit: '1', says: 'logarithm of the diameters' },
  theta: { formula: 'acos(1 - k_d / eps_r)', unit: '1', says: 'angle of the near field' },
} as const;

/** Self-capacitance from the steps, and `eps_0`. */
export const capacitanceFormula =
  '1.366 * eps_0 * l_1 * (eps_r * theta / k_d + 1 / tan(theta / 2) - 1 / tan(pi / 12))';
