import type { CoupledCircuits } from '../../circuit/coupledCircuits.ts';
import { choice, curve, declare, model, quantity, table, words } from '../../fields/declare.ts';
import { frontInputs } from './inputs.ts';

const farads = (label: string, symbol: string, help: string) =>
  quantity({ label, symbol, unit: 'F', digits: 3, help });
const decibels = (label: string, symbol: string, help: string) =>
  quantity({ label, symbol, unit: 'dB', digits: 2, help });

/** The band-pass that parts the wanted product of the mixer from the others. */
export const frontFields = declare({
  key: 'front',
  title: 'Band-pass',
  asks: 'Are image, oscillator and leftovers of the mixer kept out?',
  inputs: frontInputs,
  results: {
    width: quantity({
      label: 'Width designed for',
      symbol: 'B',
      unit: 'Hz',
      digits: 3,
      help: 'Between the −3 dB points, without loss.',
    }),
    coil: quantity({ label: 'Coil', symbol: 'L', unit: 'H', digits: 3, help: 'Of each circuit.' }),
    loadedQ: quantity({
      label: 'Loaded Q of the end circuits',
      symbol: 'Q_e',
      unit: '1',
      digits: 3,
      help: 'With ends and losses.',
    }),
    coupleExact: farads('Coupling wanted', 'C_kx', 'Between the tops of two circuits.'),
    couple: farads('Coupling fitted', 'C_k', 'From top to top.'),
    feedExact: farads('Way in wanted', 'C_fx', 'From the end to the top of its circuit.'),
    feed: farads('Way in fitted', 'C_f', 'From the end to the top of its circuit.'),
    endC: farads('Capacitor of the end circuits', 'C_e', 'With its trimmer, across the coil.'),
    middleC: farads('Capacitor of the middle circuit', 'C_m', 'Where there are three.'),
    loss: decibels('Loss at the operating frequency', 'A_bp', 'Of the circuits, with their coils.'),
    response: curve({
      label: 'Response of the band-pass',
      help: 'Power delivered, against the operating frequency.',
      along: 'frequency',
      of: {
        frequency: quantity({
          label: 'Frequency',
          symbol: 'f',
          unit: 'Hz',
          digits: 4,
          help: 'Of the signal.',
        }),
        level: decibels('Level', 'A', 'Against the operating frequency.'),
      },
    }),
    leftovers: table({
      label: 'What is left behind it',
      help: 'Each unwanted signal at the mixer’s output, and behind the band-pass, against the wanted one.',
      columns: {
        what: words({ label: 'Signal', help: 'Where it comes from.' }),
        frequency: quantity({
          label: 'Frequency',
          symbol: 'f_u',
          unit: 'Hz',
          digits: 5,
          help: 'Of this signal.',
        }),
        before: decibels('At the mixer', 'A_0', 'Against the wanted signal.'),
        taken: decibels('Taken off', 'A_t', 'By the band-pass, against the operating frequency.'),
        left: decibels('Left', 'A_left', 'Against the wanted signal.'),
        outcome: choice({
          label: 'Outcome',
          options: { holds: 'holds', close: 'close', fails: 'fails' },
          help: 'Against what is wanted; close within 6 dB of it.',
        }),
      },
    }),
    imageRejection: decibels(
      'Image down by',
      'A_im',
      'In the receiver: how much weaker a station on the image is heard.',
    ),
    halfwayRejection: decibels(
      'Half-way point down by',
      'A_half',
      'In the receiver. What is left counts twice: the product goes with its square.',
    ),
    network: model<CoupledCircuits>()({
      label: 'The band-pass as built',
      help: 'For the products of the next leaf.',
    }),
  },
});
