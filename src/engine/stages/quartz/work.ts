import { noResults, type Problem, type Seen, type Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { bagFields } from '../bag/fields.ts';
import type { measureFields } from '../measure/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { sweepFields } from '../sweep/fields.ts';
import { deriveCrystal, type Given, MARKED_LOAD, originOf } from './derive.ts';
import { quartzFields } from './fields.ts';
import type { quartzReads } from './reads.ts';
import { gather, type Known } from './sources.ts';
import { typicalCrystal } from './typical.ts';
import { whence } from './whence.ts';

type QuartzSeen = Seen<
  | typeof planFields
  | typeof measureFields
  | typeof sweepFields
  | typeof bagFields
  | typeof quartzFields,
  typeof quartzReads
>;

/** Completes the crystal's equivalent circuit, or says which given figure cannot be. */
export function workQuartz(seen: QuartzSeen): Work<typeof quartzFields> {
  const { given, from } = gather(knownOf(seen));
  const crystal = deriveCrystal(
    given,
    (f) => typicalCrystal(f, seen.holder),
    seen.marking ?? seen.nominal,
  );
  if (crystal === null) {
    return stop(
      'quartz.fsGiven',
      'No frequency of the crystal is known.',
      'Type fs, or the marking on the Plan.',
    );
  }
  const { values, ways } = crystal;
  const problems = contradictions(given, values);
  if (problems.length > 0) return { results: noResults(quartzFields), problems };
  const { fs, lm, cm, rm, qu, c0, fp } = values;
  return {
    results: {
      fs,
      lm,
      cm,
      rm,
      qu,
      c0,
      fp,
      ratio: c0 / cm,
      marking20: fs * Math.sqrt(1 + cm / (c0 + MARKED_LOAD)),
      ring: qu / (Math.PI * fs),
      whence: whence(ways, from, seen.method),
    },
    problems: cautions({ ...given, works: seen.filterFrequency }, values, ways),
    origins: {
      fs: originOf(ways.fs, from.fs),
      lm: originOf(ways.lm, from.lm),
      cm: originOf(ways.cm, from.cm),
      rm: originOf(ways.rm, from.rm),
      qu: originOf(ways.qu, from.qu),
      c0: originOf(ways.c0, from.c0),
      fp: originOf(ways.fp, from.fp),
    },
  };
}

/** What each place knows, under its own name. */
function knownOf(seen: QuartzSeen): Known {
  const { fs, lm, cm, rm, qu, c0, fp, method } = seen;
  const { measuredFs, measuredLm, measuredRm, measuredC0 } = seen;
  const { sweptFs, sweptLm, sweptRm, sweptC0 } = seen;
  const { baggedFs, baggedLm, baggedRm, baggedC0 } = seen;
  return {
    ...{ fs, lm, cm, rm, qu, c0, fp, method },
    measured: { fs: measuredFs, lm: measuredLm, rm: measuredRm, c0: measuredC0 },
    swept: { fs: sweptFs, lm: sweptLm, rm: sweptRm, c0: sweptC0 },
    bagged: { fs: baggedFs, lm: baggedLm, rm: baggedRm, c0: baggedC0 },
  };
}

function stop(field: string, says: string, help: string): Work<typeof quartzFields> {
  return {
    results: noResults(quartzFields),
    problems: [{ field, weight: 'stops', says, try: help }],
  };
}

/** What no crystal can be, and figures that speak against each other, by the name of the field. */
function contradictions(given: Given, worked: { [K in keyof Given]: number }): Problem[] {
  const problems: Problem[] = [];
  const say = (field: keyof Given, says: string, help: string) =>
    problems.push({ field: `quartz.${field}Given`, weight: 'stops', says, try: help });
  const { fs, lm, cm, rm, c0 } = worked;
  const off = (a: number, b: number) => Math.abs(a / b - 1);
  const reactance = 2 * Math.PI * fs * lm;
  const cmOfFs = 1 / ((2 * Math.PI * fs) ** 2 * lm);

  // Does the parallel resonance lie above the series resonance?
  if (given.fp !== null && given.fp <= fs) {
    say(
      'fp',
      `fp (${hertz(given.fp)}) must lie above fs (${hertz(fs)}).`,
      'The two may have been swapped.',
    );
  }
  // Do fs, Lm and Cm agree?
  if (given.fs !== null && given.lm !== null && given.cm !== null && off(given.cm, cmOfFs) > 0.02) {
    say(
      'cm',
      `fs and Lm make Cm ${format(cmOfFs, 'F', 4)}, not ${format(given.cm, 'F', 4)}.`,
      'Leave one of the three blank.',
    );
  }
  // Do Rm and Qu agree?
  if (given.rm !== null && given.qu !== null && off(given.qu, reactance / rm) > 0.05) {
    say(
      'qu',
      `Rm makes Qu ${format(reactance / rm, '1', 3)}, not ${format(given.qu, '1', 3)}.`,
      'Leave one of the two blank.',
    );
  }
  // Do fp, C0 and Cm agree?
  const spacing = fs * Math.sqrt(1 + cm / c0) - fs;
  const known = given.c0 !== null && (given.cm !== null || given.lm !== null);
  if (
    given.fs !== null &&
    given.fp !== null &&
    given.fp > fs &&
    known &&
    off(given.fp - fs, spacing) > 0.1
  ) {
    say(
      'fp',
      `C0 and Cm put fp ${format(spacing, 'Hz', 3)} above fs, not ${format(given.fp - fs, 'Hz', 3)}.`,
      `Stray capacitance in the fixture counts as C0: half a picofarad is ${format(0.5e-12 / c0, '%', 2)} of it here.`,
    );
  }
  // Can it be quartz at all?
  if (cm / c0 > 0.01) {
    const field = given.cm !== null ? 'cm' : given.lm !== null ? 'lm' : 'c0';
    say(
      field,
      `Cm would be 1/${format(c0 / cm, '1', 2)} of C0; quartz stays below 1/100.`,
      'Check the unit of Lm (mH), Cm (fF) or C0 (pF).',
    );
  }
  if (reactance / rm > 5e6) {
    say(
      given.rm !== null ? 'rm' : 'lm',
      `Qu would be ${format(reactance / rm, '1', 3)}; no crystal reaches 5 million.`,
      'Check Rm and Lm.',
    );
  }
  return problems;
}

const hertz = (f: number) => format(f, 'Hz', 7);

/** What can be worked with, but should be looked at. */
function cautions(
  given: Given & { works: number | null },
  { fs, qu }: { fs: number; qu: number },
  ways: { [K in keyof Given]: string },
): Problem[] {
  const problems: Problem[] = [];
  if (ways.cm === 'guess') {
    problems.push({
      field: 'quartz.lmGiven',
      weight: 'warns',
      says: 'Lm and Cm are guesses for this frequency and holder: off by a third either way.',
      try: 'Measure one crystal of the bag before buying capacitors.',
    });
  }
  if (given.works !== null && Math.abs(fs / given.works - 1) > 0.005) {
    problems.push({
      field: 'quartz.fsGiven',
      weight: 'warns',
      says: `fs lies ${format(Math.abs(fs - given.works), 'Hz', 3)} from the frequency on the Plan.`,
      try: 'The crystals are where the filter works: on the operating frequency, or in a rig that converts on their marking.',
    });
  }
  if (qu < 10_000) {
    problems.push({
      field: given.qu !== null ? 'quartz.quGiven' : 'quartz.rmGiven',
      weight: 'warns',
      says: `Qu ${format(qu, '1', 3)} is poor for a crystal.`,
      try: 'Full-height cans usually have 50 000 and more.',
    });
  }
  return problems;
}
