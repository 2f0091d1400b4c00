import { choice, declare, quantity, table, words } from '../../fields/declare.ts';
import { supplyInputs } from './inputs.ts';

const amps = (label: string, symbol: string, help: string) =>
  quantity({ label, symbol, unit: 'A', digits: 3, help });

/** Currents by stage and state, the battery's hours, fuse and leads. */
export const supplyFields = declare({
  key: 'supply',
  title: 'Supply',
  asks: 'What does the rig draw, how long does the battery last, which fuse and leads?',
  inputs: supplyInputs,
  results: {
    budget: table({
      label: 'Current by stage',
      help: 'Measure each stage in its own lead before it joins the others.',
      columns: {
        stage: words({ label: 'Stage', help: 'Of the rig.' }),
        listening: amps('Listening', 'I_1', 'At comfortable loudness.'),
        quiet: amps('Transmit, silent', 'I_2', 'The key down, nobody speaks.'),
        speech: amps('Speaking', 'I_3', 'Averaged over speech with its pauses.'),
        tone: amps('Steady tone', 'I_4', 'At full power, as in a test.'),
      },
    }),
    listening: amps('Listening', 'I_rx', 'All stages together.'),
    quiet: amps('Transmit, silent', 'I_q', 'All stages together.'),
    speech: amps('Speaking', 'I_sp', 'All stages together, averaged over speech.'),
    tone: amps('Steady tone', 'I_t', 'All stages together: the most that is drawn for long.'),
    power: quantity({
      label: 'Power from the supply',
      symbol: 'P_dc',
      unit: 'W',
      digits: 3,
      help: 'With a steady tone at full power.',
    }),
    mean: amps('Mean current', 'I_m', 'Over listening and speaking.'),
    hours: quantity({
      label: 'Battery lasts',
      symbol: 't_bat',
      unit: 'h',
      digits: 2,
      help: 'To where it should not be drawn further, when it is new and warm. In frost and with age much less.',
    }),
    endVoltage: quantity({
      label: 'Voltage at the end',
      symbol: 'V_end',
      unit: 'V',
      digits: 3,
      help: 'Where to stop.',
    }),
    endPower: quantity({
      label: 'Power at the end',
      symbol: 'P_end',
      unit: 'W',
      digits: 2,
      help: 'Of the power planned: it goes with the square of the volts.',
    }),
    fuse: quantity({
      label: 'Fuse',
      symbol: 'I_F',
      unit: 'A',
      digits: 3,
      help: 'The next rating with a quarter of room, slow, at the battery’s terminal.',
    }),
    limit: amps(
      'Current limit for the first minute',
      'I_lim',
      'Of a bench supply, the final without bias: twice what the receiver draws.',
    ),
    leadDrop: quantity({
      label: 'Lost in the leads',
      symbol: 'V_l',
      unit: 'V',
      digits: 2,
      help: 'Both leads, with a steady tone.',
    }),
    leadShare: quantity({
      label: 'Of the supply',
      symbol: 's_l',
      unit: '%',
      digits: 2,
      help: 'Against what they may lose.',
    }),
    leadOutcome: choice({
      label: 'Leads',
      options: { holds: 'thick enough', close: 'warm', fails: 'too thin' },
      help: 'For the drop allowed, and for the fuse: leads must bear what the fuse lets through.',
    }),
    leadWords: words({ label: 'Leads that would do', help: 'The thinnest of the list.' }),
  },
});
