import type { GummelPoonCard } from '../../circuit/power/gummelPoonAt.ts';
import { choice, count, curve, model, quantity, table, words } from '../../fields/declare.ts';
import type { Arrangement } from './arrangement.ts';

/** What can be said of the final's surroundings without solving for its steady state. */
export const powerResults = {
  devices: count({
    label: 'Transistors in the final',
    symbol: 'n_tr',
    help: 'All of them: in parallel, and on both sides of a push-pull stage.',
  }),
  arrangement: model<Arrangement>()({
    label: 'How they stand together',
    help: 'Sides, transistors on each, and how unlike the sides are.',
  }),
  standingEach: quantity({
    label: 'Standing current of each',
    symbol: 'I_q1',
    unit: 'A',
    digits: 2,
    help: 'What each transistor draws without drive.',
  }),
  ballastStanding: quantity({
    label: 'Voltage over an emitter resistor, standing',
    symbol: 'V_b0',
    unit: 'V',
    digits: 2,
    help: 'What a meter shows there without drive: the easiest way to set the standing current.',
  }),
  ballastCrest: quantity({
    label: 'Voltage over an emitter resistor at the crest',
    symbol: 'V_b1',
    unit: 'Vpk',
    digits: 2,
    help: 'At the tip of the current pulse, by hand: the collector swings by so much less.',
  }),
  heatPath: quantity({
    label: 'Warming of a junction for each watt in it',
    symbol: 'R_th1',
    unit: 'K/W',
    digits: 2,
    help: 'Of one of the transistors, the others on the same heat sink just as warm.',
  }),
  drift: quantity({
    label: 'Warming that the bias does not follow',
    symbol: 'R_dr',
    unit: 'K/W',
    digits: 2,
    help: 'From junction to air, or to the heat sink that the bias diode sits on.',
  }),
  thermalLoop: quantity({
    label: 'Thermal loop at the standing current',
    symbol: 'k_th',
    unit: '1',
    digits: 2,
    help: 'Heat raises the current, current makes heat: below 1 it settles, at 1 and above the current runs away.',
  }),
  runawayCurrent: quantity({
    label: 'Current from which one runs away',
    symbol: 'I_run',
    unit: 'A',
    digits: 2,
    help: 'Standing current of each transistor beyond which it would not come back by itself after a long over. Blank: the emitter resistor holds it at any current.',
  }),
  ballastNeeded: quantity({
    label: 'Emitter resistor that holds it at any current',
    symbol: 'R_bal0',
    unit: 'Ω',
    digits: 2,
    help: 'For each transistor; less will do where the standing current stays far below the figure above.',
  }),
  steady: choice({
    label: 'Held against running away',
    options: { holds: 'holds', close: 'close', fails: 'fails' },
    help: 'Holds while the thermal loop stays below a half, close below 1.',
    source: 'common practice, no source',
  }),
  ballastAdvice: words({
    label: 'Will it run away?',
    help: 'What emitter resistor, bias and cooling together do as the final warms.',
  }),
  feedUsed: quantity({
    label: 'Inductance at a collector',
    symbol: 'L_f',
    unit: 'H',
    digits: 3,
    help: 'Of the choke or winding that feeds it, as the exact answer has it.',
  }),
  driverUsed: quantity({
    label: 'Inductance in series with the driver',
    symbol: 'L_d',
    unit: 'H',
    digits: 3,
    help: 'As the base sees it.',
  }),
  overSupply: curve({
    label: 'Power and efficiency over the supply, by hand',
    help: 'The same load on other supply voltages, driven as far as each allows: the exact answer stands beside it.',
    along: 'supply',
    of: {
      supply: quantity({
        label: 'Supply',
        symbol: 'V_s',
        unit: 'V',
        digits: 3,
        help: 'At the final: 9 to 15 V, or a quarter more and less than planned.',
      }),
      power: quantity({
        label: 'Peak envelope power',
        symbol: 'P_s',
        unit: 'W',
        digits: 3,
        help: 'At the antenna, by the square law.',
      }),
      efficiency: quantity({
        label: 'Efficiency',
        symbol: 'eta_s',
        unit: '%',
        digits: 3,
        help: 'Power at the antenna over the final’s direct power.',
      }),
    },
  }),
  cardSource: words({
    label: 'Model card',
    help: 'Whose figures the exact answer takes for the transistor.',
  }),
  cardRows: table({
    label: 'What the model card says',
    help: 'Parameters of the published Gummel–Poon equations at 27 °C, those that matter most here.',
    columns: {
      parameter: words({ label: 'Parameter', help: 'Its name on a model card.' }),
      what: words({ label: 'What it is', help: 'In plain words.' }),
      value: words({ label: 'Value', help: 'As the exact answer takes it, for one transistor.' }),
      whence: choice({
        label: 'From',
        options: {
          device: 'the chosen transistor',
          fT: 'your transition frequency',
          own: 'your card',
          unsaid: 'left out: published value',
        },
        help: 'Which source it was taken from.',
      }),
    },
  }),
  modelCard: model<GummelPoonCard>()({
    label: 'Model card as used',
    help: 'All parameters of one transistor at 27 °C.',
  }),
} as const;
