import { quantity } from '../../fields/declare.ts';

export const speechInputs = {
  more: quantity({
    label: 'An edge moved outwards by',
    symbol: 'f_more',
    unit: 'Hz',
    range: [10, 1000],
    default: 200,
    typical: [100, 300],
    digits: 3,
    help: 'To see what it would be worth: the whole skirt moves, the other one stays.',
  }),
} as const;
