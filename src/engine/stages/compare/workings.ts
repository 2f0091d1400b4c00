import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { compareFields } from './fields.ts';
import { type Letter, letters } from './variants.ts';

const asChosen = 'as chosen';

/** How the list of filters comes about; the comparison itself is worked on an errand. */
export const compareWorkings: StageWorkings<typeof compareFields> = {
  filters: (look) => ({
    says: 'The present one, and those that stand beside it.',
    formula: `1${' + 1'.repeat(beside(look).length)}`,
    where: {},
    source: 'count',
  }),
  'described.name': {
    says: 'A is the present one.',
    rule: 'In order.',
    where: {},
    source: asChosen,
  },
  'described.crystals': (look, index) => said(look, index, 'Crystals', 'n'),
  'described.bandwidth': (look, index) => said(look, index, 'Bandwidth', 'B'),
  'described.family': {
    says: 'As chosen here; as the present filter where that was chosen.',
    rule: 'As chosen.',
    where: {},
    source: asChosen,
  },
  'described.form': {
    says: 'As chosen here; as the present filter where that was chosen.',
    rule: 'As chosen.',
    where: {},
    source: asChosen,
  },
  'described.ripple': (look, index) => said(look, index, 'Ripple', 'A_r'),
};

const beside = (look: Look): Letter[] =>
  letters.filter((letter) => look(`compare.${letter}`) === 'yes');

/** A figure as said for this filter, or as the present one has it. */
function said(
  look: Look,
  index: number,
  key: 'Crystals' | 'Bandwidth' | 'Ripple',
  symbol: string,
): Working {
  const letter = index === 0 ? undefined : beside(look)[index - 1];
  const own = `compare.${letter}${key}`;
  const blank = letter === undefined || look(own) === null;
  const where: Record<string, Bound> = { [symbol]: blank ? `filter.${key.toLowerCase()}` : own };
  return {
    says: blank ? 'As the present filter.' : 'As said for this one.',
    formula: symbol,
    where,
    source: asChosen,
  };
}
