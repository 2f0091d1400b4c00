import {
  capacitor,
  type Netlist,
  node,
  resistor,
  transcapacitance,
  transconductance,
} from '../nodal/netlist.ts';
import type { HybridPi } from './hybridPi.ts';

/**
 * Puts a transistor's hybrid-pi model into a netlist.
 *
 * @param base, collector, emitter nodes
 * @return the node of the inner base
 */
export function addTransistor(
  net: Netlist,
  base: number,
  collector: number,
  emitter: number,
  { rb, gpi, cpi, gm, cmu, go, cec }: HybridPi,
): number {
  const inner = rb > 0 ? node(net) : base;
  if (rb > 0) resistor(net, base, inner, rb);
  if (gpi > 0) resistor(net, inner, emitter, 1 / gpi);
  capacitor(net, inner, emitter, cpi);
  capacitor(net, inner, collector, cmu);
  if (go > 0) resistor(net, collector, emitter, 1 / go);
  if (gm !== 0) transconductance(net, collector, emitter, inner, emitter, gm);
  if (cec !== 0) transcapacitance(net, inner, emitter, collector, inner, cec);
  return inner;
}
