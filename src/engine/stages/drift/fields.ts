import { choice, curve, declare, quantity, table, words } from '../../fields/declare.ts';
import { driftInputs } from './inputs.ts';

const hertz = (label: string, symbol: string, help: string, digits = 3) =>
  quantity({ label, symbol, unit: 'Hz', digits, help });
const farads = (label: string, symbol: string, help: string) =>
  quantity({ label, symbol, unit: 'F', digits: 3, help });

/** What moves the carrier once it is placed, whether the trimmer covers it, and ways out of reach. */
export const driftFields = declare({
  key: 'drift',
  title: 'Drift and reach',
  asks: 'Does the carrier stay, does the trimmer cover the spread, and what if it is out of reach?',
  inputs: driftInputs,
  results: {
    perDegree: quantity({
      label: 'Carrier per degree',
      symbol: 'p_T',
      unit: 'Hz/°C',
      digits: 3,
      help: 'At 25 °C, crystal, capacitors and transistor together.',
    }),
    ofCrystal: quantity({
      label: 'by the crystal',
      symbol: 'p_x',
      unit: 'Hz/°C',
      digits: 3,
      help: 'Its slope at 25 °C.',
    }),
    ofParts: quantity({
      label: 'by capacitors and coil',
      symbol: 'p_C',
      unit: 'Hz/°C',
      digits: 3,
      help: 'Series part and divider.',
    }),
    ofTransistor: quantity({
      label: 'by the transistor',
      symbol: 'p_t',
      unit: 'Hz/°C',
      digits: 3,
      help: 'Its base capacitance shrinks as it warms at the same current.',
    }),
    wanders: hertz(
      'Carrier wanders by',
      'd_f',
      'From 25 °C upwards, over the warming reckoned with. Below 50 Hz nobody notices.',
    ),
    against: hertz(
      'Against the filter',
      'd_ff',
      'Filter and carrier crystals drift together: this is what is left between them.',
    ),
    overWarmth: curve({
      label: 'Over temperature',
      help: 'Carrier and filter against 25 °C.',
      along: 'temperature',
      of: {
        temperature: quantity({
          label: 'Temperature',
          symbol: 'T',
          unit: '°C',
          digits: 3,
          help: 'Of the whole board.',
        }),
        carrier: hertz('Carrier', 'd_c', 'Against 25 °C.'),
        filter: hertz('Filter', 'd_F', 'Its crystals against 25 °C.'),
      },
    }),
    bufferPull: hertz(
      'Pull of the buffer',
      'd_buf',
      'How far the carrier moves when the buffer is connected: set the trimmer with it in place.',
    ),
    startLoaded: quantity({
      label: 'Start margin with the buffer',
      symbol: 'm_buf',
      unit: '1',
      digits: 2,
      help: 'The buffer’s resistance takes a part of what the transistor gives.',
    }),
    leastC: farads(
      'Least series capacitance to set',
      'C_min',
      'For a crystal and parts at the one end.',
    ),
    mostC: farads(
      'Most series capacitance to set',
      'C_max',
      'At the other end; none where a short would still be too little.',
    ),
    covers: choice({
      label: 'Trimmer',
      options: {
        holds: 'covers the spread',
        fails: 'does not cover the spread',
        none: 'has nothing to do',
      },
      help: 'A trimmer, with a fixed capacitor beside it, from the usual ones.',
    }),
    trimmer: words({ label: 'Trimmer that covers it', help: 'With a fixed capacitor beside it.' }),
    waysOut: table({
      label: 'Ways out',
      help: 'What brings the carrier where the filter wants it, the cheapest first.',
      columns: {
        way: words({ label: 'What to change', help: 'The cheapest first.' }),
        reaches: choice({
          label: 'Does it reach?',
          options: { yes: 'yes', no: 'no', unknown: 'to be tried' },
          help: 'By the same sum with that one thing changed.',
        }),
        says: words({ label: 'How', help: 'With its figure.' }),
      },
    }),
  },
});
