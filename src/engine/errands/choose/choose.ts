import type { ChooseAnswer } from './answer.ts';
import type { Order } from './order.ts';
import { select } from './select.ts';

/** What to make of the bag there is. */
export function* choose(seen: Order): Generator<number, ChooseAnswer, void> {
  const selection = yield* select(seen);
  return typeof selection === 'string'
    ? { selection: null, why: selection }
    : { selection, why: null };
}
