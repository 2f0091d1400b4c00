import type { Stage } from '../../engine/fields/stage.ts';
import { guestsOf, leafOf, stageOf as stageOfLeaf } from '../../engine/rig/leaves.ts';
import { stages } from '../../engine/rig/stages.ts';
import { workingCount } from '../../engine/rig/unfold.ts';
import type { Worked } from '../../engine/rig/worked.ts';

/** One working of a stage: its path and, in tables, lists and curves, which entry. */
export interface WorkingKey {
  readonly path: string;
  readonly index: number;
}

/** The stage with a key. */
export const stageOf = (key: string): Stage | undefined => stages.find((s) => s.fields.key === key);

/**
 * The workings of a leaf for the board: one for each result on it that has a value. Sums come in
 * their order, what is only said in words behind them.
 */
export function workingsOf(worked: Worked, leaf: string): readonly WorkingKey[] {
  const all = [...guestsOf(leaf), stageOfLeaf(leaf)].flatMap((key) =>
    workingsOfStage(worked, key).filter(({ path }) => leafOf(path) === leaf),
  );
  return [...all.filter(({ path }) => isSum(path)), ...all.filter(({ path }) => !isSum(path))];
}

const isSum = (path: string): boolean => {
  const kind = fieldOf(path)?.kind;
  return kind !== 'words' && kind !== 'choice';
};

/** The field of a result, or of a column of it. */
function fieldOf(path: string) {
  const [key = '', name = '', part = ''] = path.split('.');
  const field = stageOf(key)?.fields.results[name];
  if (field?.kind === 'table') return field.columns[part];
  return field?.kind === 'curve' ? field.of[part] : field;
}

function workingsOfStage(worked: Worked, key: string): readonly WorkingKey[] {
  const stage = stageOf(key);
  if (!stage) return [];
  return Object.keys(stage.workings).flatMap((name) => {
    const count = workingCount(worked, stage, name);
    if (count === 0) return [];
    const [head = ''] = name.split('.');
    const index = stage.fields.results[head]?.kind === 'curve' ? Math.floor(count / 2) : 0;
    return [{ path: `${key}.${name}`, index }];
  });
}

/** What a working's result is called: `Coupling capacitors: Coupling` for a column. */
export function labelOf(path: string): string {
  const [key = '', name = '', part] = path.split('.');
  const field = stageOf(key)?.fields.results[name];
  if (!field) return path;
  if (field.kind === 'table') return `${field.label}: ${field.columns[part ?? '']?.label ?? ''}`;
  if (field.kind === 'curve') return `${field.label}: ${field.of[part ?? '']?.label ?? ''}`;
  return field.label;
}
