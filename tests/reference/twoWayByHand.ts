import {
  type TwoWayAmplifier,
  typicalTwoWayAmplifier,
} from '../../src/engine/circuit/amplifier/twoWayAmplifier.ts';
import { value } from './simulator.ts';

/** Supply, V, and the resistances on both sides, Ω. */
export const SUPPLY = 12;
export const END = 200;

/** A two-way amplifier of usual size: values for a test, not for a rig. */
export const usualTwoWay: TwoWayAmplifier = {
  ...typicalTwoWayAmplifier,
  from: 'supply',
  upper: 4700,
  lower: 1500,
  emitter: 22,
  bridged: 220,
  feedback: 4700,
  feed: 0,
  choke: 47e-6,
};

/** One half as lines of a netlist, written down by hand; its transistor has the model `q`. */
export const halfByHand = (
  parts: TwoWayAmplifier,
  x: string,
  base: string,
  collector: string,
  feed: string,
): string => `
q${x} ${collector} ${base} e${x} q
ru${x} ${feed} ${base} ${value(parts.upper)}
rd${x} ${base} 0 ${value(parts.lower)}
re${x} e${x} f${x} ${value(parts.emitter)}
rb${x} f${x} 0 ${value(parts.bridged)}
cb${x} f${x} 0 ${value(parts.bridge)}
rf${x} ${collector} j${x} ${value(parts.feedback)}
cf${x} j${x} ${base} ${value(parts.feedbackC)}
lc${x} ${collector} ${feed} ${value(parts.choke)}`;
