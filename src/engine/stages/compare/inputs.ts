import { choice, count, quantity } from '../../fields/declare.ts';
import { filterFields } from '../filter/fields.ts';

const as = 'Blank: as the present filter.';
const { family: families, form: forms } = filterFields.inputs;

const use = <const L extends string>(letter: L) =>
  choice({
    label: `Filter ${letter}`,
    options: { no: 'left out', yes: 'beside it' },
    default: 'no',
    help: 'From the same crystals, with its own ends.',
  });

const crystals = count({ label: 'Crystals', symbol: 'n', range: [2, 12], default: null, help: as });

const bandwidth = quantity({
  label: 'Bandwidth wanted',
  symbol: 'B',
  unit: 'Hz',
  range: [50, 50_000],
  default: null,
  typical: [1800, 3000],
  digits: 4,
  help: as,
});

const family = choice({
  label: 'Family',
  options: { same: 'As the present filter', ...families.options },
  default: 'same',
  help: 'The shape of its response.',
});

const form = choice({
  label: 'Crystals stand',
  options: { same: 'As in the present filter', ...forms.options },
  default: 'same',
  help: 'To ground the steep skirt is below.',
});

const ripple = quantity({
  label: 'Ripple',
  symbol: 'A_r',
  unit: 'dB',
  range: [0.001, 3],
  default: null,
  typical: [0.01, 1],
  digits: 4,
  help: `${as} For families that have a choice of it.`,
});

/** Up to three alternatives. What is left blank is as in the present filter. */
export const compareInputs = {
  b: use('B'),
  bCrystals: crystals,
  bBandwidth: bandwidth,
  bFamily: family,
  bForm: form,
  bRipple: ripple,
  c: use('C'),
  cCrystals: crystals,
  cBandwidth: bandwidth,
  cFamily: family,
  cForm: form,
  cRipple: ripple,
  d: use('D'),
  dCrystals: crystals,
  dBandwidth: bandwidth,
  dFamily: family,
  dForm: form,
  dRipple: ripple,
} as const;
