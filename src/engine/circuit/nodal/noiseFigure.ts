import { VOLT_PER_KELVIN } from '../amplifier/transistorCard.ts';
import { solve } from './factor.ts';
import { type Netlist, RESISTOR } from './netlist.ts';
import type { TwoPort } from './scattering.ts';

/** A current that makes shot noise, between two nodes. */
export interface Shot {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** Direct current, A. */
  readonly current: number;
}

/** What one source of noise adds. */
export interface NoiseShare {
  readonly name: string;
  /** Its resistance, Ω, or its direct current, A; the other is null. */
  readonly ohms: number | null;
  readonly current: number | null;
  /** Voltage at the output for one ampere there, Ω. */
  readonly carried: number;
  /** Noise power at the output over that of the signal's source. */
  readonly share: number;
}

/** Standard noise temperature, K: definition of the noise figure. */
export const NOISE_T0 = 290;

/**
 * Noise of a two-port at the frequency at which it was last solved: thermal noise 4kT/R of every
 * resistor, shot noise 2qI of the currents, each carried to the output through the circuit. The
 * load's own noise is not counted; the source is at 290 K. The factor is 1 and all shares.
 *
 * @param two as `scattering` has left it
 * @param temperature of the circuit's resistors, K
 * @return what an ampere at the source makes of volts at the output, Ω, and all shares
 * @source IRE Standards on Methods of Measuring Noise in Linear Twoports, Proc. IRE 48 (1960), 60;
 *   Gray & Meyer, Analysis and Design of Analog Integrated Circuits, ch. 11
 */
export function noiseShares(
  net: Netlist,
  two: TwoPort,
  shots: readonly Shot[],
  temperature: number,
): { readonly carried: number; readonly shares: readonly NoiseShare[] } {
  const { size } = two.system;
  const re = new Float64Array(size);
  const im = new Float64Array(size);
  const output = two.ports[1] - 1;
  const carriedFrom = (from: number, to: number): number => {
    re.fill(0);
    im.fill(0);
    if (from > 0) re[from - 1] = -1;
    if (to > 0) re[to - 1] = (re[to - 1] ?? 0) + 1;
    solve(two.lu, re, im);
    return Math.hypot(re[output] ?? 0, im[output] ?? 0);
  };
  const source = carriedFrom(0, two.ports[0]);
  const own = source ** 2 / two.ends[0];
  const shares: NoiseShare[] = [];
  for (let row = 0; row < net.parts; row += 1) {
    const name = net.partNames[row] ?? '';
    // A transistor's slopes are no resistors: they make no noise. The closing resistors don't count.
    if (net.kind[row] !== RESISTOR || /^(r_pi|r_o|R_s$|R_L$)/.test(name)) continue;
    const ohms = net.value[row] ?? 1;
    const carried = carriedFrom(net.a[row] ?? 0, net.b[row] ?? 0);
    const share = ((temperature / NOISE_T0) * carried ** 2) / ohms / own;
    shares.push({ name, ohms, current: null, carried, share });
  }
  for (const { name, from, to, current } of shots) {
    const carried = carriedFrom(from, to);
    const share = ((current / (2 * VOLT_PER_KELVIN * NOISE_T0)) * carried ** 2) / own;
    shares.push({ name, ohms: null, current, carried, share });
  }
  return { carried: source, shares };
}
