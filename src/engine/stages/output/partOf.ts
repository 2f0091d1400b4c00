import type { Look } from '../../fields/workings.ts';
import { type NetworkAsked, network } from './network.ts';
import type { Part } from './part.ts';

/** A part with its exact value and where it comes from, worked again from what the rig says. */
export function partOf(look: Look, label: string | undefined): Part | undefined {
  return designOf(look).find((part) => part.label === label);
}

/** All parts with their exact values. */
export function designOf(look: Look): readonly Part[] {
  const made = network(askedOf(look));
  return 'refusal' in made ? [] : made.parts;
}

/** What the network is made from, as the rig says it. */
export function askedOf(look: Look): NetworkAsked {
  return {
    nominal: look('plan.nominal') as number,
    antenna: look('plan.antenna') as number,
    collectorLoad: look('transmit.collectorLoad') as number,
    match: look('output.match') as NetworkAsked['match'],
    loadedQ: look('output.loadedQ') as number,
    lowpass: look('output.lowpass') as NetworkAsked['lowpass'],
    order: look('output.order') as number,
    cutoffRatio: look('output.cutoffRatio') as number,
    ripple: look('output.ripple') as number,
    traps: look('output.traps') as NetworkAsked['traps'],
    stopBy: look('output.stopBy') as NetworkAsked['stopBy'],
    stopRatio: look('output.stopRatio') as number,
    stopWanted: look('output.stopWanted') as number,
    fitted: look('output.fitted') as string,
  };
}
