import { choice, declare, quantity, words } from '../../fields/declare.ts';
import { benchInputs } from './inputs.ts';
import { readingTable } from './readingTable.ts';

const outcomes = { holds: 'holds', close: 'close', fails: 'fails' } as const;

/** The finished rig against its design: what each meter should show, what it shows, and what a miss means. */
export const benchFields = declare({
  key: 'bench',
  title: 'Bench',
  asks: 'What should each meter show, and what if it does not?',
  inputs: benchInputs,
  results: {
    supplies: readingTable('V', 'Direct voltages', 3),
    currents: readingTable('A', 'Direct currents', 3),
    frequencies: readingTable('Hz', 'Frequencies', 7),
    widths: readingTable('Hz', 'Widths', 4),
    volts: readingTable('Vpp', 'Signal voltages', 3),
    powers: readingTable('W', 'Powers', 3),
    levels: readingTable('dB', 'Losses and suppressions', 3),
    harmonics: readingTable('dBc', 'Harmonics', 3),
    overall: choice({
      label: 'All readings',
      options: outcomes,
      help: 'The worst of all verdicts, expectation and rule. Blank until something is measured.',
    }),
    summary: words({ label: 'So far', help: 'How many readings hold, are close, fail, are open.' }),
    directPower: quantity({
      label: 'Direct power in',
      symbol: 'P_in',
      unit: 'W',
      digits: 3,
      help: 'Supply voltage times current at full power: the final’s where it was read, else the whole transmitter’s.',
    }),
    dcRatio: quantity({
      label: 'Radio power out over direct power in',
      symbol: 'eta_read',
      unit: '%',
      digits: 3,
      help: 'A check on the power reading itself: built stages in class AB or B lie at 40 to 60 %.',
      source: 'common practice, no source',
    }),
    dcCeiling: quantity({
      label: 'The most there can be',
      symbol: 'eta_max',
      unit: '%',
      digits: 3,
      help: 'Of class B at this supply and saturation: π/4 of what saturation leaves.',
    }),
    dcVerdict: choice({
      label: 'Is the power reading believable?',
      options: outcomes,
      help: 'Over 70 %: the power is read wrong. Under 30 %: mismatch, loss or oscillation.',
    }),
    dcMeans: words({ label: 'What that means', help: 'And where to look.' }),
    riseMeans: words({
      label: 'What the rise of noise says',
      help: 'The rise that was read against the one to expect here.',
    }),
    noiseFigureRead: quantity({
      label: 'Noise figure that would fit',
      symbol: 'NF_read',
      unit: 'dB',
      digits: 2,
      help: 'If the place is as noisy as its kind is in the middle. Blank where none would.',
    }),
    moreLoss: quantity({
      label: 'Loss that would explain it',
      symbol: 'L_more',
      unit: 'dB',
      digits: 2,
      help: 'Before the first amplifier, beyond what the design has; negative where the receiver seems better than designed.',
    }),
    outputVpp: quantity({
      label: 'Output measured, as voltage',
      symbol: 'V_out',
      unit: 'Vpp',
      digits: 3,
      help: 'The power read, as an oscilloscope shows it across this dummy load.',
    }),
    outputLevel: quantity({
      label: 'Output measured, as level',
      symbol: 'L_out',
      unit: 'dBm',
      digits: 3,
      help: 'The power read, against one milliwatt.',
    }),
    scopeShows: quantity({
      label: 'Share that the oscilloscope shows',
      symbol: 's_osc',
      unit: '%',
      digits: 3,
      help: 'Of a voltage at the operating frequency, by the bandwidth of oscilloscope and probe.',
    }),
    scopeLoss: quantity({
      label: 'The same in decibels',
      symbol: 'a_osc',
      unit: 'dB',
      digits: 3,
      help: 'The power read from the screen is too low by this much.',
    }),
    cautions: words({
      label: 'Before you switch on',
      help: 'Traps of the instruments and dangers of the work.',
    }),
  },
});
