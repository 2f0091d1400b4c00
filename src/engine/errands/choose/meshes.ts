import { commonCapacitance } from '../../circuit/alignedLadder.ts';
import {
  type Crystal,
  crystalReactance,
  frequencyAtReactance,
  seriesResonance,
} from '../../circuit/crystal.ts';
import type { Ladder } from '../../circuit/ladder.ts';
import type { Task } from './task.ts';

/** Where each crystal of a bag would make each mesh resonate, so that nothing is solved twice. */
export interface Meshes {
  /** Hz, crystal after crystal, n positions each. */
  readonly frequency: Float64Array;
  /** Reactance of the couplings of each position (shunt form: susceptance of its node) over ω or
   *  times ω: the reciprocal capacitance, 1/F, or the capacitance, F. */
  readonly own: Float64Array;
}

/** Works out where every crystal of the bag would put every mesh, with the capacitors it will have. */
export function meshesOf({ crystals, design, aligning, doubled }: Task): Meshes {
  const n = design.lm.length;
  const own = Float64Array.from({ length: n }, (_, i) => ownOf(design, i));
  const frequency = new Float64Array(crystals.length * n);
  for (const [c, crystal] of crystals.entries()) {
    const w = 2 * Math.PI * seriesResonance(crystal);
    for (let i = 0; i < n; i += 1) {
      const fixed = aligning === 'design' ? fixedOf(design, i) : 0;
      const all = (own[i] ?? 0) + fixed;
      const p = doubled?.[i] ?? 1;
      // p crystals alike, side by side, have a pth of the reactance of one.
      const x = p * (design.form === 'shunt' ? 1 / (w * all) : all / w);
      frequency[c * n + i] = frequencyAtReactance(crystal, x);
    }
  }
  return { frequency, own };
}

/** The aligning capacitance with which a crystal at a position resonates at f; 0 for none. */
export function aligningFor(design: Ladder, crystal: Crystal, own: number, f: number): number {
  const w = 2 * Math.PI * f;
  const x = crystalReactance(crystal, f);
  const less = design.form === 'shunt' ? 1 / (w * x) - own : x * w - own;
  // A few parts in a million of the mesh are nothing to solder in.
  if (less < 1e-6 * own) return 0;
  return design.form === 'shunt' ? less : 1 / less;
}

/** What is at each position whatever crystal comes there. */
function ownOf(design: Ladder, i: number): number {
  const { form, coupling, stray, endC } = design;
  const left = coupling[i - 1];
  const right = coupling[i];
  if (form === 'shunt') {
    const ends = (i === 0 ? endC[0] : 0) + (right === undefined ? endC[1] : 0);
    return (left ?? 0) + (right ?? 0) + (stray[i] ?? 0) + ends + commonCapacitance(design);
  }
  return (
    (left === undefined ? 0 : 1 / (left + (stray[i - 1] ?? 0))) +
    (right === undefined ? 0 : 1 / (right + (stray[i] ?? 0)))
  );
}

/** The aligning capacitor of the design, as `own` counts it. */
function fixedOf(design: Ladder, i: number): number {
  const c = design.series[i] ?? 0;
  if (design.form === 'shunt') return c - commonCapacitance(design);
  return c === 0 ? 0 : 1 / c;
}
