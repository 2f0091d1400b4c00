import { format, formatTrimmed } from './format.ts';
import type { Unit } from './units.ts';

/** As much of a field as its range message needs. */
export interface Ranged {
  readonly label: string;
  readonly unit: Unit;
  readonly range: readonly [low: number, high: number];
  readonly digits?: number;
}

/**
 * "Bandwidth must lie between 200 Hz and 6 kHz; this is 9.00 kHz.", or null if the value fits.
 *
 * @param value in the unit of storage
 */
export function outOfRange({ label, unit, range, digits }: Ranged, value: number): string | null {
  const [low, high] = range;
  if (value >= low && value <= high) return null;
  const limits = `${formatTrimmed(low, unit, 6)} and ${formatTrimmed(high, unit, 6)}`;
  return `${label} must lie between ${limits}; this is ${format(value, unit, digits)}.`;
}
