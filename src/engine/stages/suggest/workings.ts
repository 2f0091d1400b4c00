import type { Look, StageWorkings } from '../../fields/workings.ts';
import type { suggestFields } from './fields.ts';

const counted = 'counted';

/** How the list comes about; the networks themselves are worked on an errand. */
export const suggestWorkings: StageWorkings<typeof suggestFields> = {
  looked: (look) => {
    const rows = rowsOf(look);
    const where = Object.fromEntries(
      rows.map(({ kind, number }, i) => [
        `N_${i + 1}`,
        { value: number, unit: '1', says: kind } as const,
      ]),
    );
    return {
      says: 'Of all kinds together.',
      formula: Object.keys(where).join(' + '),
      where,
      source: counted,
    };
  },
  'kinds.kind': {
    says: 'Family of the filter.',
    rule: 'Every family that the Network leaf can make.',
    where: {},
    source: 'the choices of the Network leaf',
  },
  'kinds.allowed': {
    says: 'As chosen on this leaf.',
    rule: 'A match alone may always be suggested.',
    where: {},
    source: 'as chosen',
  },
  'kinds.number': (look, i) => ({
    says: 'How many are built and worked.',
    formula: 'N',
    where: { N: { value: rowsOf(look)[i]?.number ?? 0, unit: '1', says: 'of this kind' } },
    source: counted,
  }),
};

const rowsOf = (look: Look) =>
  look('suggest.kinds') as readonly { readonly kind: string; readonly number: number }[];
