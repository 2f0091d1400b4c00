import { capacitor, netlist, node, resistor } from '../nodal/netlist.ts';
import { addTransistor } from './addTransistor.ts';
import type { BiasResistors } from './biasPoint.ts';
import type { HybridPi } from './hybridPi.ts';
import type { StageCircuit } from './stageCircuit.ts';

/** A transistor whose emitter gives the output. Ω and F. */
export interface EmitterFollower {
  readonly upper: number;
  /** Base to ground; Infinity for none. */
  readonly lower: number;
  readonly emitter: number;
  /** Infinity where the stage before is joined to the base. */
  readonly inputC: number;
  readonly outputC: number;
}

/** Values for 5 mA from 12 V. Common practice, no source. */
export const typicalEmitterFollower: EmitterFollower = {
  upper: 39e3,
  lower: 47e3,
  emitter: 1000,
  inputC: 1e-6,
  outputC: 10e-6,
};

/** The direct-current side of the follower. */
export const followerBias = (parts: EmitterFollower, supply: number): BiasResistors => ({
  supply,
  from: 'supply',
  upper: parts.upper,
  lower: parts.lower,
  emitter: parts.emitter,
  collector: 0,
});

/** The follower as a circuit; its collector is ground for signals. */
export function emitterFollower(parts: EmitterFollower, pi: HybridPi): StageCircuit {
  const net = netlist();
  const ports = [node(net, 'in'), node(net, 'out')] as const;
  const joined = parts.inputC === Number.POSITIVE_INFINITY;
  const base = joined ? ports[0] : node(net, 'b');
  const emitter = node(net, 'e');
  if (!joined) capacitor(net, ports[0], base, parts.inputC, 'C_K');
  resistor(net, base, 0, parts.upper, 'R_U');
  if (parts.lower < Number.POSITIVE_INFINITY) resistor(net, base, 0, parts.lower, 'R_D');
  const inner = addTransistor(net, base, 0, emitter, pi);
  resistor(net, emitter, 0, parts.emitter, 'R_E');
  capacitor(net, emitter, ports[1], parts.outputC, 'C_O');
  return { net, ports, device: { inner, collector: 0, emitter }, pi };
}
