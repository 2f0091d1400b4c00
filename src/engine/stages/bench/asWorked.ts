import type { Working } from '../../fields/workings.ts';

/** The working of an expectation that another sheet gives as it stands. */
export const asWorked = (symbol: string, path: string, says: string): Working => ({
  says,
  formula: symbol,
  where: { [symbol]: path },
  source: 'the sheet named there',
});
