import { readColumns } from './readColumns.ts';
import { isTouchstone, readTouchstone } from './readTouchstone.ts';
import type { SweepText } from './sweepText.ts';

/**
 * Takes a pasted sweep apart: Touchstone where it is one, else columns of numbers.
 * Whatever the text, it answers; what could not be read is said in the notes.
 */
export const readSweepText = (text: string): SweepText =>
  isTouchstone(text) ? readTouchstone(text) : readColumns(text);
