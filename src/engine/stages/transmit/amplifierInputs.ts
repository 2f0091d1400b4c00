import { choice, quantity } from '../../fields/declare.ts';
import { smallTransistors } from './transistorOptions.ts';

/** The two-way amplifier on both sides of the filter. */
export const amplifierInputs = {
  amplifierDevice: choice({
    label: 'Transistors beside the filter',
    options: smallTransistors,
    default: 'n2222',
    help: 'The two amplifiers round the filter are alike, and work both ways.',
  }),
  amplifierCurrent: quantity({
    label: 'Standing current',
    symbol: 'I_E',
    unit: 'A',
    range: [5e-4, 0.1],
    default: 8e-3,
    typical: [4e-3, 20e-3],
    digits: 2,
    help: 'Emitter current of each. Its peak signal current can’t be more.',
  }),
  amplifierEmitter: quantity({
    label: 'Emitter resistor without capacitor',
    symbol: 'R_E',
    unit: 'Ω',
    range: [0, 1000],
    default: 22,
    typical: [5, 50],
    digits: 2,
    help: 'It gives up gain for steadiness: less distortion, less dependence on the transistor.',
  }),
  amplifierFeedback: quantity({
    label: 'Feedback resistor',
    symbol: 'R_F',
    unit: 'Ω',
    range: [100, 100e3],
    default: 1500,
    typical: [500, 5000],
    digits: 2,
    help: 'From collector to base for the signal. With the emitter resistor it sets gain and both impedances.',
  }),
  amplifierLoad: quantity({
    label: 'Load at the collector',
    symbol: 'R_L',
    unit: 'Ω',
    range: [20, 5000],
    default: 200,
    typical: [50, 500],
    digits: 2,
    help: 'What the transformer at the collector makes of the filter or of the next stage: the amplifier’s natural impedance.',
  }),
  filterDrive: quantity({
    label: 'Power the crystals take',
    symbol: 'P_xtal',
    unit: 'W',
    range: [1e-6, 0.1],
    default: 1e-3,
    typical: [1e-4, 2e-3],
    digits: 2,
    help: 'The drive level that crystals bear before they shift and distort.',
    source: 'makers’ data sheets, from memory',
  }),
} as const;
