import { crystalFitStarts } from './crystalFitStart.ts';
import { crystalSweepAt, NEPER, SWEEP, SWEEP_POINT, SWEEP_SIZE } from './crystalSweep.ts';
import { heldDoubt, sweepCovariance } from './sweepCovariance.ts';
import { descend, lowest, polish, type SweepState } from './sweepDescent.ts';
import { highestRow, rowsThatCount, type SweepRows, sweepMeans } from './sweepRows.ts';
import { firstWeights, weighed } from './sweepWeights.ts';

/** A fixture’s capacitance known worse than this is not known, F. */
const SHUNT_TELLS = 10e-12;

/** A sweep through a crystal, and what is known beforehand. */
export interface CrystalFitTask {
  /** Hz, rising. */
  readonly frequency: Float64Array;
  /** dB against a through connection. */
  readonly level: Float64Array;
  /** rad; null to fit the level alone. With it a constant phase is fitted as well. */
  readonly phase: Float64Array | null;
  /** Resistance at each side of the crystal, Ω. */
  readonly rt: number;
  /** Holder capacitance where the sweep does not tell it, and how far off that may be, F. */
  readonly c0: number;
  readonly c0Spread: number;
  /** `fit`: from the sweep if it tells; `hold`: as given. */
  readonly c0From: 'fit' | 'hold';
  /** Capacitance from each side of the crystal to ground, F. */
  readonly shunt: number;
  readonly freeShunt: boolean;
  readonly freeLevel: boolean;
}

export interface CrystalFit {
  /** Hz; H; Ω; F; F; dB; rad. */
  readonly fs: number;
  readonly lm: number;
  readonly rm: number;
  readonly c0: number;
  readonly shunt: number;
  readonly level: number;
  readonly phase: number;
  /**
   * Covariance of the parameters by `SWEEP` (of ln Lm, not Lm), 7 × 7; zero where held. What a
   * held C0 may be off is in it.
   */
  readonly covariance: Float64Array;
  /** How far each parameter moves if a held C0 is off by its spread; zeros where it was fitted. */
  readonly doubt: Float64Array;
  /**
   * What the rows, each with the other parameters as fitted, say of each parameter: the mean,
   * weighted by the square of the slope. Equal to the parameter where the sum is least. Lm in H,
   * fs in Hz.
   */
  readonly means: Float64Array;
  /** The fixture’s capacitance was to be fitted, and the sweep tells it. */
  readonly shuntFitted: boolean;
  /** The sweep does not tell C0: it was held. */
  readonly c0Held: boolean;
  /** Root mean square of what the fit leaves, dB; with phase: of dB and phase alike. */
  readonly rms: number;
  /** The same, divided by what is left after as many parameters as were fitted. */
  readonly spread: number;
  /** Parameters fitted. */
  readonly free: number;
  /** Rows that count less, being far off the rest. */
  readonly discounted: number;
  /** The fitted level at each row, dB. */
  readonly fitted: Float64Array;
  /** Weighted sum of squares, dB², over so many rows (of level and of phase). */
  readonly sum: number;
  readonly count: number;
  /** The fit came to rest. */
  readonly rest: boolean;
}

/**
 * Fits the equivalent circuit of a crystal to a sweep through it, by least squares of the level in
 * dB (and of the phase, in the same measure), after Levenberg and Marquardt.
 *
 * Sources: D. Marquardt, J. SIAM 11 (1963) 431; standard errors from the covariance s²(JᵀJ)⁻¹:
 * Press et al., Numerical Recipes, section 15.4. Rows that scatter more weigh less.
 *
 * Own kernel: on 401 rows the package ml-levenberg-marquardt, which takes slopes by differences, came
 * to the same figures (Lm to 1e-8) in 24 ms where this takes 1 ms.
 *
 * @param task at least as many rows as parameters and one more, the highest neither first nor last
 */
export function crystalFit(task: CrystalFitTask): CrystalFit {
  const { frequency, level, phase } = task;
  const peak = highestRow(level);
  const reference = frequency[peak] as number;
  const rows: SweepRows = {
    offset: frequency.map((f) => f - reference),
    level,
    phase,
    weight: firstWeights(level),
    trust: new Float64Array(frequency.length).fill(1),
    reference,
    rt: task.rt,
  };
  const starts = crystalFitStarts({ ...rows, peak, c0: task.c0, shunt: task.shunt });
  if (task.freeLevel) starts.push(...louderStarts(task, rows, peak));
  const core = [SWEEP.fs, SWEEP.lnLm, SWEEP.rm] as number[];
  if (task.freeLevel) core.push(SWEEP.level);
  if (phase !== null) core.push(SWEEP.phase);
  const withC0 = [...core, SWEEP.c0];
  let c0Held = task.c0From === 'hold';
  let found = c0Held ? null : weighed(rows, lowest(rows, starts, withC0), withC0);
  if (found !== null) {
    // A sweep that knows it worse than was known before does not tell it.
    const error = errorAt(rows, found, withC0, SWEEP.c0);
    c0Held = !((found.p[SWEEP.c0] as number) > 0 && error < task.c0Spread);
  }
  if (found === null || c0Held) {
    const held = starts.map((p) => p.with(SWEEP.c0, task.c0));
    if (found !== null) held.unshift(found.p.with(SWEEP.c0, task.c0));
    rows.weight.set(firstWeights(level));
    rows.trust.fill(1);
    found = weighed(rows, lowest(rows, held, core), core);
  }
  const free = c0Held ? core : withC0;
  const fitted = polish(rows, found, free);
  const more = task.freeShunt ? withShunt(rows, fitted, free) : null;
  return more === null
    ? answer(task, rows, fitted, free, c0Held)
    : answer(task, rows, more, [...free, SWEEP.shunt], c0Held);
}

