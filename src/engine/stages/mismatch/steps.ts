import type { OwnLine } from '../../data/emission.ts';
import { limitFormula } from '../../data/limitFormula.ts';
import type { RuleSetKey } from '../../data/ruleSets.ts';
import type { Bound, Look } from '../../fields/workings.ts';

type Where = Record<string, Bound>;

interface WaveRow {
  readonly ar: number;
  readonly ai: number;
  readonly br: number;
  readonly bi: number;
  readonly cr: number;
  readonly ci: number;
  readonly dr: number;
  readonly di: number;
}

const step = (formula: string, unit: 'Ω' | '1' | 'W' | 'dB' | 'Hz', says: string): Bound => ({
  formula,
  unit,
  says,
});

/** The four numbers of the network at a multiple of the operating frequency, as symbols. */
export function waveTerms(look: Look, order: number, mark = ''): Where {
  const rows = look('mismatch.waves') as readonly WaveRow[];
  const row = rows[order - 1];
  const where: Where = {};
  for (const wave of ['a', 'b', 'c', 'd'] as const) {
    for (const part of ['r', 'i'] as const) {
      where[`${wave}${mark}_${part}`] = {
        value: row?.[`${wave}${part}`] ?? 0,
        unit: '1',
        says: `${wave} of the network at ${order === 1 ? 'the operating frequency' : `harmonic ${order}`}, ${part === 'r' ? 'real' : 'imaginary'} part`,
      };
    }
  }
  return where;
}

/**
 * What the collector meets at one ratio and angle, step by step: `v` and `j` are volts and amperes
 * (times R_ant) at the input for a forward wave of one volt, `R_in` and `Z_in` the load, `s_d` the
 * share of the drive.
 *
 * @param at where ratio and angle come from
 */
export function loadSteps(look: Look, at: { readonly swr: Bound; readonly angle: Bound }): Where {
  return {
    S: at.swr,
    theta: at.angle,
    R_ant: 'plan.antenna',
    R_c: 'transmit.collectorLoad',
    ...waveTerms(look, 1),
    rho: step('(S - 1) / (S + 1)', '1', 'size of the reflection'),
    g_r: step('rho * cos(theta)', '1', 'reflection, real part'),
    g_i: step('rho * sin(theta)', '1', 'reflection, imaginary part'),
    v: step(`abs(${sum('a', 'b')})`, '1', 'volts at the input for a forward wave of one volt'),
    j: step(`abs(${sum('c', 'd')})`, '1', 'current there, times R_ant'),
    Z_in: step('R_ant * v / j', 'Ω', 'size of the load that the collector sees'),
    R_in: step(`R_ant * re((${sum('a', 'b')}) / (${sum('c', 'd')}))`, 'Ω', 'its real part'),
    s_d: step('min(1, R_c / Z_in)', '1', 'share of the drive that the supply allows'),
  };
}

/** The load's imaginary part, with the symbols of `loadSteps`. */
export const reactanceFormula = `R_ant * im((${sum('a', 'b')}) / (${sum('c', 'd')}))`;

export const formulas = {
  power: '(s_d * I_1)^2 * R_ant * (1 - rho^2) / (2 * j^2)',
  loss: '10 * log10(R_in / R_ant * j^2 / (1 - rho^2))',
  held: 'V_cc + s_d * I_1 * Z_in / n_s',
  unheld: 'V_cc + I_1 * Z_in / n_s',
  heat: 'V_cc * (I_q + (I_dc - I_q) * s_d) - (s_d * I_1)^2 * R_in / 2',
} as const;

/** Current and supply of the final. */
export function finalTerms(look: Look, of: keyof typeof formulas): Where {
  const pair = look('transmit.finalForm') === 'pushPull';
  const n_s = { value: pair ? 2 : 1, unit: '1', says: 'sides of the final' } as const;
  const swing: Where = { I_1: 'transmit.fundamental', V_cc: 'plan.supply', n_s };
  return {
    power: { I_1: 'transmit.fundamental' },
    loss: {},
    held: swing,
    unheld: swing,
    heat: {
      I_1: 'transmit.fundamental',
      V_cc: 'plan.supply',
      I_dc: 'transmit.dcCurrent',
      I_q: 'transmit.quiescent',
    },
  }[of];
}

/** The margin of one harmonic, the antenna at the harmonic being taken in one of three ways. */
export function marginSteps(
  look: Look,
  at: { readonly swr: Bound; readonly angle: Bound },
  given: {
    readonly order: number;
    readonly way: 'plain' | 'same' | 'any';
    readonly power: number;
  },
): { readonly formula: string; readonly where: Where } {
  const { order: n, way } = given;
  const nominal = look('plan.nominal') as number;
  const { needs, formula, where } = limitFormula(look('plan.rules') as RuleSetKey, {
    frequency: n * nominal,
    fundamental: nominal,
    power: given.power,
    own: look('plan.ownLimit') as number,
    ownLines: look('plan.ownRows') as readonly OwnLine[] | null,
  });
  const own = look('transmit.outputImpedance') !== null;
  const currents = look('transmit.harmonicCurrents') as readonly number[];
  // Current that the source gives, its own resistance included.
  const loaded = (wave: 'c' | 'd', mark = ''): string => {
    const from = wave === 'c' ? 'a' : 'b';
    const plain = `${wave}${mark}_r + i * ${wave}${mark}_i`;
    return own ? `${plain} + (${from}${mark}_r + i * ${from}${mark}_i) * R_ant / R_o` : plain;
  };
  const passed = {
    plain: '1 / C_n^2',
    same: '(1 - r_n^2) / (C_n - min(C_n, D_n) * r_n)^2',
    any: '1 / (C_n^2 - D_n^2)',
  } as const;
  return {
    formula: `(${formula}) - (20 * log10(I_n / I_1) + 10 * log10(${passed[way]}) - 10 * log10((1 - rho^2) / J^2))`,
    where: {
      ...loadSteps(look, at),
      I_1: 'transmit.fundamental',
      ...(own ? { R_o: 'transmit.outputImpedance' } : {}),
      J: step(
        `abs((${loaded('c')}) + (${loaded('d')}) * (g_r + i * g_i))`,
        '1',
        'current out of the collector for a forward wave of one volt, times R_ant',
      ),
      P: step(formulas.power, 'W', 'power that still reaches the antenna'),
      I_n: {
        value: Math.abs(currents[n] ?? 0),
        unit: 'Apk',
        says: `harmonic ${n} of the collector current`,
      },
      ...waveTerms(look, n, 'n'),
      C_n: step(`abs(${loaded('c', 'n')})`, '1', `the same at harmonic ${n}, forward`),
      ...(way === 'plain'
        ? {}
        : { D_n: step(`abs(${loaded('d', 'n')})`, '1', `the same at harmonic ${n}, thrown back`) }),
      ...(way === 'same'
        ? { r_n: step('min(rho, D_n / C_n)', '1', 'reflection up to rho that takes most') }
        : {}),
      ...(needs.frequency
        ? {
            n: { value: n, unit: '1', says: 'order of the harmonic' },
            f_0: 'plan.nominal',
            f_n: step('n * f_0', 'Hz', 'its frequency'),
          }
        : {}),
      ...(needs.own ? { A_own: 'plan.ownLimit' } : {}),
      ...where,
    },
  };
}

/** `x + y·Γ` for two of the four numbers. */
function sum(x: string, y: string): string {
  return `(${x}_r + i * ${x}_i) + (${y}_r + i * ${y}_i) * (g_r + i * g_i)`;
}
