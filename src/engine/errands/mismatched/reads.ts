import { powerReads } from '../power/reads.ts';

/** What the final in mismatch follows from. */
export const mismatchedReads = {
  ...powerReads,
  limitVce: 'transmit.limitVce',
  swr: 'mismatch.swr',
} as const;
