import { capacitor, inductor, type Netlist, node, resistor } from '../nodal/netlist.ts';
import { addTransistor } from './addTransistor.ts';
import type { BiasResistors } from './biasPoint.ts';
import type { HybridPi } from './hybridPi.ts';

/** A common-emitter transistor with what stands round it; no couplings and no output. Ω F H. */
export interface CommonEmitter {
  /** Where the upper base resistor begins. */
  readonly from: 'supply' | 'collector';
  readonly upper: number;
  /** Base to ground; Infinity for none. */
  readonly lower: number;
  /** Emitter resistor that no capacitor bridges, 0 … */
  readonly emitter: number;
  /** Further emitter resistor, and the capacitor across it. */
  readonly bridged: number;
  readonly bridge: number;
  /** Resistor and capacitor in series from collector to base; Infinity Ω for none. */
  readonly feedback: number;
  readonly feedbackC: number;
  /** What feeds the collector from the supply: resistance and inductance in series. */
  readonly feed: number;
  readonly choke: number;
}

/** Nodes of a transistor in its netlist: what headroom wants to know. */
export interface DeviceNodes {
  readonly inner: number;
  readonly collector: number;
  readonly emitter: number;
}

/** The direct-current side of the stage. */
export const biasOf = (parts: CommonEmitter, supply: number): BiasResistors => ({
  supply,
  from: parts.from,
  upper: parts.upper,
  lower: parts.lower,
  emitter: parts.emitter + parts.bridged,
  collector: parts.feed,
});

/**
 * Puts the stage into a netlist between its base and its collector node. The supply is ground for
 * signals.
 *
 * @param mark behind the names of nodes, to tell two stages in one netlist apart
 */
export function addCommonEmitter(
  net: Netlist,
  base: number,
  collector: number,
  parts: CommonEmitter,
  pi: HybridPi,
  mark = '',
): DeviceNodes {
  const emitter = parts.emitter + parts.bridged > 0 ? node(net, `e${mark}`) : 0;
  const inner = addTransistor(net, base, collector, emitter, pi, mark);
  resistor(net, base, parts.from === 'collector' ? collector : 0, parts.upper, 'R_U');
  if (parts.lower < Number.POSITIVE_INFINITY) resistor(net, base, 0, parts.lower, 'R_D');
  addEmitter(net, emitter, parts, mark);
  if (parts.feedback < Number.POSITIVE_INFINITY) {
    const joint = node(net, `j${mark}`);
    resistor(net, collector, joint, parts.feedback, 'R_F');
    capacitor(net, joint, base, parts.feedbackC, 'C_F');
  }
  addFeed(net, collector, parts, mark);
  return { inner, collector, emitter };
}

/** The emitter’s resistors to ground, and the capacitor across the second. */
export function addEmitter(
  net: Netlist,
  emitter: number,
  parts: CommonEmitter,
  mark: string,
): void {
  if (emitter === 0) return;
  let foot = emitter;
  if (parts.emitter > 0) {
    foot = parts.bridged > 0 ? node(net, `f${mark}`) : 0;
    resistor(net, emitter, foot, parts.emitter, 'R_E');
  }
  if (parts.bridged > 0) {
    resistor(net, foot, 0, parts.bridged, 'R_B');
    capacitor(net, foot, 0, parts.bridge, 'C_B');
  }
}

/** Resistance and inductance in series to the supply; without either nothing is there. */
function addFeed(
  net: Netlist,
  collector: number,
  { feed: ohms, choke: henries }: CommonEmitter,
  mark: string,
): void {
  if (ohms > 0 && henries > 0) {
    const joint = node(net, `d${mark}`);
    resistor(net, collector, joint, ohms, 'R_C');
    inductor(net, joint, 0, henries, 'L_C');
  } else if (ohms > 0) resistor(net, collector, 0, ohms, 'R_C');
  else if (henries > 0) inductor(net, collector, 0, henries, 'L_C');
}
