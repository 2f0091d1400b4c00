import { quantity } from '../../fields/declare.ts';

/** The microphone, and what is known of its amplifier. */
export const speechInputs = {
  micLevel: quantity({
    label: 'Microphone at normal speech',
    symbol: 'V_mic',
    unit: 'Vrms',
    range: [1e-4, 1],
    default: 5e-3,
    typical: [2e-3, 20e-3],
    digits: 2,
    help: 'What the microphone gives close to the mouth, at the loudest syllables. Dynamic: some 2 to 5 mV; electret: 5 to 20 mV.',
    source: 'common practice, no source',
  }),
  micInput: quantity({
    label: 'Load on the microphone, measured',
    symbol: 'R_mic0',
    unit: 'Ω',
    range: [50, 1e6],
    default: null,
    typical: [600, 10e3],
    digits: 2,
    help: 'The resistance that the microphone works into, if you know it. Left blank it is worked out from the amplifier’s parts.',
  }),
  micFitted: quantity({
    label: 'Gain of the amplifier that you have',
    symbol: 'A_fit',
    unit: 'dB',
    range: [-20, 80],
    default: null,
    typical: [20, 40],
    digits: 3,
    help: 'Voltage gain from microphone to modulator. Left blank, the gain that just makes the wanted power is used.',
  }),
  micCurrent: quantity({
    label: 'Follower’s standing current, measured',
    symbol: 'I_Em_fol',
    unit: 'A',
    range: [1e-4, 0.1],
    default: null,
    typical: [2e-3, 10e-3],
    digits: 2,
    help: 'Emitter current of the microphone amplifier’s last transistor, if you know it. Left blank it is worked out from the resistors.',
  }),
} as const;
