import type { Ladder } from '../../circuit/ladder.ts';
import type { Share } from '../errand.ts';
import { buildFigures, type CarrierAt, figures } from './buildFigures.ts';
import { blankDraws, drawBuild } from './drawBuild.ts';
import { blankEnvelope, countResponse } from './envelope.ts';
import { type Factor, factorsOf } from './factors.ts';
import { asksAnything, broken, type Mask } from './mask.ts';
import { sampleFrequencies } from './sampleFrequencies.ts';
import type { Spreads } from './spreads.ts';
import { blankSums, count, DRAW_UNIT, type Sums, whole } from './sums.ts';
import { type Trial, trialsOf } from './trials.ts';
import { varied } from './varied.ts';

/** What is to be built, how often, and what it is held against. */
export interface YieldOrder {
  readonly ladder: Ladder;
  /** −3 dB points of the filter as wanted, Hz. */
  readonly low: number;
  readonly high: number;
  readonly carrier: CarrierAt | null;
  readonly spreads: Spreads;
  readonly mask: Mask;
  readonly builds: number;
  readonly seed: number;
}

/** What one share of the builds came to. */
export interface YieldTally {
  readonly order: YieldOrder;
  readonly share: Share;
  readonly factors: readonly Factor[];
  readonly frequency: Float64Array;
  /** The filter with nothing off: its response in dB, its figures. */
  readonly wanted: Float64Array;
  readonly wantedFigures: Float64Array;
  /** Figures of each build of this share, one after another. */
  readonly found: Float32Array;
  readonly envelope: Uint32Array;
  readonly sums: Sums;
  /** One of a draw's or figure's whole numbers in the sums, in that figure's unit. */
  readonly units: Float64Array;
  readonly trials: readonly Trial[];
  /** How many builds of each trial keep to the mask, of how many tried in all shares. */
  readonly passes: Uint32Array;
  readonly tried: number;
}

/** Builds on which each trial is tried. */
const TRIED = 1000;
/** Builds from one sign of life to the next. */
const BREATH = 50;

/**
 * Builds a filter many times over, each time with other parts, and counts what comes out. Build i
 * is the same build whoever makes it; a share makes every so-manieth of them.
 */
export function* yieldShare(order: YieldOrder, share: Share): Generator<number, YieldTally, void> {
  const { low, high, carrier, spreads, mask, builds, seed } = order;
  const factors = factorsOf(order.ladder);
  const { ladder, set } = varied(order.ladder);
  const frequency = sampleFrequencies(low, high);
  const gain = new Float64Array(frequency.length);
  const figure = new Float64Array(figures.length);
  const draws = blankDraws();

  set(draws, spreads);
  const wantedFigures = new Float64Array(figures.length);
  buildFigures(ladder, frequency, carrier, gain, wantedFigures);
  const wanted = gain.slice();
  const units = Float64Array.from(figures, (name) =>
    name === 'width' ? (high - low) / 2 ** 15 : 2 ** -10,
  );

  const mine = Math.ceil((builds - share.index) / share.of);
  const found = new Float32Array(mine * figures.length);
  const envelope = blankEnvelope(frequency.length);
  const sums = blankSums(factors.length, figures.length);
  const x = new Int32Array(factors.length);
  const y = new Int32Array(figures.length);
  const trials = asksAnything(mask) ? trialsOf(spreads) : [];
  const tried = Math.min(builds, TRIED);
  const passes = new Uint32Array(trials.length);
  const all = mine + (trials.length * tried) / share.of;
  let done = 0;
  let next = BREATH;

  for (let own = 0; own < mine; own += 1) {
    const build = share.index + own * share.of;
    drawBuild(seed, build, factors, spreads, draws);
    set(draws, spreads);
    buildFigures(ladder, frequency, carrier, gain, figure);
    found.set(figure, own * figures.length);
    countResponse(envelope, gain, wanted);
    for (let i = 0; i < factors.length; i += 1) {
      x[i] = Math.round((draws[(factors[i] as Factor).draw] as number) * DRAW_UNIT);
    }
    for (let i = 0; i < figures.length; i += 1) {
      const off = (figure[i] as number) - (wantedFigures[i] as number);
      y[i] = whole(off, units[i] as number);
    }
    count(sums, x, y);
    done += 1;
    if (build < tried) {
      for (let i = 0; i < trials.length; i += 1) {
        const trial = trials[i] as Trial;
        set(draws, trial.spreads);
        buildFigures(ladder, frequency, carrier, gain, figure);
        if (broken(mask, figure) === 0) passes[i] = (passes[i] as number) + 1;
      }
      done += trials.length;
    }
    if (done < next) continue;
    yield Math.min(1, done / all);
    next = done + BREATH;
  }
  return {
    order,
    share,
    factors,
    frequency,
    wanted,
    wantedFigures,
    found,
    envelope,
    sums,
    units,
    trials,
    passes,
    tried,
  };
}
