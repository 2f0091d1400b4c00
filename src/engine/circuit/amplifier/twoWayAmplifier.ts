import { capacitor, netlist, node } from '../nodal/netlist.ts';
import { addTransistor } from './addTransistor.ts';
import { addCommonEmitter, addEmitter, type CommonEmitter } from './commonEmitter.ts';
import type { HybridPi } from './hybridPi.ts';
import type { StageCircuit } from './stageCircuit.ts';

/** Two alike stages head to tail, of which one has supply. */
export interface TwoWayAmplifier extends CommonEmitter {
  /** From each port to the base of one transistor and the collector of the other, F. */
  readonly coupling: number;
  /**
   * What of the sleeping half stays on the line: all its parts, only its transistor's
   * capacitances, or nothing, as where diodes or relays take it off.
   */
  readonly asleep: 'all' | 'transistor' | 'nothing';
}

/** Values for some 16 dB between 200 Ω at 8 mA from 12 V. Common practice, no source. */
export const typicalTwoWayAmplifier: TwoWayAmplifier = {
  from: 'collector',
  upper: 2700,
  lower: 680,
  emitter: 10,
  bridged: 100,
  bridge: 100e-9,
  feedback: Number.POSITIVE_INFINITY,
  feedbackC: 100e-9,
  feed: 560,
  choke: 0,
  coupling: 100e-9,
  asleep: 'all',
};

/**
 * The amplifier in the direction that has supply. The sleeping half lies across it with its
 * collector at the input and its base at the output.
 *
 * @param awake transistor that works
 * @param asleep transistor without supply
 */
export function twoWayAmplifier(
  parts: TwoWayAmplifier,
  awake: HybridPi,
  asleep: HybridPi,
): StageCircuit {
  const net = netlist();
  const ports = [node(net, 'in'), node(net, 'out')] as const;
  const base = node(net, 'b');
  const collector = node(net, 'c');
  capacitor(net, ports[0], base, parts.coupling, 'C_K');
  capacitor(net, collector, ports[1], parts.coupling, 'C_K');
  const device = addCommonEmitter(net, base, collector, parts, awake);
  if (parts.asleep === 'all') {
    const otherBase = node(net, 'b2');
    const otherCollector = node(net, 'c2');
    capacitor(net, ports[1], otherBase, parts.coupling, 'C_K');
    capacitor(net, otherCollector, ports[0], parts.coupling, 'C_K');
    addCommonEmitter(net, otherBase, otherCollector, parts, asleep, '2');
  }
  if (parts.asleep === 'transistor') {
    const emitter = parts.emitter + parts.bridged > 0 ? node(net, 'e2') : 0;
    addTransistor(net, ports[1], ports[0], emitter, asleep, '2');
    addEmitter(net, emitter, parts, '2');
  }
  return { net, ports, device, pi: awake };
}
