import { choice, count, curve, declare, quantity, table, words } from '../../fields/declare.ts';
import { supplyInputs } from './inputs.ts';

const amps = (label: string, symbol: string, help: string) =>
  quantity({ label, symbol, unit: 'A', digits: 3, help });

const outcomes = { holds: 'thick enough', close: 'warm', fails: 'too thin' } as const;

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
        receiving: amps('Volume down', 'I_1', 'On receive, nothing to be heard.'),
        listening: amps('Listening', 'I_2', 'At comfortable loudness.'),
        silent: amps('Transmit, silent', 'I_3', 'The key down, nobody speaks.'),
        speech: amps('Speaking', 'I_4', 'Averaged over speech.'),
        tone: amps('Steady tone', 'I_5', 'At full power; every speech peak draws as much.'),
      },
    }),
    states: table({
      label: 'State by state',
      help: 'What all stages draw together, and which of them takes most.',
      columns: {
        state: words({ label: 'State', help: 'What the rig is doing.' }),
        current: amps('Current', 'I_all', 'All stages together.'),
        power: quantity({
          label: 'From the supply',
          symbol: 'P_all',
          unit: 'W',
          digits: 3,
          help: 'Volts times amperes.',
        }),
        most: words({ label: 'Most of it', help: 'The stage that takes the largest part.' }),
        share: quantity({
          label: 'Its part',
          symbol: 's_most',
          unit: '%',
          digits: 2,
          help: 'Of the current in this state.',
        }),
      },
    }),
    receiving: amps('Receive, volume down', 'I_rx', 'All stages together: the first to measure.'),
    listening: amps('Listening', 'I_ls', 'All stages together, at comfortable loudness.'),
    silent: amps('Transmit, silent', 'I_q_all', 'All stages together.'),
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
    strung: count({
      label: 'Cells in series, reckoned with',
      symbol: 'n_c',
      help: 'As typed, or those that come nearest to the supply.',
    }),
    fullVoltage: quantity({
      label: 'Battery, full',
      symbol: 'V_full',
      unit: 'V',
      digits: 3,
      help: 'At a weak current, some time after the charger.',
    }),
    endVoltage: quantity({
      label: 'Battery, where to stop',
      symbol: 'V_end',
      unit: 'V',
      digits: 3,
      help: 'While listening. When transmitting the meter shows less: read it on receive.',
    }),
    endPower: quantity({
      label: 'PEP at the end',
      symbol: 'P_end',
      unit: 'W',
      digits: 2,
      help: 'What the final still gives without clipping: it goes with the square of the volts.',
    }),
    endLoss: quantity({
      label: 'Against the plan',
      symbol: 'L_end',
      unit: 'dB',
      digits: 2,
      help: 'Against the power planned. A listener notices three decibels.',
    }),
    discharge: curve({
      label: 'Volts and watts as the battery empties',
      help: 'With the mean current, from full to nothing left.',
      along: 'time',
      of: {
        time: quantity({ label: 'Time', symbol: 't', unit: 'h', digits: 3, help: 'From full.' }),
        voltage: quantity({
          label: 'Battery',
          symbol: 'V_b',
          unit: 'V',
          digits: 4,
          help: 'While listening.',
        }),
        power: quantity({
          label: 'PEP then',
          symbol: 'P_b',
          unit: 'W',
          digits: 3,
          help: 'Without clipping.',
        }),
      },
    }),
    short: amps(
      'Into a short at the rig',
      'I_sc',
      'What a full battery drives through its own resistance, the fuse and the leads.',
    ),
    fuseNeed: amps('Fuse at least', 'I_F0', 'The steady current with the room asked for.'),
    fuse: quantity({
      label: 'Fuse',
      symbol: 'I_F',
      unit: 'A',
      digits: 3,
      help: 'The next that is made, at the battery’s terminal.',
    }),
    limit: amps(
      'Supply’s limit at first switch-on',
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
      options: outcomes,
      help: 'For the drop allowed, and for the fuse: leads must bear what the fuse lets through.',
    }),
    leadWords: words({ label: 'Leads that would do', help: 'The thinnest of the list.' }),
    leadRows: table({
      label: 'Leads to choose from',
      help: 'Each over the length asked for, with a steady tone.',
      columns: {
        lead: words({ label: 'Lead', help: 'Section or gauge.' }),
        area: quantity({
          label: 'Section',
          symbol: 'A_w',
          unit: 'm²',
          digits: 3,
          help: 'Of the copper.',
          source: 'IEC 60228; ASTM B258',
        }),
        drop: quantity({
          label: 'Loses',
          symbol: 'V_w',
          unit: 'V',
          digits: 2,
          help: 'There and back.',
        }),
        share: quantity({
          label: 'Of the supply',
          symbol: 's_w',
          unit: '%',
          digits: 2,
          help: 'Against what is allowed.',
        }),
        bears: amps('Bears', 'I_z', 'Before it gets warm, free in air.'),
        outcome: choice({
          label: 'Verdict',
          options: outcomes,
          help: 'For the drop allowed and for the fuse.',
        }),
      },
    }),
  },
});
