import { ladderTransfer, TRANSFER_SIZE } from '../ladderTransfer.ts';
import { capacitor, coil, type OutputLadder } from '../outputLadder.ts';
import type { CollectorNetwork } from './powerCircuit.ts';

/** A reactance so small against the load is none. */
const NOTHING = 1e-12;

/**
 * What the collector meets where the antenna reflects at the fundamental; the harmonics still find
 * its nominal resistance.
 *
 * The antenna's impedance R0(1 + Γ)/(1 − Γ) stands as a resistor with a lossless reactance before it.
 * The transfer is so scaled that the voltage squared over twice R0 is the power in that resistor.
 *
 * @param matched the network with its nominal load, at all harmonics
 * @param ladder the same network
 * @param frequency fundamental, Hz
 * @param swr standing wave ratio against the ladder's load, 1 or more
 * @param angle of the reflection coefficient at the antenna terminal, rad
 */
export function mismatchedNetwork(
  matched: CollectorNetwork,
  ladder: OutputLadder,
  frequency: number,
  swr: number,
  angle: number,
): CollectorNetwork {
  const rho = (swr - 1) / (swr + 1);
  const [re, im] = [rho * Math.cos(angle), rho * Math.sin(angle)];
  const size = (1 - re) ** 2 + im ** 2;
  const load = (ladder.load * (1 - rho * rho)) / size;
  const reactance = (ladder.load * 2 * im) / size;
  const w = 2 * Math.PI * frequency;
  const none = Number.POSITIVE_INFINITY;
  const branches = [...ladder.branches];
  const least = NOTHING * ladder.load;
  if (reactance > least) branches.push(coil('series', reactance / w, none));
  else if (reactance < -least) branches.push(capacitor('series', -1 / (w * reactance), none));
  const at = new Float64Array(TRANSFER_SIZE);
  ladderTransfer(
    { ...ladder, branches, load, sourceResistance: none, sourceCapacitance: 0 },
    frequency,
    at,
  );
  const scale = Math.sqrt(ladder.load / load);
  const input = Float64Array.from(matched.input);
  const transfer = Float64Array.from(matched.transfer);
  transfer[2] = (at[0] ?? 0) * scale;
  transfer[3] = (at[1] ?? 0) * scale;
  input[2] = at[2] ?? 0;
  input[3] = at[3] ?? 0;
  return { input, transfer, load: ladder.load };
}
