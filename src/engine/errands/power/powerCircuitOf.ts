import { collectorNetwork } from '../../circuit/power/collectorNetwork.ts';
import { gummelPoonAt } from '../../circuit/power/gummelPoonAt.ts';
import type { PowerCircuit } from '../../circuit/power/powerCircuit.ts';
import { transistors } from '../../data/devices.ts';
import { transistorModels } from '../../data/transistorModels.ts';
import { ladderOf, network } from '../../stages/output/network.ts';
import { assumed } from './assumed.ts';
import type { PowerSeen } from './seen.ts';

/** Junction temperatures for which the model's equations are meant, K. */
const MEANT = [230, 450] as const;

/**
 * The rig's final between its driver and its output network; the bias voltage still 0.
 *
 * @param harmonics highest harmonic
 * @return null where there is no output network
 */
export function powerCircuitOf(seen: PowerSeen, harmonics: number): PowerCircuit | null {
  const made = network(seen);
  if ('refusal' in made) return null;
  const card = transistorModels[seen.finalDevice];
  // A transition frequency of the user's own stretches the transit time.
  const tf = (card.tf * transistors[seen.finalDevice].ft) / seen.transition;
  const ladder = ladderOf(made.parts, made.turns, seen, Number.POSITIVE_INFINITY);
  const reactance = seen.reactanceTimes * seen.collectorLoad;
  return {
    frequency: seen.nominal,
    model: gummelPoonAt({ ...card, tf }, Math.min(MEANT[1], Math.max(MEANT[0], seen.junction))),
    supply: seen.supply,
    feed: { l: reactance / (2 * Math.PI * seen.nominal), r: assumed.feed },
    emitter: { r: assumed.ballast, l: assumed.lead },
    bias: { voltage: 0, resistance: assumed.bias, across: Number.POSITIVE_INFINITY },
    shunt: assumed.shunt,
    driver: Float64Array.from({ length: 2 * (harmonics + 1) }, (_, i) =>
      i % 2 === 0 ? seen.driverOutput : 0,
    ),
    network: collectorNetwork(ladder, seen.nominal, harmonics),
  };
}

/**
 * Open voltage of the driver where its own limit is reached with the load that it was planned for.
 *
 * @return V peak
 */
export function mostDrive({ driverClip, driverOutput, finalInput }: PowerSeen): number {
  const watts = 1e-3 * 10 ** (driverClip / 10);
  return Math.sqrt(2 * watts * finalInput) * (1 + driverOutput / finalInput);
}
