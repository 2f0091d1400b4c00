import { alignedLadder, meshFrequency } from '../../circuit/alignedLadder.ts';
import type { Crystal } from '../../circuit/crystal.ts';
import { between, type Ladder } from '../../circuit/ladder.ts';
import type { LadderForWidth } from '../../circuit/ladderForWidth.ts';
import { passbandRipple } from '../../circuit/passbandRipple.ts';
import { type FittedParts, fitParts } from './fitParts.ts';
import { COARSE, type Fit, fitOf } from './fits.ts';
import { endsOf } from './leaks.ts';
import type { Owned } from './ownedParts.ts';
import type { FilterSeen } from './seen.ts';
import { type WantedResponse, wantedResponse } from './wantedResponse.ts';

/** The filter as it is built, and how it comes out in other ways. */
export interface FittedLadder {
  /** With the parts chosen, the crystals in place, the real ends and what leaks. */
  readonly ladder: Ladder;
  /** The same with exact values and without leakage. */
  readonly real: Ladder;
  readonly parts: FittedParts | null;
  /** The exact design, exact values as things are, nearest ones, those chosen: what differs. */
  readonly fits: readonly Fit[];
  /** All weights of the departure together. */
  readonly weights: number;
  /** Where all meshes are brought to, if each crystal has its own capacitor, Hz. */
  readonly alignedAt: number | null;
  /** Frequencies at which to look for its passband, Hz. */
  readonly near: readonly number[];
}

/**
 * Puts real crystals, parts and ends into the exact design.
 *
 * @param each the crystals by position; null where all are alike
 * @param leakage past the filter, F
 * @param mesh where the meshes of the exact design resonate, Hz
 * @param around frequencies at which to look for the passband, Hz
 */
export function fittedLadder(
  seen: FilterSeen,
  made: LadderForWidth,
  each: readonly Crystal[] | null,
  owned: readonly Owned[],
  leakage: number,
  mesh: number,
  around: readonly number[],
): FittedLadder {
  const exact = made.ladder;
  const real = realLadder(seen, exact, each);
  const { band } = made;
  const wanted = wantedResponse(exact, band);
  const dip = passbandRipple(exact, around, band);
  const design: Fit = { way: 'design', ladder: exact, band, dip, sum: 0 };
  const alignedAt = each && seen.aligning === 'each' ? lastMesh(exact, each) : null;
  // Brought to one of its meshes, the whole filter lies a little elsewhere: that is no fault.
  const shift = alignedAt === null ? 0 : alignedAt - mesh;
  const near = shift === 0 ? around : around.map((f) => f + shift);
  const same = { real, weights: wanted.weights, alignedAt, near };
  const past = (ladder: Ladder) => (leakage > 0 ? { ...ladder, leakage } : ladder);
  if (real === exact && seen.fitted === 'exact') {
    return { ...same, ladder: past(exact), parts: null, fits: [design] };
  }
  const parts = fitParts(real, shifted(wanted, shift), seen.fitted, owned);
  const fits = [design];
  const { sums } = parts;
  if (real !== exact)
    fits.push(fitOf('exact', real, near, sums.exact, seen.fitted === 'exact' ? undefined : COARSE));
  let ladder = real;
  if (seen.fitted !== 'exact') {
    ladder = withParts(real, parts, 'chosen');
    fits.push(fitOf('nearest', withParts(real, parts, 'nearest'), near, sums.nearest, COARSE));
    fits.push(fitOf('chosen', ladder, near, sums.chosen));
  }
  return { ...same, ladder: past(ladder), parts, fits };
}

/** The design with the crystals in place, between the ends that it really has. */
function realLadder(seen: FilterSeen, exact: Ladder, each: readonly Crystal[] | null): Ladder {
  const [source, load] = endsOf(seen, exact);
  const same = (a: Ladder['source'], b: Ladder['source']) => a[0] === b[0] && a[1] === b[1];
  if (!each && same(source, exact.source) && same(load, exact.load)) return exact;
  const placed = each ? alignedLadder(exact, each, seen.aligning) : exact;
  return between(placed, source, load);
}

const withParts = (real: Ladder, parts: FittedParts, which: 'chosen' | 'nearest'): Ladder => ({
  ...real,
  coupling: Float64Array.from(parts.coupling, (one) => one[which].value),
  series: Float64Array.from(parts.series, (one) => one?.[which].value ?? 0),
});

/** Where the meshes are brought to: up to the highest, nodes of crystals to ground down to the lowest. */
function lastMesh(exact: Ladder, each: readonly Crystal[]): number {
  const own = each.map((_, i) => meshFrequency(exact, each, i));
  return exact.form === 'shunt' ? Math.min(...own) : Math.max(...own);
}

const shifted = (wanted: WantedResponse, shift: number): WantedResponse =>
  shift === 0 ? wanted : { ...wanted, frequency: wanted.frequency.map((f) => f + shift) };
