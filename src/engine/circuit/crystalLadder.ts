import type { Couplings } from './couplings.ts';
import { type Crystal, frequencyAtReactance } from './crystal.ts';
import type { Ladder } from './ladder.ts';

/** What a ladder is made with besides its crystals. */
export interface Fittings {
  /** Quality factor of the capacitors; Infinity for lossless. */
  readonly capacitorQ: number;
  /** Stray capacitance to ground at each junction, F: part of the exact coupling capacitance. */
  readonly stray: number;
}

/**
 * A ladder of alike crystals by the reactance method, with exact values.
 *
 * Coupling reactance h·k; mesh i carries the sum a(i) of the k on its two sides; the mesh with the
 * largest sum needs no series capacitor, each other one of reactance h(a − a(i)); ends h/q.
 * Capacitor reactances are set at the frequency where the meshes resonate, X = h·a.
 *
 * Where p crystals stand side by side their reactance is X/p: the coupling between positions of p
 * and p′ crystals then is h·k/√(p·p′), a(i) p times the sum of what is on its two sides, the series
 * capacitor h(a − a(i))/p and an end h/(q·p).
 *
 * @param h half the span of the crystal's reactance over the passband, Ω
 */
export function crystalLadder(
  crystal: Crystal,
  couplings: Couplings,
  h: number,
  { capacitorQ, stray }: Fittings,
): Ladder {
  const { qSource, qLoad } = couplings;
  const n = couplings.k.length + 1;
  const sums = meshSums(couplings);
  const largest = Math.max(...sums);
  const w = 2 * Math.PI * frequencyAtReactance(crystal, h * largest);
  const p = (i: number) => crystalsAt(couplings, i);
  const each = (value: (p: number) => number) => Float64Array.from(sums, (_, i) => value(p(i)));
  return {
    lm: each((p) => crystal.lm / p),
    cm: each((p) => crystal.cm * p),
    rm: each((p) => crystal.rm / p),
    c0: each((p) => crystal.c0 * p),
    series: Float64Array.from(sums, (a, i) => p(i) * seriesFor(w, h, largest - a)),
    coupling: Float64Array.from(sharedCouplings(couplings), (one) => 1 / (w * h * one) - stray),
    stray: new Float64Array(n - 1).fill(stray),
    capacitorQ,
    endC: [0, 0],
    leakage: 0,
    source: [h / (qSource * p(0)), 0],
    load: [h / (qLoad * p(n - 1)), 0],
  };
}

/** How many crystals stand side by side at a position. */
export const crystalsAt = ({ parallel }: Couplings, i: number): number => parallel?.[i] ?? 1;

/** The couplings as parts of h: k, over the root of the numbers of crystals on both sides. */
export const sharedCouplings = (couplings: Couplings): number[] =>
  couplings.k.map((k, i) => k / Math.sqrt(crystalsAt(couplings, i) * crystalsAt(couplings, i + 1)));

/** The sum of the couplings on the two sides of each mesh, against its own crystals' reactance. */
export function meshSums(couplings: Couplings): number[] {
  const shared = sharedCouplings(couplings);
  return Array.from(
    { length: shared.length + 1 },
    (_, i) => crystalsAt(couplings, i) * ((shared[i - 1] ?? 0) + (shared[i] ?? 0)),
  );
}

/** The largest of the mesh sums. */
export const largestSum = (couplings: Couplings): number => Math.max(...meshSums(couplings));

/** The series capacitor of a mesh, 0 where rounding is all that is left of the difference. */
function seriesFor(w: number, h: number, less: number): number {
  return less < 1e-9 ? 0 : 1 / (w * h * less);
}
