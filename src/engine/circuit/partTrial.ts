import type { Link, PartChain } from './partChain.ts';

/** What a response is compared with, at the frequencies of a chain. */
export interface Wanted {
  /** dB, as a transducer gain. */
  readonly gain: Float64Array;
  /** How much each frequency counts. */
  readonly weight: Float64Array;
  /** Below this gain, dB, one stopband is as good as another. */
  readonly depth: number;
}

/** Scratch for trying capacitors in a chain: V, I at each frequency as four rows of numbers. */
export interface PartTrial {
  readonly chain: PartChain;
  readonly wanted: Wanted;
  /** The wanted gain with its depth cut off, dB, less what the ends make of the reference. */
  readonly target: Float64Array;
  readonly floor: number;
  /** Source voltage for one ampere in the load as α + β·x, x the immittance of one capacitor. */
  readonly coefficients: Float64Array;
}

const DB = 10 / Math.LN10;

/** Readies a chain for comparing. */
export function partTrial(chain: PartChain, wanted: Wanted): PartTrial {
  const reference = DB * Math.log(4 * chain.source[0] * chain.load[0]);
  return {
    chain,
    wanted,
    target: wanted.gain.map((g) => Math.max(g, wanted.depth) - reference),
    floor: wanted.depth - reference,
    coefficients: new Float64Array(4 * chain.w.length),
  };
}

/** The row [1, Zs] of the source, into `row`. */
export function fromSource({ chain }: PartTrial, row: Float64Array): void {
  const size = chain.w.length;
  row.fill(1, 0, size);
  row.fill(0, size, 2 * size);
  row.fill(chain.source[0], 2 * size, 3 * size);
  row.fill(chain.source[1], 3 * size);
}

/** The column [Zl; 1] of the load, into `column`. */
export function fromLoad({ chain }: PartTrial, column: Float64Array): void {
  const size = chain.w.length;
  column.fill(chain.load[0], 0, size);
  column.fill(chain.load[1], size, 2 * size);
  column.fill(1, 2 * size, 3 * size);
  column.fill(0, 3 * size);
}

/**
 * Takes one end past a link: `from` into `to`, which may be the same.
 *
 * @param c the link's capacitor, F; 0 where it has none
 * @param onwards from the source towards the load; else back from the load
 */
export function past(
  { chain }: PartTrial,
  { shunt, re, im }: Link,
  c: number,
  from: Float64Array,
  to: Float64Array,
  onwards: boolean,
): void {
  const { w, tan } = chain;
  const size = w.length;
  // A row goes through a shunt arm as a column does through a series arm, and the other way round.
  const adds = shunt === onwards ? 0 : 2 * size;
  const by = 2 * size - adds;
  for (let p = 0; p < size; p += 1) {
    let r = re[p] as number;
    let x = im[p] as number;
    if (c > 0) {
      const b = (w[p] as number) * c;
      r += shunt ? b * tan : tan / b;
      x += shunt ? b : -1 / b;
    }
    const br = from[by + p] as number;
    const bi = from[by + size + p] as number;
    to[by + p] = br;
    to[by + size + p] = bi;
    to[adds + p] = (from[adds + p] as number) + r * br - x * bi;
    to[adds + size + p] = (from[adds + size + p] as number) + r * bi + x * br;
  }
}

/**
 * Readies the trial of one link's capacitor: everything else goes into α and β.
 *
 * @param row from the source up to the link
 * @param column from the load back to the link
 */
export function openAt(
  { chain, coefficients }: PartTrial,
  { shunt, re, im }: Link,
  row: Float64Array,
  column: Float64Array,
): void {
  const size = chain.w.length;
  for (let p = 0; p < size; p += 1) {
    const ar = row[p] as number;
    const ai = row[size + p] as number;
    const br = row[2 * size + p] as number;
    const bi = row[3 * size + p] as number;
    const vr = column[p] as number;
    const vi = column[size + p] as number;
    const ir = column[2 * size + p] as number;
    const ii = column[3 * size + p] as number;
    // Shunt: β = b·V; series: β = a·I. α is a·V + b·I and what stays of the arm times β.
    const gr = shunt ? br * vr - bi * vi : ar * ir - ai * ii;
    const gi = shunt ? br * vi + bi * vr : ar * ii + ai * ir;
    const r = re[p] as number;
    const x = im[p] as number;
    coefficients[p] = ar * vr - ai * vi + br * ir - bi * ii + r * gr - x * gi;
    coefficients[size + p] = ar * vi + ai * vr + br * ii + bi * ir + r * gi + x * gr;
    coefficients[2 * size + p] = gr;
    coefficients[3 * size + p] = gi;
  }
}

/**
 * Sum of the weighted squares of the departure, dB², with a value put in for the capacitor that
 * `openAt` left open; gives up where it goes past `least`.
 */
export function departureWith(
  { chain, wanted, target, floor, coefficients }: PartTrial,
  shunt: boolean,
  c: number,
  least: number,
): number {
  const { w, tan } = chain;
  const size = w.length;
  let sum = 0;
  for (let p = 0; p < size; p += 1) {
    let r = 0;
    let x = 0;
    if (c > 0) {
      const b = (w[p] as number) * c;
      r = shunt ? b * tan : tan / b;
      x = shunt ? b : -1 / b;
    }
    const gr = coefficients[2 * size + p] as number;
    const gi = coefficients[3 * size + p] as number;
    const er = (coefficients[p] as number) + r * gr - x * gi;
    const ei = (coefficients[size + p] as number) + r * gi + x * gr;
    const gain = -DB * Math.log(er * er + ei * ei);
    const off = (gain > floor ? gain : floor) - (target[p] as number);
    sum += (wanted.weight[p] as number) * off * off;
    if (sum > least) return Number.POSITIVE_INFINITY;
  }
  return sum;
}
