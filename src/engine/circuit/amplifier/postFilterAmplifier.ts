import { capacitor, netlist, node } from '../nodal/netlist.ts';
import { addCommonEmitter, type CommonEmitter } from './commonEmitter.ts';
import type { HybridPi } from './hybridPi.ts';
import type { StageCircuit } from './stageCircuit.ts';

/** A stage with emitter resistor and shunt feedback between two coupling capacitors, F. */
export interface PostFilterAmplifier extends CommonEmitter {
  readonly inputC: number;
  readonly outputC: number;
}

/** Values for some 16 dB between 200 Ω at 10 mA from 12 V. Common practice, no source. */
export const typicalPostFilterAmplifier: PostFilterAmplifier = {
  from: 'supply',
  upper: 4700,
  lower: 1500,
  emitter: 10,
  bridged: 220,
  bridge: 100e-9,
  feedback: 1500,
  feedbackC: 100e-9,
  feed: 10,
  choke: 100e-6,
  inputC: 100e-9,
  outputC: 100e-9,
};

/** The amplifier behind the filter: filter at the first port, what follows at the second. */
export function postFilterAmplifier(parts: PostFilterAmplifier, pi: HybridPi): StageCircuit {
  const net = netlist();
  const ports = [node(net, 'in'), node(net, 'out')] as const;
  const base = node(net, 'b');
  const collector = node(net, 'c');
  capacitor(net, ports[0], base, parts.inputC, 'C_K');
  const device = addCommonEmitter(net, base, collector, parts, pi);
  capacitor(net, collector, ports[1], parts.outputC, 'C_O');
  return { net, ports, device, pi };
}
