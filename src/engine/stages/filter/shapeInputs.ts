import { choice, count, quantity } from '../../fields/declare.ts';

/** What is asked for: how many crystals, how wide, which family. */
export const shapeInputs = {
  crystals: count({
    label: 'Crystals',
    symbol: 'n',
    range: [2, 12],
    default: 6,
    help: 'More crystals make steeper skirts and more loss. Four to eight are usual for speech. With doubled ends this counts positions.',
  }),
  bandwidth: quantity({
    label: 'Bandwidth wanted',
    symbol: 'B',
    unit: 'Hz',
    range: [50, 50_000],
    default: 2400,
    typical: [1800, 3000],
    digits: 4,
    help: 'Between the −3 dB points, losses of the crystals included. Speech: 1.8 to 2 kHz narrow, 2.3 to 2.5 usual, 3 wide.',
  }),
  family: choice({
    label: 'Family',
    options: {
      butterworth: 'Butterworth, flat',
      chebyshev: 'Chebyshev, equal ripple',
      bessel: 'Bessel, flattest delay',
      linear005: 'Linear phase, 0.05°',
      linear05: 'Linear phase, 0.5°',
      gaussian: 'Gaussian to 6 dB',
      equal: 'Equal capacitors, least loss',
      doubled: 'Equal capacitors, ends doubled',
    },
    default: 'chebyshev',
    help: 'Equal ripple is steepest; flat rings less; Bessel, linear phase and Gaussian hardly ring and fall gently. Equal capacitors ask for one value only; two crystals side by side at each end take away most of their dips.',
  }),
  form: choice({
    label: 'Crystals stand',
    options: {
      series: 'in series, in the signal’s way',
      shunt: 'to ground, from each node',
    },
    default: 'series',
    help: 'In series the skirt is steeper above the passband, where lower sideband has its carrier; to ground it is steeper below, for upper sideband.',
  }),
  across: quantity({
    label: 'Capacitor across each crystal',
    symbol: 'C_across',
    unit: 'F',
    range: [0, 1e-9],
    default: null,
    typical: [0, 47e-12],
    digits: 3,
    help: 'Only with crystals to ground. More of it makes the coupling capacitors larger and the stopband shallower. Blank: as much as the width allows, a twentieth kept in hand.',
  }),
  ripple: quantity({
    label: 'Ripple',
    symbol: 'A_r',
    unit: 'dB',
    range: [0.001, 3],
    default: 0.1,
    typical: [0.01, 1],
    digits: 4,
    help: 'How far a Chebyshev response may dip between its peaks, were the crystals without loss.',
  }),
};
