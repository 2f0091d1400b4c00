import { errands } from '../engine/errands/list.ts';
import { runHere } from '../engine/errands/runHere.ts';
import type { Runner } from '../engine/errands/runner.ts';
import type { Order, Report } from './messages.ts';

/** As many workers as there are cores to run them on beside the page, two at most. */
const MOST = 2;

let workers: Worker[] | null | undefined;
let tickets = 0;
const listeners = new Map<number, (report: Report) => void>();

/** Runs an errand in workers, split in shares where it can be; on this thread where there are none. */
export const runInWorkers: Runner = (key, seen, told) => {
  const team = hired();
  const errand = errands.find((one) => one.key === key);
  if (!errand) throw new Error(`no errand ${key}`);
  if (team === null) return runHere(key, seen, told);
  const of = Math.min(errand.shares, team.length);
  const parts: unknown[] = [];
  const done = new Array<number>(of).fill(0);
  let left = of;
  const mine: { ticket: number; worker: Worker }[] = [];
  const end = () => {
    for (const { ticket } of mine) listeners.delete(ticket);
  };
  for (let index = 0; index < of; index += 1) {
    const worker = team[index] as Worker;
    tickets += 1;
    const ticket = tickets;
    mine.push({ ticket, worker });
    listeners.set(ticket, (report) => {
      if (report.kind === 'progress') {
        done[index] = report.done;
        told.progress(done.reduce((sum, one) => sum + one, 0) / of);
      } else if (report.kind === 'failed') {
        end();
        told.failed(report.says);
      } else {
        parts[index] = report.answer;
        done[index] = 1;
        left -= 1;
        if (left > 0) return;
        end();
        told.answer(errand.merge(parts));
      }
    });
    send(worker, { kind: 'go', ticket, key, seen, share: { index, of } });
  }
  return () => {
    end();
    for (const { ticket, worker } of mine) send(worker, { kind: 'back', ticket });
  };
};

const send = (worker: Worker, order: Order) => worker.postMessage(order);

/** The workers, made when first needed; null where the browser has none. */
function hired(): Worker[] | null {
  if (workers !== undefined) return workers;
  try {
    const size = Math.max(1, Math.min(MOST, navigator.hardwareConcurrency ?? 1));
    workers = Array.from({ length: size }, hire);
  } catch {
    workers = null;
  }
  return workers;
}

function hire(): Worker {
  const worker = new Worker(new URL('./errandWorker.ts', import.meta.url), { type: 'module' });
  worker.onmessage = ({ data }: { data: Report }) => listeners.get(data.ticket)?.(data);
  worker.onerror = () => {
    // It never started, or died: whoever waits for it is told, and the next errand runs here.
    workers = null;
    for (const [ticket, tell] of [...listeners]) {
      tell({ kind: 'failed', ticket, says: 'The worker could not be started.' });
    }
  };
  return worker;
}
