import { choice, count, pasted, quantity } from '../../fields/declare.ts';
import { formers } from './former.ts';

const ferrites: Readonly<Record<string, string>> = {
  auto: 'The smallest that suffices',
  ...Object.fromEntries(formers.map(({ key, title }) => [key, title])),
};

/** What the user may say of the windings. */
export const windingsInputs = {
  testCapacitor: quantity({
    label: 'Known capacitor for the test',
    symbol: 'C_t',
    unit: 'F',
    range: [10e-12, 10e-9],
    default: 100e-12,
    typical: [47e-12, 470e-12],
    digits: 3,
    help: 'Across the coil: where the two resonate, on a dip meter or an analyser’s loop, is as good as an inductance meter, and at the frequency of use.',
    source: 'common practice, no source',
  }),
  reactanceTimes: quantity({
    label: 'Winding’s impedance over the circuit’s',
    symbol: 'k_X',
    unit: '1',
    range: [1, 20],
    default: 4,
    typical: [4, 5],
    digits: 2,
    help: 'At the operating frequency. Four times costs 0.07 dB, twice 0.26 dB; once the rule is met more turns buy nothing.',
    source: 'common practice; loss by closed form',
  }),
  transformerCore: choice({
    label: 'Core of output transformer and choke',
    options: ferrites,
    default: 'auto',
    help: 'Mix 61 loses least; mix 43 needs fewer turns and gets warmer: the sheet reckons both.',
  }),
  modulatorCore: choice({
    label: 'Core of the small transformers',
    options: ferrites,
    default: 'auto',
    help: 'Of the modulator, between the stages, and of the small chokes. A small toroid of mix 43 will do; below 5 MHz and at high impedances mix 77 or a core with two holes saves turns.',
  }),
  modulatorTurns: count({
    label: 'Turns of the modulator’s transformer',
    range: [1, 40],
    default: null,
    help: 'Of each of its three windings. Left blank, as many as the rule asks for.',
  }),
  chokeFeed: quantity({
    label: 'Current through the supply choke',
    symbol: 'I_feed',
    unit: 'A',
    range: [1e-3, 5],
    default: 0.15,
    typical: [0.05, 0.3],
    digits: 2,
    help: 'What driver and small stages draw on transmit, with room.',
    source: 'common practice, no source',
  }),
  chokesAtHand: pasted({
    label: 'Chokes at hand',
    longest: 20_000,
    help: 'One a line: inductance, greatest current, self-resonance, each with its unit, as in 10 µH 0.5 A 36 MHz. They are taken before any other.',
  }),
} as const;
