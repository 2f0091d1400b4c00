import type { Chance } from '../../engine/errands/yield/chance.ts';
import { format } from '../../engine/quantity/format.ts';

/** A chance with a digit that it deserves: "87.3 %", and no false "100 %". */
export function chanceText(share: number): string {
  const digits = share >= 0.1 && share < 0.9995 ? 3 : share >= 0.9995 ? 4 : 2;
  return share === 0 ? format(0, '%', 3) : format(share, '%', digits);
}

/** Between which ends the true chance lies. */
export const betweenText = ({ low, high }: Chance): string =>
  `${chanceText(low)} to ${chanceText(high)}`;
