import {
  airCapacitanceFormula,
  airLossSteps,
  airResistanceFormula,
  airShape,
  lorenzFormula,
  lorenzSteps,
} from '../../circuit/winding/airCoilFormula.ts';
import { COPPER, MU0 } from '../../circuit/wireLoss.ts';
import type { Bound, StageWorkings } from '../../fields/workings.ts';
import { rule, wantedOf } from './coilWorkings.ts';
import type { windingsFields } from './fields.ts';

type Keys = `airCoils.${keyof (typeof windingsFields)['results']['airCoils']['columns']}`;

const mu0 = {
  value: MU0,
  unit: 'H/m',
  says: 'permeability of the vacuum',
  source: 'CODATA',
} as const;

const wound: Record<string, Bound> = {
  N_a: 'row.turns',
  D_f: 'cores.former',
  d_a: 'cores.airWire',
  p_a: 'cores.airPitch',
  mu_0: mu0,
  ...airShape,
};

const sheet =
  'Lorenz, 1879; Nagaoka, 1909; elliptic integrals by the means of Abramowitz & Stegun, 17.6';

export const airWorkings: Pick<
  StageWorkings<typeof windingsFields>,
  Extract<keyof StageWorkings<typeof windingsFields>, Keys>
> = {
  'airCoils.label': rule('The same coils as on cores.'),
  'airCoils.l': wantedOf,
  'airCoils.turns': {
    says: 'So many turns at this spacing have the inductance wanted, by the exact current sheet.',
    left: lorenzFormula,
    right: 'L',
    root: 'N_a',
    where: { L: 'row.l', ...wound, ...lorenzSteps },
    source: sheet,
  },
  'airCoils.length': {
    says: 'Turns times spacing.',
    formula: 'l_a',
    where: wound,
    source: 'geometry',
  },
  'airCoils.lorenz': {
    says: 'The exact current sheet at these turns.',
    formula: lorenzFormula,
    where: { ...wound, ...lorenzSteps },
    source: sheet,
  },
  'airCoils.wheeler': {
    says: 'Wheeler’s rule, in inches and microhenries as he wrote it.',
    formula: '(D / 2 / i_n * N_a)^2 / (9 * D / 2 / i_n + 10 * l_a / i_n) * u_H',
    where: {
      ...wound,
      i_n: { value: 0.0254, unit: 'm', says: 'one inch' },
      u_H: { value: 1e-6, unit: 'H', says: 'one microhenry' },
    },
    source: 'Wheeler, Proc. IRE 16, 1928',
  },
  'airCoils.wire': {
    says: 'A helix unrolled, and a tail at each end.',
    formula: 'N_a * sqrt((pi * D)^2 + (d_a * p_a)^2) + 2 * l_t',
    where: { ...wound, l_t: 'cores.tail' },
    source: 'geometry',
  },
  'airCoils.resistance': (look, index) => {
    const row = (look('windings.airCoils') as readonly { readonly length: number }[])[index];
    const diameter = (look('cores.former') as number) + (look('cores.airWire') as number);
    return {
      says: 'Current keeps to the skin of the wire, and neighbouring turns crowd it further.',
      formula: airResistanceFormula,
      where: {
        ...wound,
        l_t: 'cores.tail',
        f_0: 'plan.nominal',
        rho: {
          value: COPPER,
          unit: 'Ω·m',
          says: 'resistivity of copper at 20 °C',
          source: 'IEC 60028',
        },
        ...airLossSteps(look('cores.airPitch') as number, (row?.length ?? 0) / diameter),
      },
      source:
        'asymptotic series of the skin effect; Medhurst, Wireless Engineer, 1947, table of φ (from memory)',
    };
  },
  'airCoils.q': {
    says: 'Reactance over resistance.',
    formula: '2 * pi * f_0 * L / R_a',
    where: { f_0: 'plan.nominal', L: 'row.l', R_a: 'row.resistance' },
    source: 'definition of Q',
  },
  'airCoils.selfCapacitance': {
    says: 'A formula fitted to measurements, one end of the coil at ground.',
    formula: airCapacitanceFormula,
    where: {
      ...wound,
      c_1: { value: 1e-10, unit: 'F/m', says: 'one picofarad for each centimetre' },
    },
    source: 'Medhurst, Wireless Engineer, 1947 (from memory)',
  },
  'airCoils.resonance': {
    says: 'Where inductance and self-capacitance resonate.',
    formula: '1 / (2 * pi * sqrt(L * C_a))',
    where: { L: 'row.l', C_a: 'row.selfCapacitance' },
    source: 'Thomson’s formula',
  },
  'airCoils.build': rule('Turns, length and former of this row in one line.'),
};
