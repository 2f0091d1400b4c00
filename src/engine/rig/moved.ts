import type { Field } from '../fields/kinds.ts';
import { format } from '../quantity/format.ts';
import { fieldAt } from './fieldAt.ts';
import type { Worked } from './worked.ts';

/** One result that a change has moved, at the digits that are shown. */
export interface Move {
  readonly path: string;
  readonly label: string;
  /** As shown before and after; empty where there was no value, or where it has no single figure. */
  readonly before: string;
  readonly after: string;
}

/** What differs between two worked rigs, in the order of the stages. */
export function moved(before: Worked, after: Worked): readonly Move[] {
  const moves: Move[] = [];
  for (const [key, stage] of Object.entries(after.stages)) {
    const old = before.stages[key];
    if (!old || old === stage) continue;
    for (const [name, value] of Object.entries(stage.results)) {
      const path = `${key}.${name}`;
      const field = fieldAt(path);
      const was = old.results[name];
      if (!field || field.kind === 'model' || field.kind === 'curve' || Object.is(was, value))
        continue;
      const [from, to] = [shown(field, was), shown(field, value)];
      if (from === to && field.kind !== 'table' && field.kind !== 'list') continue;
      moves.push({ path, label: field.label, before: from, after: to });
    }
  }
  return moves;
}

/** A single result as shown on the sheet; empty for tables, lists and what has no value. */
export function shown(field: Field, value: unknown): string {
  if (value === null || value === undefined) return '';
  if (field.kind === 'quantity' && typeof value === 'number') {
    return format(value, field.unit, field.digits);
  }
  if (field.kind === 'count') return String(value);
  if (field.kind === 'pasted') return linesOf(String(value));
  if (field.kind === 'choice') return field.options[String(value)] ?? String(value);
  return field.kind === 'words' ? String(value) : '';
}

/** How much text there is; itself where it is short. */
function linesOf(text: string): string {
  const lines = text.split(/\r\n|\r|\n/).filter((line) => line.trim() !== '');
  if (lines.length === 1 && text.length <= 60) return text.trim();
  return `${lines.length} ${lines.length === 1 ? 'line' : 'lines'}`;
}