/** The fixture’s capacitance is freed when the rest has found its place; null where it does not show. */
function withShunt(
  rows: SweepRows,
  fitted: SweepState,
  free: readonly number[],
): SweepState | null {
  const all = [...free, SWEEP.shunt];
  const found = polish(rows, descend(rows, { ...fitted, p: fitted.p.slice() }, all), all);
  const told = errorAt(rows, found, all, SWEEP.shunt) < SHUNT_TELLS && atRest(rows, found, all);
  return told && found.sum <= fitted.sum ? found : null;
}

const errorAt = (rows: SweepRows, state: SweepState, free: readonly number[], at: number): number =>
  Math.sqrt(sweepCovariance(rows, state, free)[at * (SWEEP_SIZE + 1)] as number);

/** Do the rows agree, to more digits than are ever shown? */
function atRest(rows: SweepRows, { p }: SweepState, free: readonly number[]): boolean {
  const means = sweepMeans(rows, p);
  const near = (at: number, value: number) =>
    Math.abs((means[at] as number) - value) <= 2e-10 * Math.abs(value);
  return free.every((at) => {
    if (at === SWEEP.fs) return near(at, rows.reference + (p[at] as number));
    if (at === SWEEP.lnLm) return near(at, Math.exp(p[at] as number));
    // What may be nothing at all has no digits of its own.
    return at === SWEEP.level || at === SWEEP.phase || near(at, p[at] as number);
  });
}

/** Starts for a level that is anything: as if the peak lost little. */
function louderStarts(task: CrystalFitTask, rows: SweepRows, peak: number): Float64Array[] {
  const found: Float64Array[] = [];
  for (const loss of [0.5, 3]) {
    const level = (rows.level[peak] as number) + loss;
    const shifted = rows.level.map((x) => x - level);
    const starts = crystalFitStarts({
      ...rows,
      level: shifted,
      peak,
      c0: task.c0,
      shunt: task.shunt,
    });
    found.push(...starts.slice(0, 2).map((p) => p.with(SWEEP.level, level)));
  }
  return found;
}

const point = new Float64Array(SWEEP_POINT);

function answer(
  task: CrystalFitTask,
  rows: SweepRows,
  state: SweepState,
  free: readonly number[],
  c0Held: boolean,
): CrystalFit {
  const { p } = state;
  const covariance = sweepCovariance(rows, state, free);
  const doubt = new Float64Array(SWEEP_SIZE);
  if (c0Held) heldDoubt(rows, state, free, task.c0Spread, doubt);
  for (let j = 0; j < SWEEP_SIZE; j += 1) {
    for (let k = 0; k < SWEEP_SIZE; k += 1) {
      const at = j * SWEEP_SIZE + k;
      covariance[at] = (covariance[at] as number) + (doubt[j] as number) * (doubt[k] as number);
    }
  }
  const means = sweepMeans(rows, p);
  const fitted = rows.offset.map((offset) => {
    crystalSweepAt(p, rows.reference, offset, rows.rt, point);
    return (point[0] as number) * NEPER;
  });
  const count = rowsThatCount(rows);
  return {
    fs: rows.reference + (p[SWEEP.fs] as number),
    lm: Math.exp(p[SWEEP.lnLm] as number),
    rm: p[SWEEP.rm] as number,
    c0: p[SWEEP.c0] as number,
    shunt: p[SWEEP.shunt] as number,
    level: p[SWEEP.level] as number,
    phase: p[SWEEP.phase] as number,
    covariance,
    doubt,
    means,
    shuntFitted: free.includes(SWEEP.shunt),
    c0Held,
    rms: NEPER * Math.sqrt(state.sum / count),
    spread: NEPER * Math.sqrt(state.sum / Math.max(1, count - free.length)),
    free: free.length,
    discounted: rows.trust.filter((trust) => trust < 1).length,
    sum: NEPER * NEPER * state.sum,
    count,
    fitted,
    rest: atRest(rows, state, free),
  };
}
