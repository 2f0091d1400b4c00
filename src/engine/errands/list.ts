import type { Errand } from './errand.ts';

/** All errands by their key. */
export const errands: readonly Errand[] = [];
