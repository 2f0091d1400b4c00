import { readCell } from './cell.ts';
import { medianOf } from './statistics.ts';

/** So near to the median of a column, a figure is one of a lot of crystals. */
const ALIKE = 0.005;

/**
 * For each place in the lines, how many cells hold a frequency that agrees with the others there:
 * that tells frequencies from running numbers and resistances, which may pass for megahertz.
 */
export function alikeByPlace(lines: readonly (readonly string[])[]): number[] {
  const widest = Math.max(0, ...lines.map((cells) => cells.length));
  return Array.from({ length: widest }, (_, place) => {
    const found = lines
      .map((cells) => readCell(cells[place] ?? '', 'fs', null).value)
      .filter((one) => one !== null)
      .sort((a, b) => a - b);
    if (found.length === 0) return 0;
    const median = medianOf(found);
    return found.filter((one) => Math.abs(one / median - 1) <= ALIKE).length;
  });
}
