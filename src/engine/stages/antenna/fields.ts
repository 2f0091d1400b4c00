import { choice, curve, declare, model, quantity, words } from '../../fields/declare.ts';
import type { Antenna } from '../../waves/antennaGain.ts';
import { antennaInputs } from './inputs.ts';

const decibels = (label: string, symbol: string, help: string) =>
  quantity({ label, symbol, unit: 'dBi', digits: 3, help });

/** The antenna of the station: where it sends the power, and how much of it. */
export const antennaFields = declare({
  key: 'antenna',
  title: 'Antenna',
  asks: 'Where does the antenna send the power, and how much of it?',
  inputs: antennaInputs,
  results: {
    over: quantity({
      label: 'Height in wavelengths',
      symbol: 'h_l',
      unit: '1',
      digits: 2,
      help: 'Below a quarter nearly all goes up; from a half on, low angles come in.',
    }),
    radiation: quantity({
      label: 'Radiation resistance',
      symbol: 'R_rad',
      unit: 'Ω',
      digits: 3,
      help: 'What turns current into waves. Of a level wire it swings with height.',
    }),
    losses: quantity({
      label: 'Loss resistance',
      symbol: 'R_loss',
      unit: 'Ω',
      digits: 2,
      help: 'Ground and coil, where the current is that feeds the antenna.',
    }),
    efficiency: quantity({
      label: 'Efficiency',
      symbol: 'eta',
      unit: '%',
      digits: 2,
      help: 'Share of the power that becomes waves. The ground further out takes its share by the pattern.',
    }),
    along: decibels(
      'Gain along perfect ground',
      'G_g',
      'For the ground wave: what the ground itself takes is counted in the path.',
    ),
    free: decibels(
      'Gain without any ground',
      'G_free',
      'For the line of sight, where the ground’s ray is counted in the path.',
    ),
    best: decibels('Greatest gain', 'G_max', 'Over this ground, in the direction chosen.'),
    bestAt: quantity({
      label: 'At an elevation of',
      symbol: 'beta_max',
      unit: '°',
      digits: 2,
      help: 'Over the horizon.',
    }),
    nature: words({
      label: 'What it is good for',
      help: 'Steep rays come down nearby, flat ones far away.',
    }),
    good: choice({
      label: 'Suits',
      options: { near: 'near stations', both: 'near and far', far: 'far stations' },
      help: 'By the gain at 60° and at 15°.',
    }),
    pattern: curve({
      label: 'Gain over elevation',
      help: 'Over this ground, in the direction chosen.',
      along: 'elevation',
      of: {
        elevation: quantity({
          label: 'Elevation',
          symbol: 'psi',
          unit: '°',
          digits: 3,
          help: 'Over the horizon.',
        }),
        gain: decibels('Gain', 'G', 'Against an isotropic antenna.'),
      },
    }),
    made: model<Antenna>()({ label: 'The antenna', help: 'What its gain follows from.' }),
  },
});
