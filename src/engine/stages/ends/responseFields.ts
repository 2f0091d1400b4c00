import { choice, curve, quantity } from '../../fields/declare.ts';
import type { Unit } from '../../quantity/units.ts';

const figure = <const U extends Unit>(
  unit: U,
  label: string,
  symbol: string,
  digits: number,
  help: string,
) => quantity({ label, symbol, unit, digits, help });

/** The filter between the ends that it was designed for. */
const right = {
  rightRipple: figure('dB', 'Ripple, right ends', 'A_rip_r', 4, 'Deepest dip between two humps.'),
  rightLoss: figure('dB', 'Loss, right ends', 'A_r', 3, 'At the passband’s best point.'),
  rightWidth: figure('Hz', 'Width at −3 dB, right ends', 'B_r', 4, 'Between its edges.'),
  rightPeak: figure('Hz', 'Best point, right ends', 'f_r', 8, 'Where most comes through.'),
  rightLow: figure('Hz', 'Lower edge, right ends', 'f_rlo', 8, '3 dB under the best point.'),
  rightHigh: figure('Hz', 'Upper edge, right ends', 'f_rhi', 8, '3 dB under the best point.'),
} as const;

/** The same between what it really sees. */
const real = {
  realRipple: figure('dB', 'Ripple, real ends', 'A_rip_a', 4, 'Deepest dip between two humps.'),
  realLoss: figure('dB', 'Loss, real ends', 'A_a', 3, 'At the best point, mismatch in it.'),
  realWidth: figure('Hz', 'Width at −3 dB, real ends', 'B_a', 4, 'Between its edges.'),
  realPeak: figure('Hz', 'Best point, real ends', 'f_a', 8, 'Where most comes through.'),
  realLow: figure('Hz', 'Lower edge, real ends', 'f_alo', 8, '3 dB under the best point.'),
  realHigh: figure('Hz', 'Upper edge, real ends', 'f_ahi', 8, '3 dB under the best point.'),
} as const;

export const responseResults = {
  ...right,
  ...real,
  wholeLoss: figure(
    'dB',
    'Loss with the matching',
    'A_w',
    3,
    'From what the amplifier can give to what arrives behind, resistors in it.',
  ),
  rippleCost: figure('dB', 'Ripple that the ends cost', 'd_rip', 4, 'Real less right ends.'),
  lossCost: figure('dB', 'Loss that ends and matching cost', 'd_A', 3, 'Whole less right ends.'),
  verdict: choice({
    label: 'Do the ends do?',
    options: { holds: 'holds', close: 'close', fails: 'fails' },
    help: 'Up to 0.3 dB more ripple is not worth a soldering iron, more than 1 dB is heard.',
  }),
  rightResponse: curve({
    label: 'Response between right ends',
    help: 'The filter as fitted, between the resistances that it was designed for.',
    along: 'frequency',
    of: {
      frequency: figure('Hz', 'Frequency', 'f', 8, 'Radio frequency.'),
      gain: figure('dB', 'Gain', 'G_r', 3, 'Power in the load over the most to be had.'),
    },
  }),
  realResponse: curve({
    label: 'Response between real ends',
    help: 'The same filter between what it really sees.',
    along: 'frequency',
    of: {
      frequency: figure('Hz', 'Frequency', 'f', 8, 'Radio frequency.'),
      gain: figure('dB', 'Gain', 'G_a', 3, 'Power in the load over the most to be had.'),
    },
  }),
} as const;

/** Measuring it with an analyser of other ports. */
export const analyserResults = {
  trickSource: figure(
    'Ω',
    'Resistor at the input',
    'R_t1',
    3,
    'Between the analyser’s generator and the filter.',
  ),
  trickLoad: figure(
    'Ω',
    'Resistor at the output',
    'R_t2',
    3,
    'Between the filter and the analyser’s receiver.',
  ),
  trickRange: figure(
    'dB',
    'Range that the resistors cost',
    'A_t',
    3,
    'Both together: so much less arrives than with a match that loses nothing.',
  ),
  trickReading: figure(
    'dB',
    'Reading at the best point',
    'S_t',
    3,
    'What the analyser should show there, against a straight connection of its ports.',
  ),
  trickDepth: figure(
    'dB',
    'Skirts to be seen down to',
    'D_t',
    3,
    'Under the best point, before the analyser’s own noise.',
  ),
} as const;
