import type { OscillatorCrystal } from '../../circuit/colpitts.ts';
import { reach } from '../../circuit/pullingReach.ts';
import { format } from '../../quantity/format.ts';
import type { Placed } from './seen.ts';

type Reaches = 'yes' | 'no' | 'unknown';

interface Way {
  readonly way: string;
  readonly reaches: Reaches;
  readonly says: string;
}

/** Most crystals side by side. */
const MOST = 3;

/** Labels that are named at most. */
const NAMED = 4;

/** What would bring the carrier within reach, the cheapest first; nothing where it is in reach. */
export function waysOut(seen: Placed): readonly Way[] {
  const { carrier, reachLow, reachHigh } = seen;
  if (reachLow === null || reachHigh === null) return [];
  if (carrier >= reachLow && carrier <= reachHigh) return [];
  const high = carrier > reachHigh;
  return [
    ...otherCrystal(seen),
    ...sideBySide(seen),
    otherSideband(seen),
    otherWidth(seen, high, reachLow, reachHigh),
    ...(high ? [] : [largerDivider()]),
    grounded(seen),
  ];
}

const single = (seen: Placed): OscillatorCrystal => ({
  fs: seen.fs,
  lm: seen.lm,
  rm: seen.rm,
  c0: seen.c0,
});

const several = (x: OscillatorCrystal, n: number): OscillatorCrystal => ({
  fs: x.fs,
  lm: x.lm / n,
  rm: x.rm / n,
  c0: x.c0 * n,
});

function within(x: OscillatorCrystal, divider: number, f: number): boolean {
  const { low, high } = reach(x, divider);
  return low !== null && high !== null && f >= low && f <= high;
}

/** A crystal of the bag that lies better. */
function otherCrystal(seen: Placed): Way[] {
  const way = 'Another crystal of the bag for the carrier';
  const taken = new Set((seen.places ?? []).map(({ label }) => label));
  const left = (seen.bag ?? []).filter(
    (row) => row.standing === 'counts' && row.fs !== null && !taken.has(row.label),
  );
  if (left.length === 0) {
    return [{ way, reaches: 'unknown', says: 'No bag is pasted, or none is left of it.' }];
  }
  const good = left.filter((row) =>
    within(
      several(
        {
          fs: row.fs ?? seen.fs,
          lm: row.lm ?? seen.lm,
          rm: row.rm ?? seen.rm,
          c0: row.c0 ?? seen.c0,
        },
        seen.together,
      ),
      seen.divider,
      seen.carrier,
    ),
  );
  const names = good
    .slice(0, NAMED)
    .map(({ label }) => label)
    .join(', ');
  return [
    good.length === 0
      ? { way, reaches: 'no', says: `None of the ${left.length} that are left reaches it.` }
      : {
          way,
          reaches: 'yes',
          says: `${names}${good.length > NAMED ? ` and ${good.length - NAMED} more` : ''}.`,
        },
  ];
}

function sideBySide(seen: Placed): Way[] {
  const ways: Way[] = [];
  for (let n = seen.together + 1; n <= MOST; n += 1) {
    const reaches = within(several(single(seen), n), seen.divider, seen.carrier);
    ways.push({
      way: `${n === 2 ? 'Two' : 'Three'} crystals side by side`,
      reaches: reaches ? 'yes' : 'no',
      says: reaches
        ? 'They pull as one with less inductance.'
        : 'Even then the carrier lies beyond.',
    });
    if (reaches) break;
  }
  return ways;
}

/** The same distance outside the other edge. */
function otherSideband(seen: Placed): Way {
  const way = 'The other sideband';
  const { low6, high6, sideband, reachLow, reachHigh } = seen;
  if (low6 === null || high6 === null || reachLow === null || reachHigh === null) {
    return { way, reaches: 'unknown', says: 'The filter has no edges yet.' };
  }
  const there =
    sideband === 'lower' ? low6 - (seen.carrier - high6) : high6 + (low6 - seen.carrier);
  const yes = there >= reachLow && there <= reachHigh;
  return {
    way,
    reaches: yes ? 'yes' : 'no',
    says: `The carrier would lie at ${format(there, 'Hz', 7)}; ${sideband === 'lower' ? 'the lower skirt is the shallower one' : 'the upper skirt is the steeper one'}.`,
  };
}

/** The edge moves with the width; the other edge stays near the crystals. */
function otherWidth(seen: Placed, high: boolean, reachLow: number, reachHigh: number): Way {
  const by = high ? seen.carrier - reachHigh : reachLow - seen.carrier;
  const width = seen.width3;
  if (!high) {
    return {
      way: 'A wider filter',
      reaches: 'no',
      says: 'The lower edge hardly moves with the width.',
    };
  }
  if (width === null || by > 0.5 * width) {
    return {
      way: 'A narrower filter',
      reaches: 'no',
      says: `It would have to lose ${format(by, 'Hz', 2)} of its width.`,
    };
  }
  return {
    way: 'A narrower filter',
    reaches: 'yes',
    says: `About ${format(width - by, 'Hz', 2)} wide instead of ${format(width, 'Hz', 4)}.`,
  };
}

const largerDivider = (): Way => ({
  way: 'Larger C1 and C2',
  reaches: 'unknown',
  says: 'They let the crystal run nearer to its series resonance, and start less readily.',
});

const grounded = ({ sideband }: Placed): Way => ({
  way: 'A filter with its crystals to ground',
  reaches: 'unknown',
  says:
    sideband === 'upper'
      ? 'Its steep skirt lies below, where the carrier for the upper sideband goes.'
      : 'Its steep skirt lies below: for the upper sideband.',
});
