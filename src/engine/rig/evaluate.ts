import type { InputField } from '../fields/kinds.ts';
import { noResults, type Problem, type Stage } from '../fields/stage.ts';
import type { Entry, Rig } from './document.ts';
import { enter, type Reader } from './enter.ts';
import { keep } from './keep.ts';
import { valueAt, type Worked, type WorkedInput, type WorkedStage } from './worked.ts';

/** Works a rig; called again, it runs only the stages that a change can reach. */
export type Evaluate = (rig: Rig) => Worked;

interface Slot {
  readonly picked: readonly unknown[];
  readonly worked: WorkedStage;
}

interface EntrySlot {
  readonly entry: Entry | undefined;
  readonly across: number | undefined;
  readonly input: WorkedInput;
}

/**
 * An evaluator over an ordered list of stages, with a one-slot memory for each stage and entry.
 * `ran` is told of each stage that was run.
 */
export function createEvaluator(
  stages: readonly Stage[],
  read?: Reader,
  ran: (key: string) => void = () => {},
): Evaluate {
  const slots = new Map<string, Slot>();
  const entries = new Map<string, EntrySlot>();

  const understand = (rig: Rig): Record<string, WorkedInput> => {
    const inputs: Record<string, WorkedInput> = {};
    const visit = (path: string, field: InputField): WorkedInput => {
      const seen = inputs[path];
      if (seen) return seen;
      const across = acrossOf(field, visitByPath);
      const entry = rig.entries[path];
      const old = entries.get(path);
      const input =
        old && old.entry === entry && old.across === across
          ? old.input
          : keep(old?.input, enter(path, field, entry, across, read));
      entries.set(path, { entry, across, input });
      inputs[path] = input;
      return input;
    };
    const visitByPath = (path: string): WorkedInput | undefined => {
      const field = fieldsByPath.get(path);
      return field ? visit(path, field) : undefined;
    };
    for (const [path, field] of fieldsByPath) visit(path, field);
    return inputs;
  };

  const fieldsByPath = new Map<string, InputField>();
  for (const { fields } of stages) {
    for (const [key, field] of Object.entries(fields.inputs)) {
      fieldsByPath.set(`${fields.key}.${key}`, field);
    }
  }

  return (rig) => {
    const inputs = understand(rig);
    const workedStages: Record<string, WorkedStage> = {};
    const worked: Worked = { inputs, stages: workedStages };
    for (const stage of stages) {
      const key = stage.fields.key;
      const picked = Object.values(stage.reads).map((path) =>
        pick(worked, path, fieldsByPath.get(bare(path))),
      );
      const own = Object.keys(stage.fields.inputs).map((k) => inputs[`${key}.${k}`]);
      const memory = [...picked, ...own.map((input) => input?.problem)];
      const slot = slots.get(key);
      // What a waiting stage says depends on its root, which is none of its picks: said anew each time.
      if (slot && slot.worked.waitsFor === null && sameList(slot.picked, memory)) {
        workedStages[key] = slot.worked;
        continue;
      }
      const fresh = run(stage, worked, picked, own, () => ran(key));
      const stageWorked = settle(slot?.worked, fresh);
      slots.set(key, { picked: memory, worked: stageWorked });
      workedStages[key] = stageWorked;
    }
    return worked;
  };
}

/** Marks a value that was typed but cannot be used. */
const WRONG = Symbol('wrong');

function pick(worked: Worked, readPath: string, field: InputField | undefined): unknown {
  const path = bare(readPath);
  if (!worked.inputs[path]?.wrong) return valueAt(worked, path);
  // A reading not understood is one not taken: nothing stands in for it, and the rest goes on.
  return field?.kind === 'quantity' && field.reading ? null : WRONG;
}

const bare = (readPath: string) => (readPath.endsWith('?') ? readPath.slice(0, -1) : readPath);

function acrossOf(
  field: InputField,
  visit: (path: string) => WorkedInput | undefined,
): number | undefined {
  if (field.kind !== 'quantity' || field.across === undefined) return undefined;
  if (typeof field.across === 'number') return field.across;
  const value = visit(field.across)?.value;
  return typeof value === 'number' ? value : undefined;
}

/** Runs a stage, or says what it waits for. */
function run(
  stage: Stage,
  worked: Worked,
  picked: readonly unknown[],
  own: readonly (WorkedInput | undefined)[],
  ran: () => void,
): WorkedStage {
  const key = stage.fields.key;
  const entryProblems = own.flatMap((input) => (input?.problem ? [input.problem] : []));
  const paths = Object.values(stage.reads);
  const missing = paths.find(
    (p, i) => picked[i] === WRONG || (picked[i] === null && p !== `${bare(p)}?`),
  );
  if (missing !== undefined) {
    return {
      key,
      results: noResults(stage.fields),
      origins: {},
      ...wait(worked, key, bare(missing), entryProblems),
    };
  }
  ran();
  const seen = Object.fromEntries(Object.keys(stage.reads).map((name, i) => [name, picked[i]]));
  const { results, problems, origins } = stage.work(seen);
  return {
    key,
    results,
    origins: origins ?? {},
    problems: [...entryProblems, ...problems],
    waitsFor: null,
    root: null,
  };
}

/** Names the root: the field that has to be put right before this stage can answer. */
function wait(
  worked: Worked,
  key: string,
  path: string,
  entryProblems: readonly Problem[],
): Pick<WorkedStage, 'problems' | 'waitsFor' | 'root'> {
  const [owner = ''] = path.split('.');
  if (owner === key) {
    const own = worked.inputs[path]?.problem;
    const blank: Problem = { field: path, weight: 'stops', says: 'This is needed first.' };
    const problems = own ? entryProblems : [...entryProblems, blank];
    return { waitsFor: key, root: own ?? blank, problems };
  }
  const source = worked.stages[owner];
  const entry = worked.inputs[path]?.problem;
  const root = entry ?? source?.root ?? source?.problems.find((p) => p.weight === 'stops') ?? null;
  const waitsFor = entry ? owner : (source?.waitsFor ?? owner);
  return {
    waitsFor,
    root,
    problems: [
      ...entryProblems,
      {
        field: root?.field ?? path,
        weight: 'stops',
        says: `Waits for ${titleCase(waitsFor)}: ${root?.says ?? 'a figure is missing there.'}`,
      },
    ],
  };
}

const titleCase = (key: string) => key.charAt(0).toUpperCase() + key.slice(1);

/** Keeps the old objects wherever the new ones are equal. */
function settle(old: WorkedStage | undefined, fresh: WorkedStage): WorkedStage {
  if (!old) return fresh;
  const results = Object.fromEntries(
    Object.entries(fresh.results).map(([k, v]) => [k, keep(old.results[k], v)]),
  );
  return keep(old, { ...fresh, results });
}

function sameList(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((v, i) => Object.is(v, b[i]));
}
