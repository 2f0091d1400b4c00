import { batteries } from '../../data/batteries.ts';
import { fuses } from '../../data/fuses.ts';
import { leads } from '../../data/leads.ts';
import { choice, count, quantity } from '../../fields/declare.ts';

type Titled = Readonly<Record<string, { readonly title: string }>>;
const titles = <T extends Titled>(of: T) =>
  Object.fromEntries(Object.entries(of).map(([key, { title }]) => [key, title])) as {
    readonly [K in keyof T]: string;
  };

const custom = 'common practice, no source';

/** What the user may say of the supply. */
export const supplyInputs = {
  oscillator: quantity({
    label: 'Carrier oscillator’s current',
    symbol: 'I_osc',
    unit: 'A',
    range: [0, 0.1],
    default: 8e-3,
    typical: [3e-3, 15e-3],
    digits: 2,
    help: 'With the stage behind it that drives the diodes.',
    source: custom,
  }),
  preamp: quantity({
    label: 'Audio preamplifier’s current',
    symbol: 'I_pre',
    unit: 'A',
    range: [0, 0.1],
    default: 2e-3,
    typical: [1e-3, 5e-3],
    digits: 2,
    help: 'Without signal.',
    source: custom,
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
    source: custom,
  }),
  relay: quantity({
    label: 'Relays, on transmit',
    symbol: 'I_rel',
    unit: 'A',
    range: [0, 2],
    default: 30e-3,
    typical: [0, 100e-3],
    digits: 2,
    help: 'What the change from receive to transmit takes itself.',
    source: custom,
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
    source: custom,
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
    source: custom,
  }),
  battery: choice({
    label: 'Battery',
    options: titles(batteries),
    default: 'lead',
    help: 'How much of it may be used, how much a strong current leaves in it, and how its volts fall.',
  }),
  cells: count({
    label: 'Cells in series',
    symbol: 'n_c0',
    range: [1, 40],
    default: null,
    help: 'Left blank: as many as come nearest to the rig’s supply.',
  }),
  capacity: quantity({
    label: 'Capacity printed on it',
    symbol: 'C_bat',
    unit: 'Ah',
    range: [0.1 * 3600, 500 * 3600],
    default: 7 * 3600,
    typical: [2 * 3600, 20 * 3600],
    digits: 2,
    help: 'Of one string of cells; strings side by side add up.',
    source: custom,
  }),
  fuseKind: choice({
    label: 'Fuse',
    options: titles(fuses),
    default: 'glass',
    help: 'Which steps its currents come in.',
    source: 'IEC 60127; ISO 8820-3',
  }),
  fuseRoom: quantity({
    label: 'Fuse over the steady current',
    symbol: 'k_F',
    unit: '1',
    range: [1, 4],
    default: 1.5,
    typical: [1.25, 1.5],
    digits: 3,
    help: 'A fuse that is always near its rating ages and blows on a warm day.',
    source: custom,
  }),
  lead: choice({
    label: 'Leads to the supply',
    options: titles(leads),
    default: 'mm15',
    help: 'Each of the two.',
    source: 'IEC 60228; ASTM B258',
  }),
  leadLength: quantity({
    label: 'Length of the leads',
    symbol: 'l_s',
    unit: 'm',
    range: [0.05, 50],
    default: 1.5,
    typical: [0.5, 5],
    digits: 2,
    help: 'One way: the current goes there and back.',
    source: custom,
  }),
  dropAllowed: quantity({
    label: 'Voltage that they may lose',
    symbol: 'd_V',
    unit: '%',
    range: [0.001, 0.2],
    default: 0.02,
    typical: [0.01, 0.05],
    digits: 2,
    help: 'Of the supply. Two per cent of the volts are four of the watts.',
    source: custom,
  }),
} as const;
