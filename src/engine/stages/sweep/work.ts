import { crystalSweepAt, NEPER, SWEEP_POINT, SWEEP_SIZE } from '../../circuit/crystalSweep.ts';
import type { Origin } from '../../fields/kinds.ts';
import { noResults, type Problem, type Work } from '../../fields/stage.ts';
import { expectedCrystal } from './expected.ts';
import { sweepFields } from './fields.ts';
import { errorOf, type Fitted } from './fitted.ts';
import { fittedOnce } from './fittedOnce.ts';
import { cautions, noCrystal } from './problems.ts';
import type { SweepSeen } from './seen.ts';
import { sweepCurve } from './sweepCurve.ts';
import type { Figure, SweepModel } from './sweepModel.ts';
import { columnRows, noticeRows } from './tables.ts';
import type { Understood } from './understand.ts';

type Answer = Work<typeof sweepFields>;
type Results = { -readonly [K in keyof Answer['results']]: Answer['results'][K] };

/** Reads a sweep, fits the crystal to it, and says how a good one is taken. */
export function workSweep(seen: SweepSeen): Answer {
  const results: Results = { ...noResults(sweepFields) };
  const marking = seen.marking ?? seen.nominal;
  const expected = marking === null ? null : expectedCrystal(marking);
  const rt = seen.rt ?? 50;
  const model: { -readonly [K in keyof SweepModel]: SweepModel[K] } = {
    ends: [],
    rows: 0,
    from: 0,
    to: 0,
    around: [0, 0, 1],
    reference: null,
    expected,
    levels: null,
    fitted: null,
  };
  results.fit = model;
  if (seen.file === null || seen.file.trim() === '') {
    results.resistance = rt;
    if (expected !== null) advise(results, { ...expected, rt });
    return { results, problems: [], origins: guesses };
  }
  const { understood, problem, found } = fittedOnce(seen, seen.file);
  describe(results, model, understood);
  const wrong = problem ?? (found === null ? null : noCrystal(found, understood.resistance));
  if (found === null || wrong !== null) {
    results.notices = noticeRows(understood, 0, 0);
    if (expected !== null) advise(results, { ...expected, rt: understood.resistance });
    return { results, problems: wrong === null ? [] : [wrong], origins: guesses };
  }
  crystal(results, model, understood, found);
  const { width, ring, step } = results;
  const problems: Problem[] =
    width === null || ring === null
      ? []
      : cautions(seen, understood, found, { width, ring, step: step ?? 0 });
  return { results, problems, origins: measured };
}

const guesses: { readonly [K in keyof Results]?: Origin } = {
  width: 'typical',
  ring: 'typical',
  stepWanted: 'typical',
  bandwidthWanted: 'typical',
  peakFrom: 'typical',
  peakTo: 'typical',
  dipTo: 'typical',
  dipPoints: 'typical',
};

const measured: { readonly [K in keyof Results]?: Origin } = {
  fs: 'measured',
  lm: 'measured',
  rm: 'measured',
  c0: 'measured',
};

/** What was understood, whether it can be fitted or not. */
function describe(
  results: Results,
  model: { -readonly [K in keyof SweepModel]: SweepModel[K] },
  understood: Understood,
): void {
  const { text, sweep, level, resistance } = understood;
  results.format = text.format;
  results.columns = columnRows(understood);
  results.resistance = resistance;
  model.ends = text.columns.map(({ values }) => [values[0] ?? 0, values.at(-1) ?? 0]);
  model.reference = text.reference;
  if (sweep === null || sweep.frequency.length === 0) return;
  const { frequency } = sweep;
  const last = frequency.length - 1;
  const peak = level.indexOf(Math.max(...level));
  const [below, above] = [Math.max(peak - 1, 0), Math.min(peak + 1, last)];
  model.rows = frequency.length;
  model.from = frequency[0] as number;
  model.to = frequency[last] as number;
  model.around = [
    frequency[below] as number,
    frequency[above] as number,
    Math.max(above - below, 1),
  ];
  results.rows = model.rows;
  results.from = model.from;
  results.to = model.to;
  results.step = (model.around[1] - model.around[0]) / model.around[2];
}

/** The crystal's figures, their errors, and what is left. */
function crystal(
  results: Results,
  model: { -readonly [K in keyof SweepModel]: SweepModel[K] },
  understood: Understood,
  found: Fitted,
): void {
  const { fit, answering, c0From, cm, c0, qu, fp } = found;
  const { fs, lm, rm, spread, means } = fit;
  const { resistance } = understood;
  const error = (of: Figure) => errorOf(answering[of], spread);
  const sure = rm > 0;
  Object.assign(results, {
    notices: noticeRows(understood, found.thinned, fit.discounted),
    fs,
    fsError: error('fs'),
    lm,
    lmError: error('lm'),
    cm,
    cmError: error('cm'),
    rm: sure ? rm : null,
    rmError: sure ? error('rm') : null,
    c0All: fit.c0,
    c0,
    c0Error: error('c0'),
    c0From,
    qu: sure ? qu : null,
    quError: sure ? error('qu') : null,
    fp,
    fpError: error('fp'),
    rms: fit.rms,
    scatter: spread,
    discounted: fit.discounted,
    sweep: sweepCurve(found, resistance),
  } satisfies Partial<Results>);
  if (answering.shunt.perDb > 0) {
    results.shuntFound = fit.shunt;
    results.shuntError = error('shunt');
  }
  if (answering.level.perDb > 0) {
    results.levelFound = fit.level;
    results.levelError = error('level');
  }
  model.levels = results.sweep?.measured ?? null;
  model.fitted = {
    rm,
    level: fit.level,
    shunt: fit.shunt,
    held: fit.c0Held,
    means: {
      fs: means[0] as number,
      lm: means[1] as number,
      rm: means[2] as number,
      c0All: means[3] as number,
      shunt: means[4] as number,
      level: means[5] as number,
    },
    answering,
    sum: fit.sum,
    count: fit.count,
    free: fit.free,
  };
  const out = new Float64Array(SWEEP_POINT);
  const p = new Float64Array(SWEEP_SIZE);
  p.set([0, Math.log(lm), rm, fit.c0, fit.shunt, 0]);
  crystalSweepAt(p, fs, 0, resistance, out);
  results.peakLoss = -(out[0] as number) * NEPER;
  advise(results, { fs, lm, rm, fp, rt: resistance });
}

/** How to take a good sweep of a crystal. */
function advise(
  results: Results,
  { fs, lm, rm, fp, rt }: { fs: number; lm: number; rm: number; fp: number; rt: number },
): void {
  const width = (2 * rt + rm) / (2 * Math.PI * lm);
  const ring = 1 / (Math.PI * width);
  const step = width / 10;
  const from = fs - 6 * width;
  const dipTo = fp + (fp - fs) / 5;
  results.width = width;
  results.ring = ring;
  results.stepWanted = step;
  results.bandwidthWanted = 1 / (5 * ring);
  results.peakFrom = from;
  results.peakTo = fs + 6 * width;
  results.dipTo = dipTo;
  results.dipPoints = Math.ceil((dipTo - from) / step) + 1;
}
