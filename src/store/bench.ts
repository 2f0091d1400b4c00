import type { Rig } from '../engine/rig/document.ts';
import type { Reader } from '../engine/rig/enter.ts';
import { createEvaluator, type Evaluate } from '../engine/rig/evaluate.ts';
import { type Move, moved } from '../engine/rig/moved.ts';
import { stages } from '../engine/rig/stages.ts';
import type { Worked } from '../engine/rig/worked.ts';

let evaluate: Evaluate = createEvaluator(stages);
let cache = new WeakMap<Rig, Worked>();
let moves = new WeakMap<Rig, { from: Rig; list: readonly Move[] }>();

/** The worked rig of a document; worked once for each document. */
export function workedOf(rig: Rig): Worked {
  const known = cache.get(rig);
  if (known) return known;
  const worked = evaluate(rig);
  cache.set(rig, worked);
  return worked;
}

/** What moved from one document to the next. */
export function movedBetween(from: Rig, to: Rig): readonly Move[] {
  const known = moves.get(to);
  if (known?.from === from) return known.list;
  const list = from === to ? [] : moved(workedOf(from), workedOf(to));
  moves.set(to, { from, list });
  return list;
}

/** Reads entries in another way from now on, such as one that understands whole expressions. */
export function readWith(reader: Reader): void {
  evaluate = createEvaluator(stages, reader);
  cache = new WeakMap();
  moves = new WeakMap();
}
