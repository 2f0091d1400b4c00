import type { Count, Quantity } from '../../engine/fields/kinds.ts';
import { formatTrimmed } from '../../engine/quantity/format.ts';

/**
 * The text after an arrow key: one in the second digit (one unit for levels and angles), ten times
 * that with Shift; held within the field's range and written the way the field is shown.
 */
export function stepped(
  field: Quantity | Count,
  value: number,
  direction: 1 | -1,
  coarse: boolean,
): string {
  const [low, high] = field.range ?? [-Infinity, Infinity];
  const by = stepSize(field, value) * (coarse ? 10 : 1);
  const moved = Math.round(value / by) * by + direction * by;
  const held = Math.min(high, Math.max(low, moved));
  if (field.kind === 'count') return String(Math.round(held));
  return formatTrimmed(Number(held.toPrecision(12)), field.unit, 9);
}

function stepSize(field: Quantity | Count, value: number): number {
  if (field.kind === 'count') return 1;
  if (field.unit === '°') return Math.PI / 180;
  if (['dB', 'dBm', 'dBc', 'dBi', '°C', 'K'].includes(field.unit)) return 1;
  const size = Math.abs(value) || Math.abs(field.range?.[1] ?? 1) / 100;
  // Frequencies are tuned in kilohertz at most, however large they are.
  const decade = 10 ** (Math.floor(Math.log10(size) + 1e-9) - 1);
  return field.unit === 'Hz' && size > 1e6 ? 1000 : decade;
}
