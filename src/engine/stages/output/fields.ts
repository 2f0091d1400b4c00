import type { OutputLadder } from '../../circuit/outputLadder.ts';
import { count, declare, model, quantity, words } from '../../fields/declare.ts';
import type { ShelfCoil } from '../cores/fields.ts';
import { outputInputs } from './inputs.ts';
import { asWound, coils, elements, harmonics, response, verdict } from './tables.ts';

/** The network between collector and antenna: parts, loss, and what becomes of the harmonics. */
export const outputFields = declare({
  key: 'output',
  title: 'Output',
  asks: 'Does the output network make the load, and are the harmonics gone?',
  inputs: outputInputs,
  results: {
    transformerPrimary: count({
      label: 'Transformer: collector side in the ratio',
      help: 'The smallest whole turns that come within 4 % of the ratio. Windings multiplies both sides until the core suffices.',
    }),
    transformerSecondary: count({
      label: 'Transformer: antenna side in the ratio',
      help: 'Goes with the number of the collector side.',
    }),
    transformerRatio: quantity({
      label: 'Transformer ratio',
      symbol: 'n_t',
      unit: '1',
      digits: 3,
      help: 'Turns on the antenna side over turns on the collector side. Impedances go as its square.',
    }),
    cutoff: quantity({
      label: 'Cutoff of the filter',
      symbol: 'f_c',
      unit: 'Hz',
      digits: 4,
      help: 'Ripple edge of a Chebyshev or elliptic filter, 3 dB point of a Butterworth.',
    }),
    filterEnd: quantity({
      label: 'Resistance at the filter’s input',
      symbol: 'R_e',
      unit: 'Ω',
      digits: 3,
      help: 'What the match has to work into: the antenna’s, but with a Chebyshev filter of an even number of elements, whose ends differ.',
    }),
    stopEdge: quantity({
      label: 'Stop-band edge',
      symbol: 'f_s',
      unit: 'Hz',
      digits: 4,
      help: 'From here on an elliptic filter keeps its least attenuation.',
    }),
    stopLoss: quantity({
      label: 'Least attenuation beyond it',
      symbol: 'A_s',
      unit: 'dB',
      digits: 3,
      help: 'With ideal parts, between equal resistances.',
    }),
    inputResistance: quantity({
      label: 'Load that the collector sees',
      symbol: 'R_in',
      unit: 'Ω',
      digits: 3,
      help: 'Real part, at the operating frequency, with the parts fitted. It should be the collector load of Transmit.',
    }),
    inputReactance: quantity({
      label: 'Its reactance',
      symbol: 'X_in',
      unit: 'Ω',
      digits: 3,
      help: 'Positive is inductive. A small part of the resistance does no harm.',
    }),
    returnLoss: quantity({
      label: 'Return loss against the load wanted',
      symbol: 'A_ret',
      unit: 'dB',
      digits: 3,
      help: 'How near the network comes to the load wanted: 20 dB is good, 14 dB will do. The aim is the load line, not a conjugate match.',
    }),
    drive: quantity({
      label: 'Share of the drive that the supply allows',
      symbol: 's_d',
      unit: '%',
      digits: 3,
      help: 'Into more than the load wanted the collector runs out of volts before the planned current flows.',
    }),
    transimpedance: quantity({
      label: 'Transimpedance at the operating frequency',
      symbol: 'Z_T',
      unit: 'Ω',
      digits: 3,
      help: 'Volts at the antenna for each ampere out of the collector, its own output resistance across it.',
    }),
    loss: quantity({
      label: 'Loss of the network',
      symbol: 'A_net',
      unit: 'dB',
      digits: 4,
      help: 'What goes in over what reaches the antenna: heat in the parts. 0.2 dB is good, over 0.5 dB look at the coils.',
    }),
    lost: quantity({
      label: 'Heat in the network',
      symbol: 'P_net',
      unit: 'W',
      digits: 2,
      help: 'With a steady tone at full power: the sum over its parts.',
    }),
    pepAntenna: quantity({
      label: 'Power at the antenna',
      symbol: 'P_ant',
      unit: 'W',
      digits: 3,
      across: 'plan.antenna',
      help: 'Peak envelope power that this network and this final give together.',
    }),
    elements,
    partCount: count({
      label: 'Number of parts',
      symbol: 'N_p',
      help: 'Capacitors, each of a pair counted, coils and the transformer.',
    }),
    coils,
    asWound,
    harmonics,
    worstMargin: quantity({
      label: 'Least margin',
      symbol: 'M_min',
      unit: 'dB',
      digits: 3,
      help: 'Of all harmonics to the tenth.',
    }),
    worstOrder: count({
      label: 'Harmonic with the least margin',
      help: 'Work on this one.',
    }),
    verdict,
    rule: words({
      label: 'Rule applied',
      help: 'Which text the limit comes from, and for whom it holds.',
    }),
    response,
    wound: model<readonly { readonly label: string; readonly wound: ShelfCoil }[]>()({
      label: 'The coils as wound',
      help: 'For Windings: the same coils.',
    }),
    ladder: model<OutputLadder>()({
      label: 'The network as built',
      help: 'Every part with its own Q, from the collector to the antenna, fed by a current.',
    }),
  },
});
