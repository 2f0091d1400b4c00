import type { Arrangement } from './task.ts';

/** Less than this is no improvement, dB. */
const BETTER = 1e-9;

/**
 * Makes an arrangement better by exchanges, in place, until none helps: two positions change places,
 * or a crystal makes way for one that is not in use. Each exchange that helps is made at once.
 *
 * @param count crystals in the bag, in order of frequency
 * @param reach how many places off in that order the exchanged crystal may be; 0: positions only
 * @param meritAt dB, the less the better
 * @param goOn whether more may be looked at
 * @return the merit reached; yields after each look
 */
export function* downhill(
  arrangement: number[],
  count: number,
  reach: number,
  meritAt: (arrangement: Arrangement) => number,
  goOn: () => boolean,
): Generator<void, number, void> {
  const n = arrangement.length;
  const moves = n * (n + count);
  let merit = meritAt(arrangement);
  let idle = 0;
  for (let move = 0; idle < moves && goOn(); move += 1) {
    idle += 1;
    const i = move % n;
    // The first n are exchanges with a position, the others with a crystal of the bag.
    const other = Math.floor(move / n) % (n + count);
    const swap = other < n;
    const crystal = swap ? (arrangement[other] as number) : other - n;
    const was = arrangement[i] as number;
    if (swap ? other <= i : Math.abs(was - crystal) > reach || arrangement.includes(crystal)) {
      continue;
    }
    arrangement[i] = crystal;
    if (swap) arrangement[other] = was;
    const next = meritAt(arrangement);
    if (next < merit - BETTER) {
      merit = next;
      idle = 0;
    } else {
      arrangement[i] = was;
      if (swap) arrangement[other] = crystal;
    }
    yield;
  }
  return merit;
}
