import type { InputField } from '../fields/kinds.ts';
import { noResults, type Problem, type Stage } from '../fields/stage.ts';
import type { Rig } from './document.ts';
import { enter, type Reader } from './enter.ts';
import { keep } from './keep.ts';
import type { Worked, WorkedInput, WorkedStage } from './worked.ts';

/** Works a rig; called again, it runs only the stages that a change can reach. */
export type Evaluate = (rig: Rig) => Worked;

interface Slot {
  readonly picked: readonly unknown[];
  readonly worked: WorkedStage;
}

/** A field that a stage reads, looked up once and for all. */
interface Read {
  readonly name: string;
  readonly path: string;
  readonly owner: string;
  readonly part: string;
  /** The stage can do without it. */
  readonly blank: boolean;
  readonly isInput: boolean;
  /** A reading not understood is one not taken: nothing stands in for it, and the rest goes on. */
  readonly isReading: boolean;
}

/** A stage, what it reads, and the paths of its own inputs. */
interface Plan {
  readonly stage: Stage;
  readonly reads: readonly Read[];
  readonly own: readonly string[];
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
  const fieldsByPath = new Map<string, InputField>();
  // Powers are typed as volts, too: across which field, and whose meaning hangs on it.
  const readAcross = new Map<string, string[]>();
  for (const { fields } of stages) {
    for (const [key, field] of Object.entries(fields.inputs)) {
      const path = `${fields.key}.${key}`;
      fieldsByPath.set(path, field);
      if (field.kind !== 'quantity' || typeof field.across !== 'string') continue;
      readAcross.set(field.across, [...(readAcross.get(field.across) ?? []), path]);
    }
  }

  let entries: Rig['entries'] = {};
  let inputs: Readonly<Record<string, WorkedInput>> | null = null;

  /** Understands what is typed; what was understood before and hangs on nothing new stays. */
  const understand = (rig: Rig): Readonly<Record<string, WorkedInput>> => {
    const old = inputs;
    const fresh = old === null ? {} : { ...old };
    const open = old === null ? [...fieldsByPath.keys()] : changedPaths(entries, rig.entries);
    const done = new Set<string>();
    const visit = (path: string): WorkedInput | undefined => {
      const field = fieldsByPath.get(path);
      if (!field) return undefined;
      if (done.has(path) || (old !== null && !open.includes(path))) return fresh[path];
      done.add(path);
      const input = keep(
        old?.[path],
        enter(path, field, rig.entries[path], acrossOf(field, visit), read),
      );
      fresh[path] = input;
      return input;
    };
    for (let at = 0; at < open.length; at += 1) {
      const path = open[at] ?? '';
      const before = old?.[path]?.value;
      const after = visit(path)?.value;
      if (old === null || Object.is(before, after)) continue;
      for (const reader of readAcross.get(path) ?? []) {
        done.delete(reader);
        open.push(reader);
      }
    }
    entries = rig.entries;
    inputs = done.size === 0 && old !== null ? old : fresh;
    return inputs;
  };

  const plans = stages.map((stage) => planOf(stage, fieldsByPath));

  return (rig) => {
    const inputs = understand(rig);
    const workedStages: Record<string, WorkedStage> = {};
    const worked: Worked = { inputs, stages: workedStages };
    for (const plan of plans) {
      const { key } = plan.stage.fields;
      const memory: unknown[] = [];
      for (const read of plan.reads) memory.push(pick(worked, read));
      for (const path of plan.own) memory.push(inputs[path]?.problem);
      const slot = slots.get(key);
      // What a waiting stage says depends on its root, which is none of its picks: said anew each time.
      if (slot && slot.worked.waitsFor === null && sameList(slot.picked, memory)) {
        workedStages[key] = slot.worked;
        continue;
      }
      const stageWorked = settle(slot?.worked, run(plan, worked, memory, ran));
      slots.set(key, { picked: memory, worked: stageWorked });
      workedStages[key] = stageWorked;
    }
    return worked;
  };
}

/** Paths whose entries are not the same objects. */
function changedPaths(old: Rig['entries'], fresh: Rig['entries']): string[] {
  const out = Object.keys(fresh).filter((path) => fresh[path] !== old[path]);
  for (const path of Object.keys(old)) if (!(path in fresh)) out.push(path);
  return out;
}

function planOf(stage: Stage, fieldsByPath: ReadonlyMap<string, InputField>): Plan {
  const { key, inputs } = stage.fields;
  return {
    stage,
    reads: Object.entries(stage.reads).map(([name, readPath]) => {
      const path = bare(readPath);
      const [owner = '', part = ''] = path.split('.');
      const field = fieldsByPath.get(path);
      return {
        name,
        path,
        owner,
        part,
        blank: path !== readPath,
        isInput: field !== undefined,
        isReading: field?.kind === 'quantity' && field.reading === true,
      };
    }),
    own: Object.keys(inputs).map((name) => `${key}.${name}`),
  };
}

/** Marks a value that was typed but cannot be used. */
const WRONG = Symbol('wrong');

function pick(worked: Worked, { path, owner, part, isInput, isReading }: Read): unknown {
  if (!isInput) return worked.stages[owner]?.results[part] ?? null;
  const input = worked.inputs[path];
  if (!input?.wrong) return input?.value ?? null;
  return isReading ? null : WRONG;
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

/** Runs a stage with what was picked for it, or says what it waits for. */
function run(
  { stage, reads, own }: Plan,
  worked: Worked,
  picked: readonly unknown[],
  ran: (key: string) => void,
): WorkedStage {
  const { key } = stage.fields;
  const entryProblems: Problem[] = [];
  for (const path of own) {
    const problem = worked.inputs[path]?.problem;
    if (problem) entryProblems.push(problem);
  }
  const seen: Record<string, unknown> = {};
  for (const [i, { name, path, blank }] of reads.entries()) {
    const value = picked[i];
    if (value === WRONG || (value === null && !blank)) {
      return {
        key,
        results: noResults(stage.fields),
        origins: {},
        ...wait(worked, key, path, entryProblems),
      };
    }
    seen[name] = value;
  }
  ran(key);
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
  const results: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(fresh.results)) {
    results[name] = keep(old.results[name], value);
  }
  return keep(old, { ...fresh, results });
}

function sameList(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i += 1) if (!Object.is(a[i], b[i])) return false;
  return true;
}
