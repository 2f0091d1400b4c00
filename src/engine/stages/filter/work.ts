import { couplings } from '../../circuit/couplings.ts';
import { crystalOf } from '../../circuit/crystal.ts';
import { meshSums, sharedCouplings } from '../../circuit/crystalLadder.ts';
import { ladderForWidth } from '../../circuit/ladderForWidth.ts';
import { standsOut } from '../../circuit/passband.ts';
import type { Work } from '../../fields/stage.ts';
import { noResults } from '../../fields/stage.ts';
import { cornersRounded, KEPT, LOST } from './corners.ts';
import { curves, within } from './curves.ts';
import type { FilterDesign } from './design.ts';
import { farOff } from './farOff.ts';
import { filterFields } from './fields.ts';
import { fitOf, fitRow } from './fits.ts';
import { fittedLadder } from './fittedLadder.ts';
import { crystalsNeeded, inPlace } from './inPlace.ts';
import { attenuationPast } from './leakagePast.ts';
import { leaks } from './leaks.ts';
import { ownedParts } from './ownedParts.ts';
import { parallelEnd } from './parallelEnd.ts';
import { couplingRows, meshRows, stockRows } from './partRows.ts';
import { impossible, nothingThrough, notMade, problems } from './problems.ts';
import { reachLossless } from './reachLossless.ts';
import type { FilterSeen } from './seen.ts';
import { type Skirts, skirts } from './skirts.ts';
import { stockProblems } from './stockProblems.ts';

type Answer = Work<typeof filterFields>;

/** How far outside the exact design's passband that of the fitted parts may lie, in widths. */
const MARGIN = 0.6;

/** Designs the ladder for the width asked for, fits its capacitors, and analyses what comes out. */
export function workFilter(seen: FilterSeen): Answer {
  const no = notMade(seen);
  if (no.length > 0) return { results: noResults(filterFields), problems: no };
  const chain = couplings(seen.family, seen.crystals, seen.ripple);
  const placed = inPlace(seen, chain);
  const { mean } = placed;
  const qu = (2 * Math.PI * mean.fs * mean.lm) / mean.rm;
  const crystal = crystalOf(mean.fs, mean.lm, qu, mean.c0);
  const made = ladderForWidth(crystal, chain, seen, seen.bandwidth);
  const cannot = impossible(seen, made);
  if (cannot.length > 0) return { results: noResults(filterFields), problems: cannot };

  const { shape } = made;
  const toGround = seen.form === 'shunt';
  // All that lies across a crystal to ground acts as more of its holder.
  const beside = toGround ? seen.stray : 0;
  const withHolder = (across: number) => ({ ...crystal, c0: crystal.c0 + beside + across });
  const around = shape.frequencies(made.h, MARGIN);
  const mesh = shape.alignment(made.h);
  const owned = ownedParts(seen.owned ?? '');
  const leak = leaks(seen, made.ladder, mesh);
  const fitted = fittedLadder(seen, made, placed.each, owned.parts, leak.c ?? 0, mesh, around);
  const { ladder, real, parts, fits, weights, near } = fitted;
  const { band, dip } =
    fits.find((fit) => fit.ladder === ladder) ?? fitOf('chosen', ladder, near, 0);
  const nothing = nothingThrough(seen, band.gain, standsOut(ladder, band));
  if (nothing.length > 0) {
    return { results: noResults(filterFields), problems: [...leak.problems, ...nothing] };
  }
  const exactDip = fits[0]?.dip ?? dip;
  const width3 = band.high - band.low;
  const centre = (band.low + band.high) / 2;
  const down6 = skirts(ladder, band, 6);
  const down20 = skirts(ladder, band, 20);
  const down60 = skirts(ladder, band, 60);
  const width6 = widthOf(down6);
  const width60 = widthOf(down60);
  const { response, exactResponse } = curves(ladder, made.ladder, band);
  const inside = within(response, band.low, band.high, centre, width3);
  const gainRatio = 10 ** (band.gain / 10);
  const holder = withHolder(shape.across);
  const rounding = cornersRounded(made.ladder, holder, seen.family, chain, seen.ripple, made.band);
  const design: FilterDesign = {
    ladder: made.ladder,
    across: shape.across,
    outcome: made.outcome,
    low: made.band.low,
    high: made.band.high,
    loss: -made.band.gain,
    ripple: exactDip.depth,
    widestLow: made.widest.band.low,
    widestHigh: made.widest.band.high,
    dipAt: dip.at,
    worstMatchAt: inside.worstMatchAt,
    area: inside.area,
    slowest: inside.slowest,
    fastest: inside.fastest,
    parts,
    fits,
    weights,
    each: fitted.alignedAt !== null,
  };
  const source = parallelEnd(ladder.source, centre);
  const load = parallelEnd(ladder.load, centre);
  const results: Answer['results'] = {
    width3,
    loss: -band.gain,
    rippleFound: dip.depth,
    crystalsNeeded: crystalsNeeded(chain),
    ends: made.ladder.source[0],
    endsLoad: made.ladder.load[0],
    halfSpan: toGround ? null : made.h,
    halfSusceptance: toGround ? made.h : null,
    acrossFitted: toGround ? shape.across : null,
    largestSum: shape.largestSum,
    endQ: chain.qSource,
    endQLoad: chain.qLoad,
    alignment: mesh,
    crystalFs: mean.fs,
    crystalLm: mean.lm,
    crystalRm: mean.rm,
    crystalC0: mean.c0,
    couplings: couplingRows(real, parts, sharedCouplings(chain)),
    meshes: meshRows(real, parts, meshSums(chain)),
    fits: fits.map((fit) => fitRow(fit, weights)),
    stock: seen.fitted === 'own' ? stockRows(owned.parts, parts) : null,
    places: placed.rows,
    alignedAt: fitted.alignedAt,
    sourceParallelR: source.r,
    sourceParallelC: source.c,
    sourceParallelL: source.l,
    loadParallelR: load.r,
    loadParallelC: load.c,
    loadParallelL: load.l,
    leakageFound: leak.c,
    floor:
      leak.c === null
        ? null
        : attenuationPast(ladder.source, ladder.load, leak.c, mesh) - -band.gain,
    ladder,
    design,
    reach: made.widest.width,
    reachLossless: reachLossless(withHolder(made.widest.shape.across), shape.largestSum),
    farOff: farOff(ladder, band),
    peak: band.peak,
    centre,
    low3: band.low,
    high3: band.high,
    low6: down6[0],
    high6: down6[1],
    low20: down20[0],
    high20: down20[1],
    low60: down60[0],
    high60: down60[1],
    width6,
    width20: widthOf(down20),
    width60,
    shape: width6 === null || width60 === null ? null : width60 / width6,
    noiseBandwidth: inside.area / gainRatio,
    delayVariation: inside.slowest - inside.fastest,
    returnLoss: inside.worstMatch,
    qRatio: (qu * width3) / centre,
    rounding,
    corners:
      rounding === null ? null : rounding < KEPT ? 'holds' : rounding < LOST ? 'close' : 'fails',
    widthCost: width3 - made.width,
    rippleCost: dip.depth - exactDip.depth,
    lossCost: -band.gain - -made.band.gain,
    response,
    exactResponse,
  };
  return {
    results,
    problems: [
      ...placed.problems,
      ...leak.problems,
      ...stockProblems(seen, owned, parts, weights),
      ...problems(seen, made, results),
    ],
  };
}

const widthOf = ([low, high]: Skirts): number | null =>
  low === null || high === null ? null : high - low;
