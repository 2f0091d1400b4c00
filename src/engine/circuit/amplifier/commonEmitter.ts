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
 */
export function addCommonEmitter(
  net: Netlist,
  base: number,
  collector: number,
  parts: CommonEmitter,
  pi: HybridPi,
): DeviceNodes {
  const emitter = parts.emitter + parts.bridged > 0 ? node(net) : 0;
  const inner = addTransistor(net, base, collector, emitter, pi);
  resistor(net, base, parts.from === 'collector' ? collector : 0, parts.upper);
  if (parts.lower < Number.POSITIVE_INFINITY) resistor(net, base, 0, parts.lower);
  addEmitter(net, emitter, parts);
  if (parts.feedback < Number.POSITIVE_INFINITY) {
    const joint = node(net);
    resistor(net, collector, joint, parts.feedback);
    capacitor(net, joint, base, parts.feedbackC);
  }
  addFeed(net, collector, parts.feed, parts.choke);
  return { inner, collector, emitter };
}

function addEmitter(net: Netlist, emitter: number, parts: CommonEmitter): void {
  if (emitter === 0) return;
  let foot = emitter;
  if (parts.emitter > 0) {
    foot = parts.bridged > 0 ? node(net) : 0;
    resistor(net, emitter, foot, parts.emitter);
  }
  if (parts.bridged > 0) {
    resistor(net, foot, 0, parts.bridged);
    capacitor(net, foot, 0, parts.bridge);
  }
}

/** Resistance and inductance in series to the supply; without either nothing is there. */
function addFeed(net: Netlist, collector: number, ohms: number, henries: number): void {
  if (ohms > 0 && henries > 0) {
    const joint = node(net);
    resistor(net, collector, joint, ohms);
    inductor(net, joint, 0, henries);
  } else if (ohms > 0) resistor(net, collector, 0, ohms);
  else if (henries > 0) inductor(net, collector, 0, henries);
}
