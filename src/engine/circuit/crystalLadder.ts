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
 * @param h half the span of the crystal's reactance over the passband, Ω
 */
export function crystalLadder(
  crystal: Crystal,
  couplings: Couplings,
  h: number,
  { capacitorQ, stray }: Fittings,
): Ladder {
  const { k, qSource, qLoad } = couplings;
  const n = k.length + 1;
  const sums = meshSums(couplings);
  const largest = Math.max(...sums);
  const w = 2 * Math.PI * frequencyAtReactance(crystal, h * largest);
  const all = (value: number) => new Float64Array(n).fill(value);
  return {
    lm: all(crystal.lm),
    cm: all(crystal.cm),
    rm: all(crystal.rm),
    c0: all(crystal.c0),
    series: Float64Array.from(sums, (a) => seriesFor(w, h, largest - a)),
    coupling: Float64Array.from(k, (one) => 1 / (w * h * one) - stray),
    stray: new Float64Array(n - 1).fill(stray),
    capacitorQ,
    endC: [0, 0],
    leakage: 0,
    source: [h / qSource, 0],
    load: [h / qLoad, 0],
  };
}

/** The sum of the couplings on the two sides of each mesh. */
export function meshSums({ k }: Couplings): number[] {
  return Array.from({ length: k.length + 1 }, (_, i) => (k[i - 1] ?? 0) + (k[i] ?? 0));
}

/** The largest of the mesh sums. */
export const largestSum = (couplings: Couplings): number => Math.max(...meshSums(couplings));

/** The series capacitor of a mesh, 0 where rounding is all that is left of the difference. */
function seriesFor(w: number, h: number, less: number): number {
  return less < 1e-9 ? 0 : 1 / (w * h * less);
}
