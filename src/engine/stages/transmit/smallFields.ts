import type { StabilityScan } from '../../circuit/amplifier/stabilityScan.ts';
import type { ThirdOrder } from '../../circuit/amplifier/thirdOrder.ts';
import type { Netlist } from '../../circuit/nodal/netlist.ts';
import type { noiseShares } from '../../circuit/nodal/noiseFigure.ts';
import { model, quantity, table, words } from '../../fields/declare.ts';

/** A circuit solved at the operating frequency with 1 V behind one of its ends. */
export interface SolvedDrive {
  /** Which circuit: `mic`, `follower`, `first`, `second` or `driver`. */
  readonly name: string;
  /** The closing resistor of input (0) or output (1) has the volt behind it. */
  readonly driven: 0 | 1;
  readonly net: Netlist;
  readonly ports: readonly [number, number];
  /** Nodes of the transistor that works; 0 is ground. */
  readonly device: { readonly inner: number; readonly collector: number; readonly emitter: number };
  /** Voltages of the nodes from 1 on, V. */
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** The two-way amplifier's noise as found: volts at the output by an ampere at its source, and all shares. */
export type NoiseFound = ReturnType<typeof noiseShares>;

const stageName = words({ label: 'Stage', help: 'Which small stage.' });

/** Operating points, node voltages, stability. */
export const smallResults = {
  biases: table({
    label: 'Operating points',
    help: 'Direct currents and voltages of each small stage: with a usual transistor in the air as it is, and at both ends of what can happen.',
    columns: {
      stage: stageName,
      condition: words({ label: 'With', help: 'Which transistor, how warm.' }),
      gain: quantity({
        label: 'hFE',
        symbol: 'h_FE',
        unit: '1',
        digits: 3,
        help: 'Current gain for direct current.',
      }),
      temperature: quantity({
        label: 'Junction',
        symbol: 'T_j',
        unit: '°C',
        digits: 0,
        help: 'Temperature that the row is worked out for.',
      }),
      vbe: quantity({
        label: 'Base–emitter',
        symbol: 'V_BE',
        unit: 'V',
        digits: 3,
        help: 'Across the junction itself.',
      }),
      ic: quantity({
        label: 'Collector current',
        symbol: 'I_C',
        unit: 'A',
        digits: 3,
        help: 'Direct current into the collector.',
      }),
      vb: quantity({
        label: 'Base',
        symbol: 'V_B',
        unit: 'V',
        digits: 3,
        help: 'To ground, with a meter of high resistance.',
      }),
      ve: quantity({ label: 'Emitter', symbol: 'V_E', unit: 'V', digits: 3, help: 'To ground.' }),
      vc: quantity({ label: 'Collector', symbol: 'V_C', unit: 'V', digits: 3, help: 'To ground.' }),
    },
  }),
  models: table({
    label: 'The transistors as small signals meet them',
    help: 'The hybrid-pi model at the operating point, from which the node voltages follow.',
    columns: {
      stage: stageName,
      gm: quantity({
        label: 'Slope',
        symbol: 'g_m',
        unit: 'S',
        digits: 3,
        help: 'Collector current by base voltage.',
      }),
      rpi: quantity({
        label: 'Base–emitter resistance',
        symbol: 'r_pi',
        unit: 'Ω',
        digits: 3,
        help: 'Of the inner junction.',
      }),
      cpi: quantity({
        label: 'Base–emitter capacitance',
        symbol: 'C_pi',
        unit: 'F',
        digits: 3,
        help: 'Stored charge and depletion layer.',
      }),
      cmu: quantity({
        label: 'Collector–base capacitance',
        symbol: 'C_mu',
        unit: 'F',
        digits: 3,
        help: 'Depletion layer at the voltage that is there.',
      }),
      ro: quantity({
        label: 'Output resistance',
        symbol: 'r_o',
        unit: 'Ω',
        digits: 3,
        help: 'Early effect.',
      }),
      cec: quantity({
        label: 'Narrowing',
        symbol: 'C_ec',
        unit: 'F',
        digits: 2,
        help: 'Charge that the base loses as the collector voltage rises.',
      }),
      ft: quantity({
        label: 'fT',
        symbol: 'f_T',
        unit: 'Hz',
        digits: 3,
        help: 'Transition frequency at this current.',
      }),
    },
  }),
  circuits: model<readonly SolvedDrive[]>()({
    label: 'Circuits of the small stages',
    help: 'The circuits as solved, for the workings.',
  }),
  nodes: table({
    label: 'Node voltages',
    help: 'Every node of the small stages, for speech at 1 kHz and else at the operating frequency, with one volt behind the resistance that drives.',
    columns: {
      circuit: words({ label: 'Circuit', help: 'Which stage, and from which side it is driven.' }),
      node: words({ label: 'Node', help: 'Where in the circuit.' }),
      re: quantity({
        label: 'In phase',
        symbol: 'x_node',
        unit: 'V',
        digits: 4,
        help: 'Part in phase with the drive.',
      }),
      im: quantity({
        label: 'In quadrature',
        symbol: 'y_node',
        unit: 'V',
        digits: 4,
        help: 'Part a quarter period ahead.',
      }),
    },
  }),
  micStageGain: quantity({
    label: 'Gain of the two stages',
    symbol: 'A_two',
    unit: 'dB',
    digits: 3,
    help: 'Voltage gain from microphone to modulator at 1 kHz with the parts given, volume full up.',
  }),
  micLoad: quantity({
    label: 'Load on the microphone',
    symbol: 'R_mic',
    unit: 'Ω',
    digits: 3,
    help: 'The resistance that the microphone works into.',
  }),
  micClip: quantity({
    label: 'Most that the first transistor can give',
    symbol: 'L_mic',
    unit: 'dBm',
    digits: 3,
    help: 'Where its current or voltage runs out, into the follower. The volume control behind it doesn’t help.',
  }),
  micStanding: quantity({
    label: 'Microphone amplifier’s standing current',
    symbol: 'I_mic',
    unit: 'A',
    digits: 3,
    help: 'Emitter current of the first transistor.',
  }),
  followerSource: quantity({
    label: 'Source that the follower sees',
    symbol: 'R_s_fol',
    unit: 'Ω',
    digits: 3,
    help: 'The microphone amplifier’s output resistance.',
  }),
  followerInput: quantity({
    label: 'Follower’s input resistance',
    symbol: 'R_in_fol',
    unit: 'Ω',
    digits: 3,
    help: 'With the modulator as its load.',
  }),
  followerOutput: quantity({
    label: 'Source that the modulator sees',
    symbol: 'R_out_fol',
    unit: 'Ω',
    digits: 3,
    help: 'The follower’s output resistance, as a resistance in parallel.',
  }),
  followerStanding: quantity({
    label: 'Follower’s standing current',
    symbol: 'I_fol',
    unit: 'A',
    digits: 3,
    help: 'Emitter current. The modulator’s peak current can’t be more.',
  }),
  followerClip: quantity({
    label: 'Most that the follower can give',
    symbol: 'L_fol',
    unit: 'dBm',
    digits: 3,
    help: 'Where its current or voltage runs out, into the modulator.',
  }),
  amplifierStanding: quantity({
    label: 'Standing current of each',
    symbol: 'I_E',
    unit: 'A',
    digits: 3,
    help: 'Emitter current. Its peak signal current can’t be more.',
  }),
  amplifierInputC: quantity({
    label: 'Capacitance across its input',
    symbol: 'C_in',
    unit: 'F',
    digits: 2,
    help: 'In parallel with the input resistance; negative where it is inductive.',
  }),
  amplifierOutputC: quantity({
    label: 'Capacitance across its output',
    symbol: 'C_out',
    unit: 'F',
    digits: 2,
    help: 'In parallel with the output resistance; negative where it is inductive.',
  }),
  secondOutput: quantity({
    label: 'Output resistance behind the filter',
    symbol: 'R_out2',
    unit: 'Ω',
    digits: 3,
    help: 'The second amplifier, driven from its matching source.',
  }),
  amplifierK: quantity({
    label: 'Least stability factor',
    symbol: 'K_amp',
    unit: '1',
    digits: 3,
    help: 'Rollett’s K from 0.1 to 300 MHz, where it is least. Above 1 no source and no load makes it oscillate; below 1 some would.',
  }),
  amplifierKAt: quantity({
    label: 'That is at',
    symbol: 'f_K',
    unit: 'Hz',
    digits: 3,
    help: 'Where the stability factor is least.',
  }),
  driverStanding: quantity({
    label: 'Driver’s standing current',
    symbol: 'I_drv',
    unit: 'A',
    digits: 3,
    help: 'Emitter current. With the load it limits the power that the final can be given.',
  }),
  driverInputC: quantity({
    label: 'Capacitance across the driver’s input',
    symbol: 'C_in_drv',
    unit: 'F',
    digits: 2,
    help: 'In parallel with the input resistance; negative where it is inductive.',
  }),
  driverSource: quantity({
    label: 'Source that the driver sees',
    symbol: 'R_s_drv',
    unit: 'Ω',
    digits: 3,
    help: 'What stands before it, through its transformer.',
  }),
  driverOutput: quantity({
    label: 'Source that the final’s base sees',
    symbol: 'R_out_drv',
    unit: 'Ω',
    digits: 3,
    help: 'The driver through its transformer.',
  }),
  driverK: quantity({
    label: 'Driver’s least stability factor',
    symbol: 'K_drv',
    unit: '1',
    digits: 3,
    help: 'Rollett’s K from 0.1 to 300 MHz, where it is least.',
  }),
  driverKAt: quantity({
    label: 'That of the driver is at',
    symbol: 'f_K_drv',
    unit: 'Hz',
    digits: 3,
    help: 'Where the driver’s stability factor is least.',
  }),
  amplifierNoises: table({
    label: 'Where its noise comes from',
    help: 'The two-way amplifier’s noise figure in its parts.',
    columns: {
      part: words({ label: 'Part', help: 'A resistor or a current.' }),
      share: quantity({
        label: 'Noise beside the source’s own',
        symbol: 's_row',
        unit: '%',
        digits: 2,
        help: 'Noise power at the output, against that of the source at 290 K.',
      }),
    },
  }),
  noiseFound: model<NoiseFound>()({
    label: 'Noise as solved',
    help: 'How every source of noise reaches the output, for the workings.',
  }),
  bendFound: model<ThirdOrder>()({
    label: 'Bend as solved',
    help: 'What two tones of a watt each would make of each other, for the workings.',
  }),
  stability: model<{ readonly amplifier: StabilityScan; readonly driver: StabilityScan }>()({
    label: 'Stability over frequency',
    help: 'Rollett’s factor of amplifier and driver from 0.1 to 300 MHz.',
  }),
} as const;
