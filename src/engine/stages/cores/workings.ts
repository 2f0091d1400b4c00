import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { coresFields } from './fields.ts';

interface Row {
  readonly line: number;
  readonly pieces: number | null;
  readonly al: number | null;
}

const rowsOf = (look: Look): readonly Row[] => (look('cores.listed') ?? []) as readonly Row[];

const told = (says: string, source = 'as typed'): Working => ({
  says,
  rule: says,
  where: {},
  source,
});

const constant = (symbol: string, bound: Bound, says: string): Working => ({
  says,
  formula: symbol,
  where: { [symbol]: bound },
  source: 'as typed, or the table of cores',
});

const perTurn = (l: string, n: string): Working => ({
  says: 'Inductance grows as the square of the turns.',
  formula: 'L / N^2',
  where: { L: l, N: n },
  source: 'definition of A_L',
});

export const coresWorkings: StageWorkings<typeof coresFields> = {
  'listed.line': (look, index) =>
    constant(
      'i_l',
      { value: rowsOf(look)[index]?.line ?? 0, unit: '1', says: 'line of the list' },
      'In order.',
    ),
  'listed.title': told('As written, or the name in the table of cores.'),
  'listed.pieces': (look, index) =>
    constant(
      'n_p',
      { value: rowsOf(look)[index]?.pieces ?? 0, unit: '1', says: 'pieces, as written' },
      'As written; one where none are said.',
    ),
  'listed.al': (look, index) =>
    constant(
      'A_t',
      { value: rowsOf(look)[index]?.al ?? 0, unit: 'H/t²', says: 'table of cores, or as written' },
      'From the table of cores, or as written.',
    ),
  'listed.serves': told(
    'Iron whose useful range holds the operating frequency serves for tuned coils; ferrite for transformers and chokes.',
    'makers’ ranges, from memory',
  ),
  pieces: (look) => {
    const where: Record<string, Bound> = {};
    const rows = rowsOf(look).filter(({ pieces }) => pieces !== null);
    rows.forEach(({ pieces, line }, i) => {
      where[`n_${i + 1}`] = { value: pieces ?? 0, unit: '1', says: `line ${line}` };
    });
    return {
      says: 'All lines together.',
      formula: rows.length === 0 ? '0' : rows.map((_, i) => `n_${i + 1}`).join(' + '),
      where,
      source: 'counting',
    };
  },
  al1: perTurn('cores.trial1', 'cores.turns1'),
  al2: perTurn('cores.trial2', 'cores.turns2'),
  apart: {
    says: 'Difference over the smaller.',
    formula: 'abs(A_L1 - A_L2) / min(A_L1, A_L2)',
    where: { A_L1: 'cores.al1', A_L2: 'cores.al2' },
    source: 'definition',
  },
  offset: {
    says: 'The part of both readings that does not grow with the square of the turns.',
    formula: '(L_1 * N_2^2 - L_2 * N_1^2) / (N_2^2 - N_1^2)',
    where: {
      L_1: 'cores.trial1',
      N_1: 'cores.turns1',
      L_2: 'cores.trial2',
      N_2: 'cores.turns2',
    },
    source: 'two equations L = A_L·N² + L₀',
  },
  doubt: told(
    'Each number of turns is tried one more and one less: a pair of factors within 2 % would fit.',
    'this program’s own rule',
  ),
  agreement: {
    says: 'Within 5 % they agree.',
    formula: 'd_AL > 0.05 ? "fails" : "holds"',
    where: { d_AL: 'cores.apart' },
    source: 'common practice, no source',
  },
  al: (look) => {
    const first = look('cores.al1') !== null;
    const second = look('cores.al2') !== null;
    return first && second
      ? {
          says: 'The mean of both trials.',
          formula: '(A_L1 + A_L2) / 2',
          where: { A_L1: 'cores.al1', A_L2: 'cores.al2' },
          source: 'mean',
        }
      : {
          says: 'The one trial that there is.',
          formula: 'A_L1',
          where: { A_L1: first ? 'cores.al1' : 'cores.al2' },
          source: 'as measured',
        };
  },
  permeability: {
    says: 'A ring of rectangular section.',
    formula: 'A_Lx * 2 * pi / (mu_0 * h_c * log(D_a / D_i))',
    where: {
      A_Lx: 'cores.al',
      mu_0: {
        value: 4e-7 * Math.PI,
        unit: 'H/m',
        says: 'permeability of the vacuum',
        source: 'CODATA',
      },
      h_c: 'cores.height',
      D_a: 'cores.outer',
      D_i: 'cores.inner',
    },
    source: 'closed form of the toroid',
    assumes: 'Sharp edges; rounded ones have a little more.',
  },
  likely: {
    says: 'By permeability the kind, by size and factor the core.',
    rule: 'Cores of the table within 6 % of the diameter and 20 % of the factor.',
    where: { mu_x: 'cores.permeability', A_Lx: 'cores.al' },
    source: 'makers’ permeabilities, from memory',
    assumes: 'Mixes of one permeability differ in loss: heat it with a tone before you trust it.',
  },
  line: {
    says: 'Dimensions in millimetres and the factor.',
    rule: 'As the box reads it.',
    where: { A_Lx: 'cores.al' },
    source: 'this program’s own notation',
  },
};
