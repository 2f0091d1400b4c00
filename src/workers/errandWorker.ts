import { CALLED_BACK, drive } from '../engine/errands/drive.ts';
import { errands } from '../engine/errands/list.ts';
import type { Order, Report } from './messages.ts';

/** A worker's side: takes orders, works them in slices, reports. */
const port = self as unknown as {
  onmessage: ((event: { data: Order }) => void) | null;
  postMessage: (report: Report) => void;
};

const calledBack = new Set<number>();
const waiting: (() => void)[] = [];
const turn = new MessageChannel();
turn.port1.onmessage = () => waiting.shift()?.();

port.onmessage = ({ data: order }) => {
  if (order.kind === 'back') calledBack.add(order.ticket);
  else void go(order);
};

async function go({ ticket, key, seen, share }: Extract<Order, { kind: 'go' }>): Promise<void> {
  try {
    const errand = errands.find((one) => one.key === key);
    if (!errand) throw new Error(`no errand ${key}`);
    const answer = await drive(errand.work(seen, share), {
      now: () => performance.now(),
      // A message to itself comes behind those already there: a call back is heard between slices.
      pause: () =>
        new Promise((next) => {
          waiting.push(next);
          turn.port2.postMessage(null);
        }),
      calledBack: () => calledBack.has(ticket),
      progress: (done) => port.postMessage({ kind: 'progress', ticket, done }),
    });
    if (answer !== CALLED_BACK) port.postMessage({ kind: 'answer', ticket, answer });
  } catch (error) {
    port.postMessage({ kind: 'failed', ticket, says: String(error) });
  } finally {
    calledBack.delete(ticket);
  }
}
