import { ganged } from '../../circuit/power/ganged.ts';
import { gummelPoonAt } from '../../circuit/power/gummelPoonAt.ts';
import type { CollectorNetwork, PowerCircuit } from '../../circuit/power/powerCircuit.ts';
import type { PowerSeen } from './seen.ts';

/** Junction temperatures for which the model's equations are meant, K. */
export const MEANT = [230, 450] as const;

/** What even harmonics meet at the bases of a push-pull stage besides leakage, Ω: half a winding. */
const HALF_WINDING = 0.1;

/**
 * The rig's final, or one side of it, between its driver and its output network; the bias voltage
 * still 0.
 *
 * @param temperature of the junctions, K
 */
export function powerCircuitOf(
  seen: PowerSeen,
  temperature: number,
  network: CollectorNetwork,
): PowerCircuit {
  const { sides, gang, unlike } = seen.arrangement;
  return {
    frequency: seen.nominal,
    model: gummelPoonAt(ganged(seen.modelCard, gang), within(temperature)),
    supply: seen.supply,
    feed: { l: seen.feedUsed, r: seen.winding },
    stray: seen.stray,
    emitter: { r: seen.ballast / gang, l: seen.lead / gang },
    // Both sides draw their direct current through the one source.
    bias: { voltage: 0, resistance: sides * seen.biasSource, across: Number.POSITIVE_INFINITY },
    shunt: seen.shunt,
    driver: driverOf(seen, network.input.length),
    network,
    ...(sides === 2 ? { pushPull: { leakage: seen.halves, unlike } } : {}),
  };
}

/** A junction temperature that the model is meant for, K. */
export const within = (temperature: number): number =>
  Math.min(MEANT[1], Math.max(MEANT[0], temperature));

/**
 * What a base meets at each harmonic, Ω. In push-pull each has half of what stands between the two
 * for odd harmonics, and half a winding to its bypassed tap for even ones.
 */
function driverOf(seen: PowerSeen, size: number): Float64Array {
  const { sides } = seen.arrangement;
  const driver = new Float64Array(size);
  for (let k = 1; 2 * k < size; k += 1) {
    const even = sides === 2 && k % 2 === 0;
    driver[2 * k] = even ? HALF_WINDING : seen.driverOutput / sides;
    driver[2 * k + 1] = (2 * Math.PI * seen.nominal * k * seen.driverUsed) / sides;
  }
  return driver;
}

/**
 * Open voltage of the driver, for each side, where its own limit is reached with the load that it
 * was planned for.
 *
 * @return V peak
 */
export function mostDrive({
  driverClip,
  driverOutput,
  finalInput,
  arrangement,
}: PowerSeen): number {
  const watts = 1e-3 * 10 ** (driverClip / 10);
  return (Math.sqrt(2 * watts * finalInput) * (1 + driverOutput / finalInput)) / arrangement.sides;
}
