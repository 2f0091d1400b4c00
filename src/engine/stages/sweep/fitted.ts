import { type CrystalFit, crystalFit } from '../../circuit/crystalFit.ts';
import { SWEEP, SWEEP_SIZE } from '../../circuit/crystalSweep.ts';
import type { SweepSeen } from './seen.ts';
import type { Answering, Figure } from './sweepModel.ts';
import type { Understood } from './understand.ts';

/** What a holder usually has, and how far off that may be, F. */
export const USUAL_C0 = 4e-12;
const USUAL_SPREAD = 1.5e-12;

/** How far off a capacitance from a meter may be: this, or this part of it. */
const METER_SPREAD = 0.1e-12;
const METER_PART = 0.03;

/** Rows that are fitted at most; beyond, those far from the peak are thinned out. */
const MOST_ROWS = 2001;

/** A fit, the rows it was made to, and the crystal's figures. */
export interface Fitted {
  readonly fit: CrystalFit;
  readonly frequency: Float64Array;
  readonly level: Float64Array;
  readonly thinned: number;
  readonly c0From: 'sweep' | 'known' | 'usual';
  readonly cm: number;
  /** Without the fixture's stray. */
  readonly c0: number;
  readonly qu: number;
  readonly fp: number;
  readonly answering: Readonly<Record<Figure, Answering>>;
}

/** Fits the crystal to the sweep. The highest row must be neither the first nor the last. */
export function fitted(seen: SweepSeen, understood: Understood): Fitted | null {
  const { sweep, level, loose, resistance } = understood;
  if (sweep === null) return null;
  const rows = picked(level);
  const some = (all: Float64Array) => Float64Array.from(rows, (i) => all[i] as number);
  const known = seen.c0Known ?? metered(seen);
  const c0 = known ?? USUAL_C0 + seen.beside;
  const frequency = some(sweep.frequency);
  const kept = some(level);
  const fit = crystalFit({
    frequency,
    level: kept,
    phase: sweep.phase !== null && seen.use === 'all' ? some(sweep.phase) : null,
    rt: resistance,
    c0,
    c0Spread: known === null ? USUAL_SPREAD : Math.max(METER_SPREAD, METER_PART * c0),
    c0From: 'fit',
    shunt: seen.shunt,
    freeShunt: seen.shuntFree === 'free',
    freeLevel: loose || seen.levelFree === 'free',
  });
  const { fs, lm, rm } = fit;
  const cm = 1 / ((2 * Math.PI * fs) ** 2 * lm);
  const holder = fit.c0 - seen.beside;
  const c0From = !fit.c0Held ? 'sweep' : known === null ? 'usual' : 'known';
  const qu = (2 * Math.PI * fs * lm) / rm;
  const fp = fs * Math.sqrt(1 + cm / holder);
  return {
    fit,
    frequency,
    level: kept,
    thinned: level.length - rows.length,
    c0From,
    cm,
    c0: holder,
    qu,
    fp,
    answering: answering(fit, { cm, qu, fp, c0: holder }),
  };
}

/** Holder and fixture from the meter’s readings on Measure, F; null without one. */
function metered({ c0Read, meterStray, beside }: SweepSeen): number | null {
  const holder = c0Read === null ? 0 : c0Read - (meterStray ?? 0);
  return holder > 0 ? holder + beside : null;
}

/** Rows to fit: all, or those about the peak and some of the rest. */
function picked(level: Float64Array): number[] {
  const all = Array.from(level.keys());
  if (all.length <= MOST_ROWS) return all;
  const peak = level.indexOf(Math.max(...level));
  const near = MOST_ROWS >> 2;
  const every = Math.ceil(all.length / (MOST_ROWS / 2));
  return all.filter((i) => Math.abs(i - peak) <= near || i % every === 0);
}

/** First-order propagation: each figure's slopes by fs, ln Lm, Rm, C0, C and level. */
function answering(
  fit: CrystalFit,
  { cm, qu, fp, c0 }: { cm: number; qu: number; fp: number; c0: number },
): Record<Figure, Answering> {
  const { fs, lm, rm, covariance, doubt, spread } = fit;
  // fp = fs·√(1 + Cm/C0), Cm ∝ 1/(fs²·Lm)
  const root = 1 + cm / c0;
  const pull = (fp * (cm / c0)) / (2 * root);
  const slopes: Record<Figure, Partial<Record<keyof typeof SWEEP, number>>> = {
    fs: { fs: 1 },
    lm: { lnLm: lm },
    cm: { fs: (-2 * cm) / fs, lnLm: -cm },
    rm: { rm: 1 },
    c0: { c0: 1 },
    qu: { fs: qu / fs, lnLm: qu, rm: -qu / rm },
    fp: { fs: fp / fs - (2 * pull) / fs, lnLm: -pull, c0: -pull / c0 },
    shunt: { shunt: 1 },
    level: { level: 1 },
  };
  const one = (of: Partial<Record<keyof typeof SWEEP, number>>): Answering => {
    const entries = Object.entries(of).map(([key, slope]) => [SWEEP[key as 'fs'], slope] as const);
    let shift = 0;
    let whole = 0;
    for (const [j, a] of entries) {
      shift += a * (doubt[j] as number);
      for (const [k, b] of entries) whole += a * b * (covariance[j * SWEEP_SIZE + k] as number);
    }
    const noise = Math.sqrt(Math.max(whole - shift * shift, 0));
    return { perDb: spread > 0 ? noise / spread : 0, doubt: Math.abs(shift) };
  };
  return {
    fs: one(slopes.fs),
    lm: one(slopes.lm),
    cm: one(slopes.cm),
    rm: one(slopes.rm),
    c0: one(slopes.c0),
    qu: one(slopes.qu),
    fp: one(slopes.fp),
    shunt: one(slopes.shunt),
    level: one(slopes.level),
  };
}

/** Standard error from scatter (dB) and what a held C0 may be off. */
export const errorOf = ({ perDb, doubt }: Answering, scatter: number): number =>
  Math.sqrt((scatter * perDb) ** 2 + doubt ** 2);
