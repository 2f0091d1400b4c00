import { cores } from '../../data/cores.ts';
import { wires } from '../../data/wires.ts';
import { choice, count, pasted, quantity } from '../../fields/declare.ts';

const iron = Object.fromEntries(
  cores.filter(({ mix }) => mix.kind === 'iron').map(({ key, title }) => [key, title]),
);

const length = (label: string, symbol: string, help: string) =>
  quantity({
    label,
    symbol,
    unit: 'm',
    range: [1e-3, 0.2],
    default: null,
    digits: 3,
    help,
    reading: true,
  });

const trialL = (label: string, symbol: string) =>
  quantity({
    label,
    symbol,
    unit: 'H',
    range: [1e-9, 1],
    default: null,
    digits: 3,
    help: 'Measured near the frequency of use, if the meter can: at audio frequencies many mislead.',
    reading: true,
  });

const trialN = (label: string) =>
  count({
    label,
    range: [1, 200],
    default: null,
    help: 'Passes through the hole.',
  });

/** What the user may say of cores and wire. */
export const coresInputs = {
  coilCore: choice({
    label: 'Core of the tuned coils',
    options: {
      auto: 'The smallest that suffices',
      box: 'The smallest of my box that suffices',
      air: 'None: they are wound on air',
      ...iron,
    } as Readonly<Record<string, string>>,
    default: 'auto',
    help: 'Powdered iron: red (mix 2) up to 10 MHz, yellow (mix 6) above. Ferrite in its place gets hot, and the watts are gone.',
  }),
  wire: choice({
    label: 'Wire',
    options: {
      metric: 'Thickest metric that fits',
      awg: 'Thickest AWG that fits',
      metricRoom: 'Metric, with room to squeeze',
      awgRoom: 'AWG, with room to squeeze',
      ...Object.fromEntries(wires.map(({ title }) => [title, title])),
    } as Readonly<Record<string, string>>,
    default: 'metric',
    help: 'Enamelled copper. Thicker wire has a better Q, until it no longer fits in one layer; turns that fill the core can’t be squeezed to trim them.',
  }),
  tail: quantity({
    label: 'Tail at each end',
    symbol: 'l_t',
    unit: 'm',
    range: [0, 0.5],
    default: 0.04,
    typical: [0.02, 0.08],
    digits: 2,
    help: 'Left over for soldering.',
    source: 'common practice, no source',
  }),
  former: quantity({
    label: 'Former of air-core coils',
    symbol: 'D_f',
    unit: 'm',
    range: [2e-3, 0.2],
    default: 10e-3,
    digits: 3,
    help: 'A drill’s shank for a free-standing coil, a tube, a syringe.',
    source: 'common practice, no source',
  }),
  airWire: quantity({
    label: 'Their wire',
    symbol: 'd_a',
    unit: 'm',
    range: [0.1e-3, 5e-3],
    default: 1e-3,
    digits: 2,
    help: 'Copper; stiff enough to stand by itself from 0.8 mm.',
    source: 'common practice, no source',
  }),
  airPitch: quantity({
    label: 'Spacing over the wire',
    symbol: 'p_a',
    unit: '1',
    range: [1.05, 5],
    default: 1.5,
    digits: 2,
    help: 'From middle to middle. Close turns waste Q, wide ones need more of them.',
    source: 'common practice, no source',
  }),
  box: pasted({
    label: 'My core box',
    longest: 4000,
    help: 'A line for each kind: “T50-2 x5”, “FT37-43 3”, or an unknown one as “ring OD 12.7 ID 7.7 h 4.8 AL 4.9n”, its dimensions in millimetres.',
  }),
  turns1: trialN('First trial, turns'),
  trial1: trialL('First trial, inductance', 'L_1'),
  turns2: trialN('Second trial, turns'),
  trial2: trialL('Second trial, inductance', 'L_2'),
  outer: length('Its outer diameter', 'D_a', 'Callipers will do.'),
  inner: length('Diameter of its hole', 'D_i', 'Callipers will do.'),
  height: length('Its height', 'h_c', 'Callipers will do.'),
} as const;
