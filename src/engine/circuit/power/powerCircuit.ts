import { E_SIZE, type Surroundings, Z_SIZE } from './balanceStep.ts';
import type { GummelPoon } from './gummelPoon.ts';

/** What a collector works into: Re and Im for each harmonic from 0, the entry of 0 unused. */
export interface CollectorNetwork {
  /** Impedance that the network shows, Ω. */
  readonly input: Float64Array;
  /** Voltage at the load over the current into the network, Ω. */
  readonly transfer: Float64Array;
  /** Load, Ω. */
  readonly load: number;
}

/**
 * Two sides in push-pull, alike and driven against each other: each needs only be solved with what
 * it sees, and the other does the same half a period later.
 */
export interface PushPull {
  /** What even harmonics find between each collector and the bypassed centre tap, H. */
  readonly leakage: number;
  /** Part of the collector's even harmonics that the two sides differ by, and the network gets. */
  readonly unlike: number;
}

/**
 * A transistor in common emitter, driven at the base, fed through a choke or a transformer's
 * winding; or one side of a push-pull stage, whose network is seen from collector to collector.
 */
export interface PowerCircuit {
  /** Hz. */
  readonly frequency: number;
  readonly model: GummelPoon;
  /** V. */
  readonly supply: number;
  /**
   * The winding between supply and collector: inductance H, resistance Ω above 0; and what the
   * supply itself has for direct current, Ω, if anything.
   */
  readonly feed: { readonly l: number; readonly r: number; readonly sag?: number };
  /** Capacitance from collector to ground, F. */
  readonly stray?: number;
  readonly pushPull?: PushPull;
  /** Between emitter and ground, nothing across it: resistance Ω, inductance H. */
  readonly emitter: { readonly r: number; readonly l: number };
  /**
   * Bias as the base sees it for direct current: open voltage V, resistance Ω; and the resistance
   * that its path puts from base to ground for the signal, Ω: Infinity through a winding or choke.
   */
  readonly bias: { readonly voltage: number; readonly resistance: number; readonly across: number };
  /** Resistor from base to ground, Ω; Infinity for none. */
  readonly shunt: number;
  /** Impedance of the driver at the base, Ω: Re and Im for each harmonic, the entry of 0 unused. */
  readonly driver: Float64Array;
  readonly network: CollectorNetwork;
}

/** Complex number that the little functions below write to. */
const out = { re: 0, im: 0 };

/**
 * The circuit round the inner transistor at every harmonic; sources for a drive.
 *
 * With b, e, c the impedances from base, emitter and collector outwards (the transistor's own
 * resistances included): z11 = b + e, z12 = z21 = b, z22 = b + c.
 *
 * @param drive open voltage of the driver at the fundamental, V peak
 * @param around receives z and e for as many harmonics as it has room for
 */
export function powerSurroundings(
  circuit: PowerCircuit,
  drive: number,
  around: { readonly z: Float64Array; readonly e: Float64Array },
): Surroundings {
  const { frequency, model, supply, emitter } = circuit;
  const { z, e } = around;
  const harmonics = z.length / Z_SIZE - 1;
  e.fill(0);
  for (let k = 0; k <= harmonics; k += 1) {
    const w = 2 * Math.PI * frequency * k;
    const er = model.re + emitter.r;
    const ei = w * emitter.l;
    const share = baseSide(circuit, k);
    const br = model.rb + out.re;
    const bi = out.im;
    const o = k * Z_SIZE;
    z[o] = br + er;
    z[o + 1] = bi + ei;
    z[o + 2] = br;
    z[o + 3] = bi;
    z[o + 4] = br;
    z[o + 5] = bi;
    collectorSide(circuit, k);
    z[o + 6] = br + model.rc + out.re;
    z[o + 7] = bi + out.im;
    const s = k * E_SIZE;
    if (k === 0) {
      e[s] = share.re;
      e[s + 2] = share.re - supply;
    } else if (k === 1) {
      e[s] = drive * share.re;
      e[s + 1] = drive * share.im;
      e[s + 2] = drive * share.re;
      e[s + 3] = drive * share.im;
    }
  }
  return { frequency, z, e };
}

/** Room for the surroundings of a circuit. */
export const blankSurroundings = (harmonics: number) => ({
  z: new Float64Array(Z_SIZE * (harmonics + 1)),
  e: new Float64Array(E_SIZE * (harmonics + 1)),
});

/**
 * Impedance outwards from the base terminal at a harmonic, to `out`.
 *
 * @return open voltage at the base: for direct current in V, else over the driver's open voltage
 */
function baseSide({ bias, shunt, driver }: PowerCircuit, k: number) {
  if (k === 0) {
    const share = 1 / (1 + bias.resistance / shunt);
    out.re = bias.resistance * share;
    out.im = 0;
    return { re: bias.voltage * share, im: 0 };
  }
  // share = 1/(1 + z·g), and z·share in parallel.
  const g = 1 / shunt + 1 / bias.across;
  const zr = driver[2 * k] ?? 0;
  const zi = driver[2 * k + 1] ?? 0;
  const dr = 1 + zr * g;
  const di = zi * g;
  const size = dr * dr + di * di;
  const re = dr / size;
  const im = -di / size;
  out.re = zr * re - zi * im;
  out.im = zr * im + zi * re;
  return { re, im };
}

/** How many sides a stage has: powers and direct currents of one count so often. */
export const sidesOf = ({ pushPull }: Pick<PowerCircuit, 'pushPull'>): 1 | 2 => (pushPull ? 2 : 1);

/** Impedance outwards from the collector terminal at a harmonic, to `out`. */
function collectorSide(circuit: PowerCircuit, k: number): void {
  const { feed, pushPull } = circuit;
  if (k === 0) {
    out.re = feed.r + (feed.sag ?? 0);
    out.im = 0;
  } else if (pushPull && k % 2 === 0) besides(circuit, k, pushPull.leakage, 0);
  else besides(circuit, k, feed.l, sidesOf(circuit));
}

/**
 * Feed, stray capacitance and the network's share side by side at a harmonic, to `out`.
 *
 * @param l inductance of the feed, H
 * @param shares sides that the network is shared by; 0 where it isn't there
 */
export function besides(
  { frequency, feed, network, stray = 0 }: PowerCircuit,
  k: number,
  l: number,
  shares: number,
): { readonly re: number; readonly im: number } {
  const w = 2 * Math.PI * frequency * k;
  const feedSize = feed.r * feed.r + (w * l) ** 2;
  let g = feed.r / feedSize;
  let b = w * stray - (w * l) / feedSize;
  if (shares > 0) {
    const nr = network.input[2 * k] ?? 0;
    const ni = network.input[2 * k + 1] ?? 0;
    const size = nr * nr + ni * ni;
    g += (shares * nr) / size;
    b -= (shares * ni) / size;
  }
  const size = g * g + b * b;
  out.re = g / size;
  out.im = -b / size;
  return out;
}
