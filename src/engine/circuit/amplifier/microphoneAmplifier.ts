import { capacitor, netlist, node } from '../nodal/netlist.ts';
import { addCommonEmitter, type CommonEmitter } from './commonEmitter.ts';
import type { HybridPi } from './hybridPi.ts';
import type { StageCircuit } from './stageCircuit.ts';

/** A common-emitter stage for speech between two coupling capacitors, F. */
export interface MicrophoneAmplifier extends CommonEmitter {
  readonly inputC: number;
  readonly outputC: number;
}

/** Values that give some 30 dB from 12 V at 1 mA. Common practice, no source. */
export const typicalMicrophoneAmplifier: MicrophoneAmplifier = {
  from: 'supply',
  upper: 56e3,
  lower: 10e3,
  emitter: 100,
  bridged: 1000,
  bridge: 10e-6,
  feedback: Number.POSITIVE_INFINITY,
  feedbackC: 0,
  feed: 4700,
  choke: 0,
  inputC: 1e-6,
  outputC: 1e-6,
};

/** The microphone amplifier: microphone at the first port, what follows at the second. */
export function microphoneAmplifier(parts: MicrophoneAmplifier, pi: HybridPi): StageCircuit {
  const net = netlist();
  const ports = [node(net, 'in'), node(net, 'out')] as const;
  const base = node(net, 'b');
  const collector = node(net, 'c');
  capacitor(net, ports[0], base, parts.inputC, 'C_K');
  const device = addCommonEmitter(net, base, collector, parts, pi);
  capacitor(net, collector, ports[1], parts.outputC, 'C_O');
  return { net, ports, device, pi };
}
