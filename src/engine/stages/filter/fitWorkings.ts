import { ladderFormulas } from '../../circuit/ladderFormulas.ts';
import type { Look, StageWorkings, WorkingOf } from '../../fields/workings.ts';
import { chain, designOf, found } from './bounds.ts';
import type { filterFields } from './fields.ts';
import type { Fit } from './fits.ts';

type Workings = StageWorkings<typeof filterFields>;

const fitAt = (look: Look, index: number): Fit => {
  const fit = designOf(look).fits[index];
  if (!fit) throw new RangeError(`no fit ${index}`);
  return fit;
};

/** The loss at one frequency of one of the four, less another loss if given. */
const lossAt = (says: string, at: (fit: Fit) => number | null, less: boolean): WorkingOf => {
  return (look, index) => {
    const fit = fitAt(look, index);
    const f = at(fit);
    if (f === null) {
      return {
        says: 'The passband is one hump: there is no dip.',
        formula: '0 * A_best',
        where: { A_best: 'row.loss' },
        source: 'definition',
      };
    }
    const { formulas, where } = ladderFormulas(fit.ladder, ['f_at']);
    return {
      says,
      formula: less ? `-(${formulas[0]}) - A_best` : `-(${formulas[0]})`,
      where: {
        f_at: found(f, 'Hz', 'there'),
        ...(less ? { A_best: 'row.loss' } : {}),
        ...where,
      },
      source: chain,
    };
  };
};

export const fitWorkings: Pick<
  Workings,
  | 'fits.way'
  | 'fits.departure'
  | 'fits.width'
  | 'fits.ripple'
  | 'fits.loss'
  | 'stock.value'
  | 'stock.owned'
  | 'stock.used'
  | 'stock.left'
> = {
  'fits.way': {
    says: 'One for each that differs from the one before.',
    rule: 'Design; as things are with exact values; nearest values; chosen values.',
    where: {},
    source: 'definition',
  },
  'fits.departure': (look, index) => ({
    says: 'The search makes this as small as it can: each capacitor is moved along the values to be had, then two at a time, until nothing gets better.',
    formula: 'sqrt(S / W) * D_1',
    where: {
      S: found(
        fitAt(look, index).sum,
        '1',
        'squares of the differences in dB, each by its weight, added up over 41 frequencies',
      ),
      W: found(designOf(look).weights, '1', 'all weights: 25 of one, 16 of a tenth'),
      D_1: found(1, 'dB', 'one decibel'),
    },
    source: 'definition; descent by single and pair moves, own method',
  }),
  'fits.width': (look, index) => {
    const { band } = fitAt(look, index);
    return {
      says: 'From the lower to the upper −3 dB point.',
      formula: 'f_hi - f_lo',
      where: {
        f_hi: found(band.high, 'Hz', 'upper −3 dB point'),
        f_lo: found(band.low, 'Hz', 'lower −3 dB point'),
      },
      source: chain,
    };
  },
  'fits.ripple': lossAt(
    'The deepest dip between two humps, against the best point.',
    ({ dip }) => dip.at,
    true,
  ),
  'fits.loss': lossAt('At the best point.', ({ band }) => band.peak, false),
  'stock.value': counted('row.value', 'F', 'As listed.'),
  'stock.owned': counted('row.owned', '1', 'As listed, of one value together.'),
  'stock.used': counted('row.used', '1', 'Counted over all places of this filter.'),
  'stock.left': {
    says: 'What is listed less what is used.',
    formula: 'n_own - n_used',
    where: { n_own: 'row.owned', n_used: 'row.used' },
    source: 'definition',
  },
};

function counted(path: string, unit: 'F' | '1', says: string): WorkingOf {
  return (look) => ({
    says,
    formula: 'x',
    where: { x: found(look(path) as number, unit, says) },
    source: 'as listed',
  });
}
