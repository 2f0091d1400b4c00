import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { found, reactanceMethod } from './bounds.ts';
import { chooseCapacitor, type Fitting } from './chooseCapacitor.ts';
import type { filterFields } from './fields.ts';

type Workings = StageWorkings<typeof filterFields>;

const parts: Working = {
  says: 'One part, or two side by side where they come nearer.',
  rule: 'The nearest of the series by ratio; the value itself where nothing is to be chosen.',
  where: {},
  source: 'IEC 60063',
};

const off: Working = {
  says: 'What is fitted against what the design asks for.',
  formula: 'C_fit / C_exact - 1',
  where: { C_fit: 'row.fitted', C_exact: 'row.exact' },
  source: 'definition',
};

export const partWorkings: Pick<
  Workings,
  | 'couplings.junction'
  | 'couplings.exact'
  | 'couplings.fitted'
  | 'couplings.parts'
  | 'couplings.off'
  | 'meshes.mesh'
  | 'meshes.exact'
  | 'meshes.fitted'
  | 'meshes.parts'
  | 'meshes.off'
> = {
  'couplings.junction': counted('Junctions are counted from the source.'),
  'couplings.exact': {
    says: 'The capacitor whose reactance is h times the coupling; stray is part of it.',
    formula: '1 / (2 * pi * f_mesh * h * k) - C_st',
    where: {
      f_mesh: 'filter.alignment',
      h: 'filter.halfSpan',
      k: 'row.k',
      C_st: 'filter.stray',
    },
    source: reactanceMethod,
  },
  'couplings.fitted': fitted,
  'couplings.parts': parts,
  'couplings.off': off,
  'meshes.mesh': counted('Meshes are counted from the source.'),
  'meshes.exact': {
    says: 'What a mesh lacks of the largest sum, a series capacitor makes up.',
    formula: '1 / (2 * pi * f_mesh * h * (a - a_i))',
    where: {
      f_mesh: 'filter.alignment',
      h: 'filter.halfSpan',
      a: 'filter.largestSum',
      a_i: 'row.sum',
    },
    source: reactanceMethod,
  },
  'meshes.fitted': fitted,
  'meshes.parts': parts,
  'meshes.off': off,
};

function counted(says: string): (look: Look, index: number) => Working {
  return (_, index) => ({
    says,
    formula: 'i',
    where: { i: found(index + 1, '1', 'its place') },
    source: 'definition',
  });
}

/** The parts that were picked, added up. */
function fitted(look: Look): Working {
  const chosen = chooseCapacitor(look('row.exact') as number, look('filter.fitted') as Fitting);
  if (chosen.parts.length === 0) {
    return {
      says: 'The exact value.',
      formula: 'C_exact',
      where: { C_exact: 'row.exact' },
      source: 'as asked for',
    };
  }
  const where: Record<string, Bound> = {};
  chosen.parts.forEach((part, i) => {
    where[`C_${i + 1}`] = {
      ...{ value: part, unit: 'F', says: 'preferred value' },
      source: 'IEC 60063',
    };
  });
  return {
    says: 'Nearest to the exact value by ratio.',
    formula: Object.keys(where).join(' + '),
    where,
    source: 'IEC 60063',
    assumes: 'Each capacitor has just its marked value.',
  };
}
