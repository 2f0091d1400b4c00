import { buyErrand, chooseErrand } from './choose/errand.ts';
import { compareErrand } from './compare/errand.ts';
import { dayErrand } from './day/errand.ts';
import type { Errand } from './errand.ts';
import { hearErrand } from './hear/errand.ts';
import { mismatchedErrand } from './mismatched/errand.ts';
import { powerErrand } from './power/errand.ts';
import { suggestErrand } from './suggest/errand.ts';
import { yieldErrand } from './yield/errand.ts';

/** All errands by their key. */
export const errands: readonly Errand[] = [
  buyErrand,
  chooseErrand,
  compareErrand,
  dayErrand,
  hearErrand,
  mismatchedErrand,
  powerErrand,
  suggestErrand,
  yieldErrand,
];
