import { COPPER, MU0, SKIN_SPLIT } from '../../circuit/wireLoss.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { MEDHURST } from './airRows.ts';
import { rule } from './coilWorkings.ts';
import type { windingsFields } from './fields.ts';

type Keys = `airCoils.${keyof (typeof windingsFields)['results']['airCoils']['columns']}`;

const wound: Record<string, Bound> = {
  D_f: 'windings.former',
  d_a: 'windings.airWire',
  p_a: 'windings.airPitch',
  D: { formula: 'D_f + d_a', unit: 'm', says: 'diameter from wire to wire' },
};

const lorenz = 'Lorenz, 1879; Nagaoka, 1909';

/** Turns from a solver: the equation with the root put in. */
const turns = (look: Look, index: number): Working => ({
  says: 'So many turns at this spacing have the inductance wanted, by the exact current sheet.',
  formula: 'N_r',
  where: {
    N_r: {
      value:
        (look('windings.airCoils') as readonly { readonly turns: number }[])[index]?.turns ?? 0,
      unit: '1',
      says: 'root of L(N) = L, by halving; the inductance that it gives stands under Lorenz',
    },
  },
  source: lorenz,
});

export const airWorkings: Pick<
  StageWorkings<typeof windingsFields>,
  Extract<keyof StageWorkings<typeof windingsFields>, Keys>
> = {
  'airCoils.label': rule('The same coils as on cores.'),
  'airCoils.l': (look, index) => ({
    says: 'As for the coil on a core.',
    formula: 'L_c',
    where: {
      L_c: {
        value: (look('windings.coils') as readonly { readonly l: number }[])[index]?.l ?? 0,
        unit: 'H',
        says: 'wanted, in the table of coils',
      },
    },
    source: 'Output, Carrier',
  }),
  'airCoils.turns': turns,
  'airCoils.length': {
    says: 'Turns times spacing.',
    formula: 'N_a * d_a * p_a',
    where: { N_a: 'row.turns', ...wound },
    source: 'geometry',
  },
  'airCoils.lorenz': (look, index) => ({
    says: 'The exact current sheet at these turns: complete elliptic integrals.',
    formula: 'L_e',
    where: {
      L_e: {
        value:
          (look('windings.airCoils') as readonly { readonly lorenz: number }[])[index]?.lorenz ?? 0,
        unit: 'H',
        says: 'from elliptic integrals, which stand on no pocket calculator',
      },
    },
    source: lorenz,
  }),
  'airCoils.wheeler': {
    says: 'Wheeler’s rule, in inches and microhenries as he wrote it.',
    formula: '(D / 2 / i_n * N_a)^2 / (9 * D / 2 / i_n + 10 * l_a / i_n) * u_H',
    where: {
      N_a: 'row.turns',
      l_a: 'row.length',
      ...wound,
      i_n: { value: 0.0254, unit: 'm', says: 'one inch' },
      u_H: { value: 1e-6, unit: 'H', says: 'one microhenry' },
    },
    source: 'Wheeler, Proc. IRE 16, 1928',
  },
  'airCoils.wire': {
    says: 'A helix unrolled, and a tail at each end.',
    formula: 'N_a * sqrt((pi * D)^2 + (d_a * p_a)^2) + 2 * l_t',
    where: { N_a: 'row.turns', ...wound, l_t: 'cores.tail' },
    source: 'geometry',
  },
  'airCoils.resistance': {
    says: 'Current keeps to the skin of the wire, and neighbouring turns crowd it further.',
    formula: 'rho * l_aw / (pi / 4 * d_a^2) * k_skin * (1 + 2.4 * (1 / p_a)^1.4)',
    where: {
      l_aw: 'row.wire',
      ...wound,
      f_0: 'plan.nominal',
      rho: {
        value: COPPER,
        unit: 'Ω·m',
        says: 'resistivity of copper at 20 °C',
        source: 'IEC 60028',
      },
      mu_0: { value: MU0, unit: 'H/m', says: 'permeability of the vacuum', source: 'CODATA' },
      delta: { formula: 'sqrt(rho / (pi * f_0 * mu_0))', unit: 'm', says: 'skin depth' },
      x: { formula: 'd_a / 2 / delta', unit: '1', says: 'radius in skin depths' },
      k_skin: {
        formula: `x < ${SKIN_SPLIT} ? 1 + x^4 / (48 + 0.7 * x^4) : x / 2 + 0.25 + 3 / (32 * x)`,
        unit: '1',
        says: 'rise by the skin effect',
      },
    },
    source:
      'asymptotic series of the skin effect; Medhurst, Wireless Engineer, 1947, long coils (from memory)',
  },
  'airCoils.q': {
    says: 'Reactance over resistance.',
    formula: '2 * pi * f_0 * L / R_a',
    where: { f_0: 'plan.nominal', L: 'row.l', R_a: 'row.resistance' },
    source: 'definition of Q',
  },
  'airCoils.selfCapacitance': {
    says: 'A layer about as long as wide; it changes little from half to twice that.',
    formula: 'c_M * D',
    where: {
      ...wound,
      c_M: { value: MEDHURST, unit: 'F/m', says: 'capacitance for each metre of diameter' },
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
