import { choice, quantity, table, words } from '../../fields/declare.ts';
import type { Unit } from '../../quantity/units.ts';
import { ways } from './sideInputs.ts';

const figure = <const U extends Unit>(
  unit: U,
  label: string,
  symbol: string,
  digits: number,
  help: string,
) => quantity({ label, symbol, unit, digits, help });

const waysTable = (label: string) =>
  table({
    label,
    help: 'Each way from what stands there to what the filter wants.',
    columns: {
      way: choice({ label: 'Way', options: ways, help: 'How it is matched.' }),
      turns: words({
        label: 'Turns',
        help: 'On the amplifier’s side to the filter’s side, in the smallest whole numbers within 4 %.',
      }),
      l: figure('H', 'Coil', 'L', 3, 'Of the L network.'),
      c: figure('F', 'Capacitor', 'C', 3, 'Of the L network.'),
      series: figure('Ω', 'Series resistor', 'R_1', 3, 'In line.'),
      shunt: figure('Ω', 'Resistor across', 'R_2', 3, 'To ground.'),
      q: figure('1', 'Q', 'Q', 2, 'Of the L network.'),
      band: figure('Hz', 'Good to 0.1 dB over', 'B', 2, 'At least.'),
      loss: figure('dB', 'Loss', 'A', 3, 'What the resistors take.'),
      seen: figure('Ω', 'Filter sees', 'R', 3, 'Resistance, as it then is.'),
      seenX: figure('Ω', 'and in series', 'X', 3, 'Reactance, as it then is.'),
    },
  });

/** What stands before and behind, and the ways to match it. */
export const sideResults = {
  sourceGives: figure('Ω', 'What stands before the filter', 'R_sg', 3, 'Its output resistance.'),
  sourceGivesX: figure('Ω', 'Reactance with it', 'X_sg', 3, 'In series.'),
  sourceCoil: figure('H', 'Coil across it', 'L_sg', 3, 'Tunes its capacitance out.'),
  sourceWays: waysTable('From the amplifier before it'),
  sourceSeen: figure('Ω', 'The filter’s input sees', 'R_ss', 3, 'Through the matching chosen.'),
  sourceSeenX: figure('Ω', 'Reactance there', 'X_ss', 3, 'In series.'),
  sourceLoss: figure('dB', 'Loss of the matching before it', 'A_sm', 3, 'In its resistors.'),
  sourceAdvice: words({ label: 'Before the filter', help: 'Which way suits, and why.' }),
  loadGives: figure('Ω', 'What stands behind the filter', 'R_lg', 3, 'Its input resistance.'),
  loadGivesX: figure('Ω', 'Reactance with it', 'X_lg', 3, 'In series.'),
  loadCoil: figure('H', 'Coil across it', 'L_lg', 3, 'Tunes its capacitance out.'),
  loadWays: waysTable('To the amplifier behind it'),
  loadSeen: figure('Ω', 'The filter’s output sees', 'R_ls', 3, 'Through the matching chosen.'),
  loadSeenX: figure('Ω', 'Reactance there', 'X_ls', 3, 'In series.'),
  loadLoss: figure('dB', 'Loss of the matching behind it', 'A_lm', 3, 'In its resistors.'),
  loadAdvice: words({ label: 'Behind the filter', help: 'Which way suits, and why.' }),
} as const;
