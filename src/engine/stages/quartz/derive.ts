import type { Origin } from '../../fields/kinds.ts';
import type { Source } from './sources.ts';

/** What may be known of a crystal: Hz, H, F, Ω; null where it is not. */
export interface Given {
  readonly fs: number | null;
  readonly lm: number | null;
  readonly cm: number | null;
  readonly rm: number | null;
  readonly qu: number | null;
  readonly c0: number | null;
  readonly fp: number | null;
}

/** How a figure was come by; the workings show it. */
export type Way =
  | 'given'
  | 'guess'
  | 'resonance'
  | 'spacing'
  | 'loss'
  | 'marking'
  | 'parallel'
  | 'shunt';

/** A whole crystal, and how each figure was come by. */
export interface Crystal {
  readonly values: { readonly [K in keyof Given]: number };
  readonly ways: { readonly [K in keyof Given]: Way };
}

/** The load for which crystals are usually marked, F. */
export const MARKED_LOAD = 20e-12;

/**
 * Completes a crystal from what is given, in the order that trusts measurements most:
 * fs² = 1/(4π²·Lm·Cm), fp = fs·√(1 + Cm/C0), Qu = 2π·fs·Lm/Rm, and guesses for what is left.
 * Returns null where not even a frequency can be found.
 */
export function deriveCrystal(
  given: Given,
  guess: (frequency: number) => { cm: number; rm: number; c0: number },
  marking: number | null,
): Crystal | null {
  const rough = given.fs ?? resonance(given.lm, given.cm) ?? given.fp ?? marking;
  if (rough === null) return null;
  const typical = guess(rough);

  let [cm, cmWay] = first(
    [given.cm, 'given'],
    [compliance(rough, given.lm), 'resonance'],
    [typical.cm, 'guess'],
  );
  let fs = rough;
  let fsWay: Way = 'given';
  // fs and Cm need each other where fs is found from fp or the marking: each pass gains two digits.
  for (let pass = 0; pass < 8; pass += 1) {
    const shunt = given.c0 ?? typical.c0;
    [fs, fsWay] = first(
      [given.fs, 'given'],
      [resonance(given.lm, given.cm), 'resonance'],
      [given.fp === null ? null : given.fp / Math.sqrt(1 + cm / shunt), 'parallel'],
      [rough / (1 + cm / (2 * (shunt + MARKED_LOAD))), 'marking'],
    );
    [cm, cmWay] = first(
      [given.cm, 'given'],
      [compliance(fs, given.lm), 'resonance'],
      [fsWay === 'given' ? spaced(fs, given.fp, given.c0) : null, 'spacing'],
      [typical.cm, 'guess'],
    );
  }
  const fpSure = fsWay === 'parallel' ? null : given.fp;
  const [c0, c0Way] = first(
    [given.c0, 'given'],
    [fpSure === null || fpSure <= fs ? null : cm / ((fpSure / fs) ** 2 - 1), 'shunt'],
    [typical.c0, 'guess'],
  );
  const [lm, lmWay] = first([given.lm, 'given'], [1 / ((TWO_PI * fs) ** 2 * cm), 'resonance']);
  const reactance = TWO_PI * fs * lm;
  const [rm, rmWay] = first(
    [given.rm, 'given'],
    [given.qu === null ? null : reactance / given.qu, 'loss'],
    [typical.rm, 'guess'],
  );
  const [qu, quWay] = first([given.qu, 'given'], [reactance / rm, 'loss']);
  const [fp, fpWay] = first([given.fp, 'given'], [fs * Math.sqrt(1 + cm / c0), 'spacing']);
  return {
    values: { fs, lm, cm, rm, qu, c0, fp },
    ways: { fs: fsWay, lm: lmWay, cm: cmWay, rm: rmWay, qu: quWay, c0: c0Way, fp: fpWay },
  };
}

const TWO_PI = 2 * Math.PI;

const resonance = (lm: number | null, cm: number | null) =>
  lm === null || cm === null ? null : 1 / (TWO_PI * Math.sqrt(lm * cm));

const compliance = (fs: number, lm: number | null) =>
  lm === null ? null : 1 / ((TWO_PI * fs) ** 2 * lm);

const spaced = (fs: number, fp: number | null, c0: number | null) =>
  fp === null || c0 === null || fp <= fs ? null : c0 * ((fp / fs) ** 2 - 1);

/** The first that is known, with the way it was come by; the last candidate is always known. */
function first(...candidates: readonly (readonly [number | null, Way])[]): [number, Way] {
  for (const [value, way] of candidates) if (value !== null) return [value, way];
  throw new RangeError('a crystal figure has no source');
}

/** Origin of a figure that was come by in a certain way. */
export function originOf(way: Way, from?: Source): Origin {
  if (way === 'given') return from === undefined || from === 'typed' ? 'typed' : 'measured';
  return way === 'guess' || way === 'marking' ? 'typical' : 'worked';
}
