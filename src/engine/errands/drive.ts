/** Longest time that the work goes on before others get their turn, ms. */
const SLICE = 12;

/** Called away, or superseded by a newer order. */
export const CALLED_BACK = Symbol('called back');

/** How work is paced: a clock in milliseconds, a pause that lets others in, and who calls it back. */
export interface Pace {
  readonly now: () => number;
  readonly pause: () => Promise<void>;
  readonly calledBack: () => boolean;
  readonly progress: (done: number) => void;
}

/** Runs work in slices, so that the thread it runs on stays answerable. */
export async function drive<A>(
  work: Generator<number, A, void>,
  { now, pause, calledBack, progress }: Pace,
): Promise<A | typeof CALLED_BACK> {
  for (;;) {
    const end = now() + SLICE;
    for (;;) {
      const step = work.next();
      if (step.done) return step.value;
      if (now() < end) continue;
      progress(step.value);
      break;
    }
    await pause();
    if (calledBack()) return CALLED_BACK;
  }
}

/** Runs work to its end at once: for the headless sheet, tests and benchmarks. */
export function finish<A>(work: Generator<number, A, void>): A {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}
