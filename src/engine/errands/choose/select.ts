import { couplings } from '../../circuit/couplings.ts';
import { crystalOf } from '../../circuit/crystal.ts';
import type { Ladder } from '../../circuit/ladder.ts';
import { gainAt } from '../../circuit/ladderGain.ts';
import type { Work } from '../../fields/stage.ts';
import type { Named } from '../../stages/carrier/ownCrystal.ts';
import { placements } from '../../stages/carrier/placement.ts';
import { chooseCapacitor } from '../../stages/filter/chooseCapacitor.ts';
import type { filterFields } from '../../stages/filter/fields.ts';
import { workFilter } from '../../stages/filter/work.ts';
import type { Offered, Selection } from './answer.ts';
import { type Arranged, arrange, type Built } from './arrange.ts';
import { carrierCrystal } from './carrierCrystal.ts';
import type { Order } from './order.ts';
import type { Arrangement, Task } from './task.ts';

type FilterResults = Work<typeof filterFields>['results'];

/** Points of the responses that are shown. */
const POINTS = 121;

/**
 * Chooses from the bag: filter crystals in their order, then the carrier crystal of what is left.
 *
 * @param held kept back for the carrier, because nothing else reaches it
 * @return the selection, or why there is none; yields the part that is done
 */
export function* select(
  seen: Order,
  held: readonly string[] = [],
): Generator<number, Selection | string, void> {
  const all = crystalsOf(seen);
  const bag = all.filter(({ label }) => !held.includes(label));
  const plain = workFilter({ ...seen, chosen: null });
  const { ladder, design } = plain.results;
  if (ladder === null || design === null) {
    return plain.problems[0]?.says ?? 'The filter sheet has no filter yet.';
  }
  const chain = couplings(seen.family, seen.crystals, seen.ripple);
  const needed = Array.from(ladder.lm, (_, i) => chain.parallel?.[i] ?? 1);
  const n = needed.reduce((sum, one) => sum + one, 0);
  if (bag.length < n) {
    return bag.length === 0
      ? 'There is no bag yet: paste its crystals above.'
      : `The filter needs ${n} crystals; the bag has ${bag.length} that count.`;
  }
  const filters = new Map<string, FilterResults>();
  const textOf = (arrangement: Arrangement) => arrangement.map((c) => bag[c]?.label).join(' ');
  const build = (arrangement: Arrangement): Built | null => {
    const chosen = textOf(arrangement);
    const { results } = workFilter({ ...seen, chosen });
    const { ladder: own, rippleFound: ripple, loss, low3: low, high3: high } = results;
    if (own === null || ripple === null || loss === null || low === null || high === null) {
      return null;
    }
    filters.set(chosen, results);
    return { ladder: own, ripple, loss, low, high };
  };
  const task: Task = {
    crystals: bag.map(({ fs, lm, rm, c0 }) => crystalOf(fs, lm, (2 * Math.PI * fs * lm) / rm, c0)),
    alike: crystalOf(seen.fs, seen.lm, seen.qu, seen.c0),
    low: design.low,
    high: design.high,
    design: { ...ladder, leakage: 0 },
    doubled: chain.parallel,
    aligning: seen.aligning,
    round: roundFor(seen),
  };
  const { chosen, closest, looks } = yield* arrange(task, seen.seed, build);
  if (chosen === null || closest === null) return 'No arrangement of the bag makes a filter.';

  const taken = new Set(chosen.arrangement.map((c) => bag[c]?.label));
  const left = all.filter(({ label }) => !taken.has(label));
  const worked = filters.get(textOf(chosen.arrangement));
  const carrier = worked === undefined ? null : carrierOf(seen, worked, left);
  if (worked !== undefined && carrier !== null && !carrier.reaches) {
    // Would another crystal reach, that now stands in the filter? Then it is kept back for that.
    const better = carrierOf(seen, worked, all);
    const rest = bag.filter(({ label }) => !better?.labels.includes(label));
    if (better?.reaches && rest.length >= n && held.length === 0) {
      return yield* select(seen, better.labels);
    }
  }
  const width = Math.max(chosen.width, closest.width);
  const offsets = Float64Array.from(
    { length: POINTS },
    (_, i) => ((2 * i) / (POINTS - 1) - 1) * 1.1 * width,
  );
  const offer = (one: Arranged) => offered(one, bag, offsets);
  return {
    chosen: offer(chosen),
    closest: offer(closest),
    offsets,
    carrier,
    heldBack: held,
    left: left.map(({ label }) => label).filter((label) => !carrier?.labels.includes(label)),
    looks,
  };
}

/** The crystals that count, by rising frequency; what was not measured of one is that of Quartz. */
function crystalsOf({ bag, lm, rm, c0 }: Order): Named[] {
  return (bag ?? [])
    .flatMap((row) =>
      row.standing === 'counts' && row.fs !== null && row.label !== null
        ? [
            {
              label: row.label,
              fs: row.fs,
              lm: row.lm ?? lm,
              rm: row.rm ?? rm,
              c0: row.c0 ?? c0,
            },
          ]
        : [],
    )
    .sort((a, b) => a.fs - b.fs);
}

/** While searching, single parts are the nearest of their series, and pairs as good as exact. */
function roundFor({ fitted }: Order): (exact: number) => number {
  if (fitted === 'e24' || fitted === 'e12' || fitted === 'e6') {
    return (exact) => chooseCapacitor(exact, fitted).value;
  }
  return (exact) => exact;
}

function carrierOf(seen: Order, filter: FilterResults, left: readonly Named[]) {
  const { ladder, loss, low3, high3, low6, high6 } = filter;
  if (ladder === null || loss === null || low3 === null || high3 === null) return null;
  if (low6 === null || high6 === null) return null;
  const way = seen.wantedSideband === 'lower' ? 1 : -1;
  const skirt = {
    ladder,
    gain: (f: number) => gainAt(ladder, f),
    loss,
    low3,
    high3,
    low6,
    high6,
    way,
  } as const;
  const frequency = placements(skirt, {
    attenuation: seen.attenuationGiven,
    offset: seen.offsetGiven,
    frequency: seen.frequencyGiven,
  })[seen.rule];
  if (frequency === null) return null;
  const { strayAtBase: stray, carriers: crystals } = seen;
  return carrierCrystal(left, frequency, { ...seen, stray, crystals });
}

function offered(
  { arrangement, ladder, low, high, ripple, loss, width, fall, apart, merit }: Arranged,
  bag: readonly Named[],
  offsets: Float64Array,
): Offered {
  const some = arrangement.flatMap((c) => bag[c] ?? []);
  const middle = (low + high) / 2;
  return {
    labels: some.map(({ label }) => label),
    ripple,
    loss,
    width,
    fall,
    within: apart,
    capacitors: fittedIn(ladder),
    merit,
    gain: offsets.map((off) => gainAt(ladder, middle + off)),
  };
}

const fittedIn = ({ series }: Ladder): number => series.filter((c) => c > 0).length;
