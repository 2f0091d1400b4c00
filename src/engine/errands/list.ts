import { compareErrand } from './compare/errand.ts';
import type { Errand } from './errand.ts';
import { yieldErrand } from './yield/errand.ts';

/** All errands by their key. */
export const errands: readonly Errand[] = [compareErrand, yieldErrand];
