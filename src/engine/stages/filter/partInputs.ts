import { choice, pasted, quantity } from '../../fields/declare.ts';

/** The capacitors that are to be had. */
export const partInputs = {
  fitted: choice({
    label: 'Capacitors',
    options: {
      exact: 'Exact values',
      e24: 'E24, single',
      e12: 'E12, single',
      e6: 'E6, single',
      e24Pairs: 'E24, up to two in parallel',
      e12Pairs: 'E12, up to two in parallel',
      e6Pairs: 'E6, up to two in parallel',
      own: 'Only what I own',
    },
    default: 'exact',
    help: 'What is really soldered in. All values are chosen together, so that the response departs least from that of the exact ones; one by one the nearest are not the best.',
    source: 'IEC 60063',
  }),
  owned: pasted({
    label: 'Capacitors that I own',
    longest: 4000,
    help: 'Values, each with how many there are: 100p 5, 82p x3, 47p. Plain numbers are picofarads. One is used alone or two side by side, and none oftener than it is there.',
  }),
  capacitorQ: quantity({
    label: 'Capacitor Q',
    symbol: 'Q_c',
    unit: '1',
    range: [20, 1e6],
    default: 2000,
    typical: [500, 5000],
    digits: 3,
    help: 'NP0 ceramic, mica and polystyrene have a thousand and more; other ceramic has no place here.',
    source: 'common practice, no source',
  }),
  stray: quantity({
    label: 'Stray at each junction',
    symbol: 'C_st',
    unit: 'F',
    range: [0, 20e-12],
    default: 0,
    typical: [5e-13, 4e-12],
    digits: 2,
    help: 'Wiring and cans to ground. It counts towards the coupling capacitance, so that much less is fitted; with crystals to ground it lies across each of them.',
  }),
};
