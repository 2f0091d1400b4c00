import {
  type Crystal,
  crystalReactance,
  frequencyAtReactance,
  seriesResonance,
} from './crystal.ts';
import type { Ladder } from './ladder.ts';

/**
 * How the meshes of real, unlike crystals are brought together:
 * `design`: only by the aligning capacitors that the design has anyway;
 * `each`: by an aligning capacitor for each mesh, worked for its own crystal;
 * `none`: not at all, without any aligning capacitor, so that the crystals' own differences must do.
 */
export type Aligning = 'design' | 'each' | 'none';

/**
 * A ladder with its own crystal at each position, and the aligning capacitors that go with them.
 * Couplings, strays, ends and losses stay those of the design.
 *
 * With `each`, every mesh is brought to the frequency of the one that needs it least: the mesh that
 * by itself resonates highest (in the shunt form the node that resonates lowest) gets no capacitor.
 *
 * @param design a ladder as `crystalLadder` gives it, with exact or with fitted couplings
 * @param crystals one for each position, from source to load
 * @param round what is really fitted for a capacitance (F); may answer 0 for one not worth fitting.
 *   Only asked with `each`
 */
export function alignedLadder(
  design: Ladder,
  crystals: readonly Crystal[],
  aligning: Aligning,
  round: (exact: number) => number = (exact) => exact,
): Ladder {
  const n = design.lm.length;
  if (crystals.length !== n) throw new RangeError(`${crystals.length} crystals for ${n} positions`);
  const of = (key: keyof Crystal) => Float64Array.from(crystals, (one) => one[key]);
  return {
    ...design,
    lm: of('lm'),
    cm: of('cm'),
    rm: of('rm'),
    c0: of('c0'),
    series:
      aligning === 'design'
        ? design.series
        : aligning === 'none'
          ? new Float64Array(n).fill(commonCapacitance(design))
          : aligningCapacitors(design, crystals).map((c) => (c === 0 ? 0 : round(c))),
  };
}

/** Less than this part of the mesh's own reactance is rounding, not a difference. */
const NOTHING = 1e-9;

/**
 * The aligning capacitor of each position, F: 0 where none is needed.
 * Series form: in series, X(f) − 1/(ωC) = reactance of the couplings on both sides, at one f for all.
 * Shunt form: across the crystal, −B(f) = ωC + susceptance of all capacitors at the node. What the
 * design has across every crystal alike stays.
 */
export function aligningCapacitors(design: Ladder, crystals: readonly Crystal[]): Float64Array {
  const own = crystals.map((_, i) => meshFrequency(design, crystals, i));
  const shunt = design.form === 'shunt';
  const common = commonCapacitance(design);
  const f = shunt ? Math.min(...own) : Math.max(...own);
  const w = 2 * Math.PI * f;
  return Float64Array.from(crystals, (crystal, i) => {
    if (own[i] === f) return common;
    const x = crystalReactance(crystal, f);
    if (shunt) {
      const c = 1 / (w * x) - nodeCapacitance(design, i);
      return common + (c * w * x < NOTHING ? 0 : c);
    }
    const less = x - couplingReactance(design, i, w);
    return less < NOTHING * x ? 0 : 1 / (w * less);
  });
}

/** Where a mesh resonates by itself, its neighbours held open (shunt form: shorted), Hz. */
export function meshFrequency(design: Ladder, crystals: readonly Crystal[], i: number): number {
  const crystal = crystals[i];
  if (!crystal) throw new RangeError(`no crystal ${i}`);
  let f = seriesResonance(crystal);
  // The capacitors' reactance changes by parts in ten thousand: each pass gains four digits.
  for (let pass = 0; pass < 4; pass += 1) {
    const w = 2 * Math.PI * f;
    const x =
      design.form === 'shunt'
        ? 1 / (w * nodeCapacitance(design, i))
        : couplingReactance(design, i, w);
    f = frequencyAtReactance(crystal, x);
  }
  return f;
}

/** Reactance of the coupling capacitors on the two sides of a mesh in series, Ω. */
function couplingReactance({ coupling, stray }: Ladder, i: number, w: number): number {
  let x = 0;
  for (const j of [i - 1, i]) {
    const c = coupling[j];
    if (c !== undefined) x += 1 / (w * (c + (stray[j] ?? 0)));
  }
  return x;
}

/** What lies from a node to ground with its neighbours shorted, the crystal left out, F. */
const nodeCapacitance = (design: Ladder, i: number): number => {
  const { coupling, stray, endC } = design;
  const ends = (i === 0 ? endC[0] : 0) + (i === coupling.length ? endC[1] : 0);
  const beside = (coupling[i - 1] ?? 0) + (coupling[i] ?? 0);
  return beside + (stray[i] ?? 0) + ends + commonCapacitance(design);
};

/** What a design of the shunt form has across each of its crystals, F: no matter of aligning. */
export const commonCapacitance = ({ form, series }: Ladder): number =>
  form === 'shunt' ? Math.min(...series) : 0;
