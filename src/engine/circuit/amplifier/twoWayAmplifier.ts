import { capacitor, netlist, node } from '../nodal/netlist.ts';
import { addCommonEmitter, type CommonEmitter } from './commonEmitter.ts';
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
  const ports = [node(net), node(net)] as const;
  const base = node(net);
  const collector = node(net);
  capacitor(net, ports[0], base, parts.coupling);
  capacitor(net, collector, ports[1], parts.coupling);
  const device = addCommonEmitter(net, base, collector, parts, awake);
  if (parts.asleep !== 'nothing') {
    const otherBase = node(net);
    const otherCollector = node(net);
    capacitor(net, ports[1], otherBase, parts.coupling);
    capacitor(net, otherCollector, ports[0], parts.coupling);
    const sleeping = parts.asleep === 'all' ? parts : bare(parts);
    addCommonEmitter(net, otherBase, otherCollector, sleeping, asleep);
  }
  return { net, ports, device, pi: awake };
}

/** A half whose resistors are cut off, but for a path that keeps its nodes defined. */
const bare = (parts: TwoWayAmplifier): CommonEmitter => ({
  ...parts,
  from: 'supply',
  upper: OPEN,
  lower: Number.POSITIVE_INFINITY,
  feedback: Number.POSITIVE_INFINITY,
  feed: OPEN,
  choke: 0,
});

/** As good as nothing beside any other resistance here, Ω. */
const OPEN = 1e12;
