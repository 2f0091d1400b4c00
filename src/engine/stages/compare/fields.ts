import { count, declare, model, quantity, table, words } from '../../fields/declare.ts';
import { compareInputs } from './inputs.ts';
import type { Variant } from './variants.ts';

/** Filters side by side: the present one, and up to three that might be made instead. */
export const compareFields = declare({
  key: 'compare',
  title: 'Compare',
  asks: 'What would another family, width or number of crystals do?',
  inputs: compareInputs,
  results: {
    filters: count({
      label: 'Filters side by side',
      symbol: 'N_f',
      help: 'The present one and the alternatives beside it.',
    }),
    described: table({
      label: 'Which filters',
      help: 'What each of them was asked to be.',
      columns: {
        name: words({ label: 'Filter', help: 'A is the present one.' }),
        crystals: count({ label: 'Crystals', symbol: 'n', help: 'From source to load.' }),
        bandwidth: quantity({
          label: 'Bandwidth wanted',
          symbol: 'B',
          unit: 'Hz',
          digits: 4,
          help: 'Between the −3 dB points.',
        }),
        family: words({ label: 'Family', help: 'The shape of its response.' }),
        form: words({ label: 'Crystals stand', help: 'In series, or to ground.' }),
        ripple: quantity({
          label: 'Ripple',
          symbol: 'A_r',
          unit: 'dB',
          digits: 4,
          help: 'For families that have a choice of it.',
        }),
      },
    }),
    variants: model<readonly Variant[]>()({
      label: 'The filters',
      help: 'What the comparison is worked from.',
    }),
  },
});
