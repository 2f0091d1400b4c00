import { type PowerCircuit, sidesOf } from './powerCircuit.ts';
import type { PowerState } from './powerState.ts';

/** Where the power of a stage comes from, and where it goes, both sides of it together: W. */
export interface PowerBudget {
  /** From the supply. */
  readonly supply: number;
  /** From the bias source. */
  readonly bias: number;
  /** Out of the driver's terminals, at the fundamental. */
  readonly driver: number;
  /**
   * At the load: at the fundamental, and at all harmonics together; what little two unlike sides
   * leave of the even ones is not counted.
   */
  readonly fundamental: number;
  readonly harmonics: number;
  /** Heat: in the output network, the collector's feed, the transistors, the emitter resistors. */
  readonly network: number;
  readonly feed: number;
  readonly transistor: number;
  readonly emitter: number;
  /** Heat in bias and base resistors, and what the driver takes back at the harmonics. */
  readonly base: number;
}

/** Power in and power out of a stage; the first three make the rest. */
export function powerBudget(circuit: PowerCircuit, state: PowerState): PowerBudget {
  const { supply, feed, emitter, bias, shunt, network, frequency, driver, pushPull } = circuit;
  const sides = sidesOf(circuit);
  const { baseVoltage: vb, collectorVoltage: vc, emitterVoltage: ve, antenna } = state;
  const { baseCurrent: ib, collectorCurrent: ic, emitterCurrent: ie, networkCurrent } = state;
  const biasCurrent = (bias.voltage - (vb[0] ?? 0)) / bias.resistance;
  const across = 1 / shunt + 1 / bias.across;
  let base = bias.resistance * biasCurrent ** 2 + (vb[0] ?? 0) ** 2 / shunt;
  let feedHeat = (feed.r + (feed.sag ?? 0)) * (ic[0] ?? 0) ** 2;
  let taken = 0;
  let harmonics = 0;
  for (let k = 1; 2 * k < vb.length; k += 1) {
    const atBase = squared(vb, k) / 2;
    base += atBase * across;
    if (k > 1) {
      const zr = driver[2 * k] ?? 0;
      const zi = driver[2 * k + 1] ?? 0;
      base += (atBase * zr) / (zr * zr + zi * zi);
    }
    const cancels = pushPull !== undefined && k % 2 === 0;
    const reactance = 2 * Math.PI * frequency * k * (cancels ? pushPull.leakage : feed.l);
    feedHeat += (feed.r * squared(vc, k)) / (2 * (feed.r ** 2 + reactance ** 2));
    if (cancels) continue;
    if (k > 1) harmonics += squared(antenna, k) / (2 * network.load);
    taken += sides * real(vc, networkCurrent, k);
  }
  const fundamental = squared(antenna, 1) / (2 * network.load);
  return {
    supply: sides * supply * (ic[0] ?? 0),
    bias: sides * bias.voltage * biasCurrent,
    // What goes into the base, and into the resistors across it.
    driver: sides * (real(vb, ib, 1) + (squared(vb, 1) / 2) * across),
    fundamental,
    harmonics,
    network: taken - fundamental - harmonics,
    feed: sides * feedHeat,
    transistor: sides * (all(vb, ib) + all(vc, ic) - all(ve, ie)),
    emitter: sides * emitter.r * all(ie, ie),
    base: sides * base,
  };
}

const squared = (v: Float64Array, k: number) => (v[2 * k] ?? 0) ** 2 + (v[2 * k + 1] ?? 0) ** 2;

/** Mean power at one harmonic. */
const real = (v: Float64Array, i: Float64Array, k: number) =>
  ((v[2 * k] ?? 0) * (i[2 * k] ?? 0) + (v[2 * k + 1] ?? 0) * (i[2 * k + 1] ?? 0)) / 2;

/** Mean power at all harmonics and for direct current. */
function all(v: Float64Array, i: Float64Array): number {
  let sum = (v[0] ?? 0) * (i[0] ?? 0);
  for (let k = 1; 2 * k < v.length; k += 1) sum += real(v, i, k);
  return sum;
}
