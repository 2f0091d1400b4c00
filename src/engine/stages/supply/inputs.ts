import { batteries } from '../../data/batteries.ts';
import { leads } from '../../data/leads.ts';
import { choice, quantity } from '../../fields/declare.ts';

type Titled = Readonly<Record<string, { readonly title: string }>>;
const titles = <T extends Titled>(of: T) =>
  Object.fromEntries(Object.entries(of).map(([key, { title }]) => [key, title])) as {
    readonly [K in keyof T]: string;
  };

/** What the user may say of the supply. */
export const supplyInputs = {
  relay: quantity({
    label: 'Relays, on transmit',
    symbol: 'I_rel',
    unit: 'A',
    range: [0, 2],
    default: 30e-3,
    typical: [0, 100e-3],
    digits: 2,
    help: 'What the change from receive to transmit takes itself.',
    source: 'common practice, no source',
  }),
  extras: quantity({
    label: 'Everything else, always',
    symbol: 'I_ext',
    unit: 'A',
    range: [0, 2],
    default: 5e-3,
    typical: [0, 50e-3],
    digits: 2,
    help: 'Lamps, a display, a regulator’s own current.',
    source: 'common practice, no source',
  }),
  conversion: quantity({
    label: 'Conversion oscillator',
    symbol: 'I_lo',
    unit: 'A',
    range: [0, 1],
    default: 15e-3,
    typical: [5e-3, 50e-3],
    digits: 2,
    help: 'With its buffers. Only in a rig with conversion.',
    source: 'common practice, no source',
  }),
  battery: choice({
    label: 'Battery',
    options: titles(batteries),
    default: 'lead',
    help: 'How much of it may be used, and how much a strong current leaves in it.',
  }),
  capacity: quantity({
    label: 'Capacity printed on it',
    symbol: 'C_bat',
    unit: 'Ah',
    range: [0.1 * 3600, 500 * 3600],
    default: 7 * 3600,
    digits: 2,
    help: 'Over twenty hours, as is usual.',
  }),
  talking: quantity({
    label: 'Share of the time on transmit',
    symbol: 'd_tx',
    unit: '%',
    range: [0, 1],
    default: 0.2,
    typical: [0.05, 0.5],
    digits: 2,
    help: 'The rest is listening. In a net of five a fifth; calling, a half.',
    source: 'common practice, no source',
  }),
  lead: choice({
    label: 'Leads to the supply',
    options: titles(leads),
    default: 'mm15',
    help: 'Each of the two.',
  }),
  leadLength: quantity({
    label: 'Their length',
    symbol: 'l_s',
    unit: 'm',
    range: [0.05, 50],
    default: 1.5,
    digits: 2,
    help: 'One way: the current goes there and back.',
  }),
  dropAllowed: quantity({
    label: 'Voltage that they may lose',
    symbol: 'd_V',
    unit: '%',
    range: [0.001, 0.2],
    default: 0.02,
    digits: 2,
    help: 'Of the supply. Two per cent of the volts are four of the watts.',
    source: 'common practice, no source',
  }),
} as const;
