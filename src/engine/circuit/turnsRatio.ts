/** Turns of a transformer that steps one resistance to another. */
export interface TurnsRatio {
  /** Whole turns on the first side in the ratio; null where the ratio is kept exact. */
  readonly primary: number | null;
  /** Whole turns on the second side in the ratio; null where the ratio is kept exact. */
  readonly secondary: number | null;
  /** Second side over first. */
  readonly ratio: number;
}

/** How far whole turns may be off the exact ratio; impedances are then off by twice that. */
export const TURNS_TOLERANCE = 0.04;

/**
 * The smallest whole turns whose ratio comes within 4 % of the root of the impedances.
 *
 * @param impedances second resistance over first
 * @param exact keep the exact ratio, without whole turns
 */
export function turnsRatio(impedances: number, exact: boolean): TurnsRatio {
  const wanted = Math.sqrt(impedances);
  if (exact) return { primary: null, secondary: null, ratio: wanted };
  const steep = Math.max(wanted, 1 / wanted);
  let few = 1;
  while (Math.abs(Math.round(few * steep) / (few * steep) - 1) > TURNS_TOLERANCE) few += 1;
  const many = Math.round(few * steep);
  return wanted >= 1
    ? { primary: few, secondary: many, ratio: many / few }
    : { primary: many, secondary: few, ratio: few / many };
}
