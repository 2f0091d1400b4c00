import type { Bound, Look, StageWorkings, Working, WorkingOf } from '../../fields/workings.ts';
import { designOf, found, reactanceMethod, susceptanceMethod, toGround } from './bounds.ts';
import type { filterFields } from './fields.ts';
import { meshSteps, nodeSteps } from './placeWorkings.ts';

type Workings = StageWorkings<typeof filterFields>;

const parts: Working = {
  says: 'One part, or two side by side.',
  rule: 'Of the series, or of those owned, what the search chose; the value itself where nothing is to be chosen.',
  where: {},
  source: 'IEC 60063',
};

const off: Working = {
  says: 'What is fitted against what the design asks for.',
  formula: 'C_fit / C_exact - 1',
  where: { C_fit: 'row.fitted', C_exact: 'row.exact' },
  source: 'definition',
};

const designCapacitor = (look: Look): Working =>
  toGround(look)
    ? {
        says: 'What a node lacks of the largest sum, a capacitor across its crystal makes up, besides what lies across all of them.',
        formula: 'C_ac + h_B * (a - a_i) / (2 * pi * f_mesh)',
        where: {
          C_ac: 'filter.acrossFitted',
          f_mesh: 'filter.alignment',
          h_B: 'filter.halfSusceptance',
          a: 'filter.largestSum',
          a_i: 'row.sum',
        },
        source: susceptanceMethod,
      }
    : {
        says: 'What a mesh lacks of the largest sum, a series capacitor makes up.',
        formula: '1 / (2 * pi * f_mesh * h * (a - a_i))',
        where: {
          f_mesh: 'filter.alignment',
          h: 'filter.halfSpan',
          a: 'filter.largestSum',
          a_i: 'row.sum',
        },
        source: reactanceMethod,
      };

/** What a mesh with its own crystal needs. */
const ownCapacitor = (look: Look, index: number): Working =>
  (toGround(look) ? ownAcross : ownInSeries)(look, index);

const ownAcross = (look: Look, index: number): Working => {
  const alone = look('row.exact') === look('filter.acrossFitted');
  return {
    says: alone
      ? 'This node resonates lowest by itself: it has only what lies across all crystals.'
      : 'What the node lacks, where all are aligned, to cancel its crystal’s susceptance.',
    formula: alone ? 'C_ac' : '1 / (2 * pi * f_all * X_i) - C_n',
    where: alone
      ? { C_ac: 'filter.acrossFitted' }
      : { f_all: 'filter.alignedAt', ...nodeSteps(look, index) },
    source: susceptanceMethod,
  };
};

const ownInSeries = (look: Look, index: number): Working => ({
  says: 'What its crystal’s reactance exceeds that of the couplings by, where all meshes are aligned, a series capacitor takes away.',
  formula: '1 / (2 * pi * f_all * (X_i - X_k))',
  where: { f_all: 'filter.alignedAt', ...meshSteps(look, index) },
  source: reactanceMethod,
});

export const partWorkings: Pick<
  Workings,
  | 'couplings.junction'
  | 'couplings.exact'
  | 'couplings.nearest'
  | 'couplings.fitted'
  | 'couplings.parts'
  | 'couplings.off'
  | 'meshes.mesh'
  | 'meshes.exact'
  | 'meshes.nearest'
  | 'meshes.fitted'
  | 'meshes.parts'
  | 'meshes.off'
> = {
  'couplings.junction': counted('Junctions are counted from the source.'),
  'couplings.exact': (look) =>
    toGround(look)
      ? {
          says: 'The capacitor whose susceptance is h times the coupling.',
          formula: 'h_B * k / (2 * pi * f_mesh)',
          where: {
            f_mesh: 'filter.alignment',
            h_B: 'filter.halfSusceptance',
            k: 'row.k',
          },
          source: susceptanceMethod,
        }
      : {
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
  'couplings.nearest': added('coupling', 'nearest'),
  'couplings.fitted': added('coupling', 'chosen'),
  'couplings.parts': parts,
  'couplings.off': off,
  'meshes.mesh': counted('Meshes are counted from the source.'),
  'meshes.exact': (look, index) =>
    designOf(look).each ? ownCapacitor(look, index) : designCapacitor(look),
  'meshes.nearest': added('series', 'nearest'),
  'meshes.fitted': added('series', 'chosen'),
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

/** The parts of one place, added up. */
function added(of: 'coupling' | 'series', which: 'chosen' | 'nearest'): WorkingOf {
  return (look, index) => {
    const parts = designOf(look).parts?.[of][index]?.[which].parts ?? [];
    if (parts.length === 0) {
      return {
        says: 'The exact value.',
        formula: 'C_exact',
        where: { C_exact: 'row.exact' },
        source: 'as asked for',
      };
    }
    const own = look('filter.fitted') === 'own';
    const where: Record<string, Bound> = {};
    parts.forEach((part, i) => {
      where[`C_${i + 1}`] = {
        ...{ value: part, unit: 'F', says: own ? 'from those owned' : 'preferred value' },
        source: own ? 'as listed' : 'IEC 60063',
      };
    });
    return {
      says:
        which === 'nearest'
          ? 'Nearest to the exact value by itself.'
          : 'Chosen together with all others, so that the response departs least from the exact one.',
      formula: Object.keys(where).join(' + '),
      where,
      source: own ? 'as listed' : 'IEC 60063',
      assumes: 'Each capacitor has just its marked value.',
    };
  };
}
