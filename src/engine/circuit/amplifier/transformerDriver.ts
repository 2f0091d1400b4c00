import { capacitor, inductor, mutual, netlist, node, resistor } from '../nodal/netlist.ts';
import { addCommonEmitter, type CommonEmitter } from './commonEmitter.ts';
import type { HybridPi } from './hybridPi.ts';
import type { StageCircuit } from './stageCircuit.ts';

/** A stage with a broadband transformer between its collector and its load. Ω F H. */
export interface TransformerDriver extends CommonEmitter {
  readonly inputC: number;
  /** Inductance of the collector winding. */
  readonly primary: number;
  /** Turns of the collector winding over those of the load's. */
  readonly turns: number;
  /** Leakage, seen from the collector with the other winding shorted, over the winding's own. */
  readonly leakage: number;
  /** Loss of the core as a resistance across the collector winding; Infinity for none. */
  readonly core: number;
}

/** Values for a driver of 30 mA from 12 V. Common practice, no source. */
export const typicalTransformerDriver: TransformerDriver = {
  from: 'supply',
  upper: 1500,
  lower: 470,
  emitter: 10,
  bridged: 47,
  bridge: 100e-9,
  feedback: 1000,
  feedbackC: 100e-9,
  feed: 0,
  choke: 0,
  inputC: 100e-9,
  primary: 40e-6,
  turns: 6,
  leakage: 0.01,
  core: 10e3,
};

/** The driver: what comes before at the first port, the load's winding at the second. */
export function transformerDriver(parts: TransformerDriver, pi: HybridPi): StageCircuit {
  const net = netlist();
  const ports = [node(net, 'in'), node(net, 'out')] as const;
  const base = node(net, 'b');
  const collector = node(net, 'c');
  capacitor(net, ports[0], base, parts.inputC, 'C_K');
  const device = addCommonEmitter(net, base, collector, parts, pi);
  const first = inductor(net, collector, 0, parts.primary, 'L_P');
  const second = inductor(net, ports[1], 0, parts.primary / parts.turns ** 2, 'L_S');
  mutual(net, first, second, Math.sqrt(1 - parts.leakage));
  if (parts.core < Number.POSITIVE_INFINITY) resistor(net, collector, 0, parts.core, 'R_core');
  return { net, ports, device, pi };
}
