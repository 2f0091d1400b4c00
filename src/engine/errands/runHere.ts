import { CALLED_BACK, drive } from './drive.ts';
import { errands } from './list.ts';
import type { Runner } from './runner.ts';

/** Runs an errand on this thread, in slices: where there are no workers. */
export const runHere: Runner = (key, seen, told) => {
  let called = false;
  const found = errands.find((one) => one.key === key);
  if (!found) throw new Error(`no errand ${key}`);
  drive(found.work(seen, { index: 0, of: 1 }), {
    now: () => performance.now(),
    pause: () => new Promise((go) => setTimeout(go, 0)),
    calledBack: () => called,
    progress: told.progress,
  }).then(
    (answer) => {
      if (answer !== CALLED_BACK && !called) told.answer(found.merge([answer]));
    },
    (error) => told.failed(String(error)),
  );
  return () => {
    called = true;
  };
};
