import type { BuyAnswer, ChooseAnswer } from './answer.ts';
import { buy, type LotLike } from './buy.ts';
import type { Order } from './order.ts';
import { select } from './select.ts';

/** Fewest crystals of which a lot's own spread says anything. */
const FEWEST = 8;
/** Typical standard deviation of a lot, as a part of the frequency: 60 to 300 Hz at 9 MHz. */
const TYPICAL = 15e-6;
/** A set within this part of the bandwidth costs hardly any ripple. */
const TENTH = 0.1;
/** Of the whole work, what the buying takes. */
const BUYING = 0.15;

/** How many to buy, and what to make of the bag there is. */
export function* choose(seen: Order): Generator<number, ChooseAnswer, void> {
  const buying = yield* within(howMany(seen), 0, BUYING);
  const selection = yield* within(select(seen), BUYING, 1);
  return typeof selection === 'string'
    ? { selection: null, why: selection, buy: buying }
    : { selection, why: null, buy: buying };
}

function* howMany(seen: Order): Generator<number, BuyAnswer, void> {
  const set = seen.set ?? seen.crystals;
  const window = seen.window ?? TENTH * seen.bandwidth;
  const { confidence } = seen;
  const frequencies = (seen.bag ?? []).flatMap(({ fs, standing }) =>
    fs !== null && standing === 'counts' ? [fs] : [],
  );
  const own = seen.lotSpread === null && frequencies.length >= FEWEST && seen.spread !== null;
  const spread = seen.lotSpread ?? (own ? seen.spread : null) ?? TYPICAL * seen.fs;
  const lot: LotLike = own ? { kind: 'own', frequencies } : { kind: 'normal', spread };
  const { number, lots, chances, trials } = yield* buy({ set, window, confidence }, lot, seen.seed);
  const certain = chances.findIndex((one) => one > 0.999);
  const shown = certain < 0 ? lots.length : Math.max(set + 2, certain + 1);
  return {
    set,
    window,
    confidence,
    number,
    lots: lots.slice(0, shown),
    chances: chances.slice(0, shown),
    from: own ? 'bag' : seen.lotSpread === null ? 'typical' : 'typed',
    spread,
    trials,
  };
}

/** Reports of a piece of work as the part of the whole from one fraction to another. */
function* within<A>(
  work: Generator<number, A, void>,
  from: number,
  to: number,
): Generator<number, A, void> {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    yield from + (to - from) * step.value;
  }
}
