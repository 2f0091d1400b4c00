import type { Origin } from '../fields/kinds.ts';
import type { Problem } from '../fields/stage.ts';

/** One input as understood. */
export interface WorkedInput {
  /** As typed; undefined where nothing was. */
  readonly text: string | undefined;
  /** In SI units, or a choice's key; null where blank or not understood. */
  readonly value: number | string | null;
  readonly origin: Origin;
  /** True where something was typed that cannot be used: then `problem` says why. */
  readonly wrong: boolean;
  readonly problem?: Problem;
  /** How the entry was understood, where that is worth a word: "in 50 Ω". */
  readonly note?: string;
}

/** One stage as worked. Results keep their identity as long as they are equal. */
export interface WorkedStage {
  readonly key: string;
  readonly results: Readonly<Record<string, unknown>>;
  readonly origins: Readonly<Record<string, Origin | undefined>>;
  readonly problems: readonly Problem[];
  /** The stage whose answer this one waits for, if it could not be worked. */
  readonly waitsFor: string | null;
  /** What has to be put right there first, in its own words; null unless it waits. */
  readonly root: Problem | null;
}

/** The worked rig: what the evaluator makes of a document. */
export interface Worked {
  readonly inputs: Readonly<Record<string, WorkedInput>>;
  readonly stages: Readonly<Record<string, WorkedStage>>;
}

/** Value of an input or result by path; null where there is none. */
export function valueAt(worked: Worked, path: string): unknown {
  const input = worked.inputs[path];
  if (input) return input.value;
  const [stage = '', key = ''] = path.split('.');
  return worked.stages[stage]?.results[key] ?? null;
}

/** Where the value at a path came from. */
export function originAt(worked: Worked, path: string): Origin {
  const input = worked.inputs[path];
  if (input) return input.origin;
  const [stage = '', key = ''] = path.split('.');
  return worked.stages[stage]?.origins[key] ?? 'worked';
}
