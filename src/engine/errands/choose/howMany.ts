import type { Seen } from '../../fields/stage.ts';
import type { BuyAnswer } from './answer.ts';
import { buy, type LotLike } from './buy.ts';
import type { buyReads, of } from './order.ts';

/** Fewest crystals of which a lot's own spread says anything. */
const FEWEST = 8;
/** Typical standard deviation of a lot, as a part of the frequency: 60 to 300 Hz at 9 MHz. */
const TYPICAL = 15e-6;
/** A set within this part of the bandwidth costs hardly any ripple. */
const TENTH = 0.1;

/** How many crystals to buy for a matching set, from lots like the own one, or of a typical spread. */
export function* howMany(
  seen: Seen<(typeof of)[number], typeof buyReads>,
): Generator<number, BuyAnswer, void> {
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
