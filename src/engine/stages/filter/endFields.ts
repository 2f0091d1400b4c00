import { quantity } from '../../fields/declare.ts';

/** What the ends amount to, and what leaks from one to the other. */
export const endResults = {
  sourceParallelR: quantity({
    label: 'Source, as resistance',
    symbol: 'R_Sp',
    unit: 'Ω',
    digits: 3,
    help: 'Of the resistance and reactance side by side that amount to the same at the middle of the passband.',
  }),
  sourceParallelC: quantity({
    label: 'with a capacitor across it',
    symbol: 'C_Sp',
    unit: 'F',
    digits: 3,
    help: 'Where the reactance is that of a capacitor.',
  }),
  sourceParallelL: quantity({
    label: 'with a coil across it',
    symbol: 'L_Sp',
    unit: 'H',
    digits: 3,
    help: 'Where the reactance is that of a coil.',
  }),
  loadParallelR: quantity({
    label: 'Load, as resistance',
    symbol: 'R_Lp',
    unit: 'Ω',
    digits: 3,
    help: 'Of the resistance and reactance side by side that amount to the same at the middle of the passband.',
  }),
  loadParallelC: quantity({
    label: 'with a capacitor across it',
    symbol: 'C_Lp',
    unit: 'F',
    digits: 3,
    help: 'Where the reactance is that of a capacitor.',
  }),
  loadParallelL: quantity({
    label: 'with a coil across it',
    symbol: 'L_Lp',
    unit: 'H',
    digits: 3,
    help: 'Where the reactance is that of a coil.',
  }),
  leakageFound: quantity({
    label: 'Leakage past the filter',
    symbol: 'C_past',
    unit: 'F',
    digits: 3,
    help: 'As a capacitance from input to output.',
  }),
  floor: quantity({
    label: 'Floor of the stopband',
    symbol: 'A_floor',
    unit: 'dB',
    digits: 2,
    help: 'How far below the passband the stopband can get, whatever the crystals do. 60 dB is enough for transmitting; a receiver wants 80.',
  }),
};
