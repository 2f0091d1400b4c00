import { holders, typicalCrystals } from '../../data/holders.ts';

/** The load for which crystals are usually marked, F. */
export const MARKED_LOAD = 20e-12;

/**
 * A crystal to expect at a marking, for planning a sweep: the nearest of the typical table, in a
 * full-height can. Hz, H, Ω, F, Hz. Within a factor of two.
 */
export function expectedCrystal(marking: number): {
  fs: number;
  lm: number;
  cm: number;
  rm: number;
  c0: number;
  fp: number;
} {
  const near = (f: number) => Math.abs(Math.log(f / marking));
  const row = typicalCrystals.reduce((a, b) => (near(b.f) < near(a.f) ? b : a));
  const cm = 1 / ((2 * Math.PI * row.f) ** 2 * row.lm);
  const { c0 } = holders.full;
  const fs = marking / (1 + cm / (2 * (c0 + MARKED_LOAD)));
  const lm = 1 / ((2 * Math.PI * fs) ** 2 * cm);
  return { fs, lm, cm, rm: row.rm, c0, fp: fs * Math.sqrt(1 + cm / c0) };
}
