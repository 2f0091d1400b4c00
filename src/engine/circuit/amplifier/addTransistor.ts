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
 * @param mark behind the names of what differs between two transistors
 * @return the node of the inner base
 */
export function addTransistor(
  net: Netlist,
  base: number,
  collector: number,
  emitter: number,
  { rb, gpi, cpi, gm, cmu, go, cec }: HybridPi,
  mark = '',
): number {
  const inner = rb > 0 ? node(net, `n${mark}`) : base;
  if (rb > 0) resistor(net, base, inner, rb, 'r_b');
  if (gpi > 0) resistor(net, inner, emitter, 1 / gpi, `r_pi${mark}`);
  capacitor(net, inner, emitter, cpi, `C_pi${mark}`);
  capacitor(net, inner, collector, cmu, `C_mu${mark}`);
  if (go > 0) resistor(net, collector, emitter, 1 / go, `r_o${mark}`);
  if (gm !== 0) transconductance(net, collector, emitter, inner, emitter, gm, `g_m${mark}`);
  if (cec !== 0) transcapacitance(net, inner, emitter, collector, inner, cec, `C_ec${mark}`);
  return inner;
}
