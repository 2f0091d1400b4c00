import { quantity } from '../../fields/declare.ts';

/** What the carrier makes of the diodes, and what of it comes through. */
export const modulatorResults = {
  modulatorKnee: quantity({
    label: 'Carrier voltage that switches a diode',
    symbol: 'U_on',
    unit: 'V',
    digits: 2,
    help: 'Its own knee, less what the rectified carrier leaves as a bias.',
  }),
  modulatorOn: quantity({
    label: 'Resistance of a conducting diode',
    symbol: 'r_D',
    unit: 'Ω',
    digits: 2,
    help: 'At the mean current that the carrier drives through it.',
  }),
  modulatorIdeal: quantity({
    label: 'Loss of a perfect switch',
    symbol: 'L_ideal',
    unit: 'dB',
    digits: 3,
    help: 'Audio to one sideband: 3.92 dB where the audio is reversed, 9.94 dB where it is switched on and off.',
  }),
  modulatorLoss: quantity({
    label: 'Modulator’s conversion loss',
    symbol: 'L_mod',
    unit: 'dB',
    digits: 3,
    help: 'Audio to one sideband: the perfect switch, the time before the diodes conduct, their resistance, and the transformer.',
  }),
  modulatorMargin: quantity({
    label: 'Carrier over audio',
    symbol: 'D_LO',
    unit: 'dB',
    digits: 3,
    help: 'The carrier has to do the switching: 10 dB at least, else the voice switches too, and splatters.',
    source: 'common practice, no source',
  }),
  nullInPhase: quantity({
    label: 'Carrier left in phase',
    symbol: 'U_ph',
    unit: 'V',
    digits: 2,
    help: 'Peak voltage at the output that the trimmer’s step leaves, or the diodes beyond its reach.',
  }),
  nullQuadrature: quantity({
    label: 'Carrier left at a right angle',
    symbol: 'U_qu',
    unit: 'V',
    digits: 2,
    help: 'Peak voltage at the output by unequal capacitances.',
  }),
  nullReach: quantity({
    label: 'Trimmer takes out up to',
    symbol: 'dV_max',
    unit: 'V',
    digits: 2,
    help: 'Difference of the diodes’ forward voltages.',
  }),
  modulatorBalance: quantity({
    label: 'Balance that these parts reach',
    symbol: 'A_parts',
    unit: 'dB',
    digits: 3,
    help: 'From the carrier’s drive down to what is left of it at the output.',
  }),
  modulatorNull: quantity({
    label: 'Modulator’s null',
    symbol: 'A_null',
    unit: 'dB',
    digits: 3,
    help: 'How far the carrier that is left lies below one sideband at full speech, at the modulator’s output.',
  }),
} as const;
