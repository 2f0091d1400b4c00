import { useEffect } from 'react';
import { create } from 'zustand';
import { useShallow } from 'zustand/react/shallow';
import type { Errand } from '../engine/errands/errand.ts';
import { errands } from '../engine/errands/list.ts';
import { pick, seenBy } from '../engine/errands/pick.ts';
import { runHere } from '../engine/errands/runHere.ts';
import type { Runner } from '../engine/errands/runner.ts';
import { keep } from '../engine/rig/keep.ts';
import { workedOf } from './bench.ts';
import { useBench } from './store.ts';

/** An errand as it stands; nothing of it is saved, since all of it can be worked again. */
interface Slot {
  /** What it was, or is being, worked from. */
  readonly picked: readonly unknown[];
  readonly answer: unknown;
  /** What the answer was worked from. */
  readonly answeredFrom: readonly unknown[] | null;
  readonly running: boolean;
  readonly progress: number;
  readonly failed: string | null;
  /** Called back by the user: not sent for again until something changes. */
  readonly stopped: boolean;
  readonly callBack: () => void;
}

const blank: Slot = {
  picked: [],
  answer: null,
  answeredFrom: null,
  running: false,
  progress: 0,
  failed: null,
  stopped: false,
  callBack: () => {},
};

const useSlots = create<Readonly<Record<string, Slot>>>()(() => ({}));

/** Not saved, each by its errand's key: what comes to it besides the rig. */
const useBesides = create<Readonly<Record<string, unknown>>>()(() => ({}));

/** Lays something beside the rig for an errand: sound from a file, another errand's answer. */
export function layBeside(key: string, beside: unknown): void {
  if (!Object.is(useBesides.getState()[key], beside)) useBesides.setState({ [key]: beside });
}

/** Steps in which progress is shown. */
const STEPS = 25;

let runner: Runner = runHere;

/** Sends errands away by another runner from now on. */
export function runErrandsWith(other: Runner): void {
  runner = other;
}

/** How an errand stands, for its sheet. */
export interface ErrandState<A> {
  /** The last answer, perhaps from before the last change. */
  readonly answer: A | null;
  /** `waits`: something it needs is missing. `before`: the answer is for how the rig was. */
  readonly standing: 'waits' | 'none' | 'running' | 'fresh' | 'before';
  readonly progress: number;
  /** Why it came to nothing. */
  readonly failed: string | null;
  readonly run: () => void;
  readonly cancel: () => void;
}

/**
 * An errand's answer, and how to send for it. With `auto` it is sent for anew `auto` milliseconds
 * after the last change of what it reads.
 */
export function useErrand<A>(key: string, { auto }: { auto?: number } = {}): ErrandState<A> {
  const errand = errandOf(key);
  const beside = useBesides((all) => all[key] ?? null);
  const picked = useBench(
    useShallow((s) => [...pick(workedOf(s.rig), errand), beside] as unknown[]),
  );
  const slot = useSlots((all) => all[key] ?? blank);
  const ready = seenBy(errand, picked) !== null;
  const fresh = slot.answeredFrom !== null && same(slot.answeredFrom, picked);
  const running = slot.running && same(slot.picked, picked);
  const given = (slot.failed !== null || slot.stopped) && same(slot.picked, picked);
  useEffect(() => {
    if (auto === undefined || !ready || fresh || running || given) return;
    const timer = setTimeout(() => runErrand(key), auto);
    return () => clearTimeout(timer);
  }, [auto, key, ready, fresh, running, given]);
  return {
    answer: slot.answer as A | null,
    standing: !ready
      ? 'waits'
      : fresh
        ? 'fresh'
        : running
          ? 'running'
          : slot.answeredFrom === null
            ? 'none'
            : 'before',
    progress: slot.progress,
    failed: slot.failed,
    run: () => runErrand(key),
    cancel: () => cancelErrand(key),
  };
}

/** An errand's last answer alone: for what need not be drawn anew while it is under way. */
export const useAnswer = <A>(key: string): A | null =>
  useSlots((all) => (all[key] ?? blank).answer as A | null);

/** Sends an errand for the rig as it stands; what was under way is called back. */
export function runErrand(key: string): void {
  const errand = errandOf(key);
  const picked = [
    ...pick(workedOf(useBench.getState().rig), errand),
    useBesides.getState()[key] ?? null,
  ];
  const seen = seenBy(errand, picked);
  if (seen === null) return;
  const before = useSlots.getState()[key] ?? blank;
  before.callBack();
  // A reply counts only while no later order stands in its place.
  const mine = (slot: Slot | undefined) => slot?.picked === picked;
  const tell = (change: Partial<Slot>) => {
    const slot = useSlots.getState()[key];
    if (slot && mine(slot)) useSlots.setState({ [key]: { ...slot, ...change } });
  };
  useSlots.setState({
    [key]: {
      ...before,
      picked,
      running: true,
      progress: 0,
      failed: null,
      stopped: false,
      callBack: () => {},
    },
  });
  const callBack = runner(key, seen, {
    // In steps that can be seen: each one draws the leaf anew.
    progress: (done) => {
      const progress = Math.floor(done * STEPS) / STEPS;
      if (progress > (useSlots.getState()[key]?.progress ?? 0)) tell({ progress });
    },
    answer: (answer) => tell({ answer, answeredFrom: picked, running: false, progress: 1 }),
    failed: (failed) => tell({ failed, running: false }),
  });
  tell({ callBack });
}

function cancelErrand(key: string): void {
  const slot = useSlots.getState()[key];
  if (!slot?.running) return;
  slot.callBack();
  useSlots.setState({ [key]: { ...slot, running: false, progress: 0, stopped: true } });
}

function errandOf(key: string): Errand {
  const found = errands.find((one) => one.key === key);
  if (!found) throw new Error(`no errand ${key}`);
  return found;
}

/** Equal in what they say: another reader of entries makes new objects of the same figures. */
const same = (a: readonly unknown[], b: readonly unknown[]) =>
  a.length === b.length && a.every((v, i) => Object.is(keep(v, b[i]), v));
