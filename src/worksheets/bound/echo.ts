import type { Count, Quantity } from '../../engine/fields/kinds.ts';
import { formatTrimmed } from '../../engine/quantity/format.ts';
import { units } from '../../engine/quantity/units.ts';
import type { WorkedInput } from '../../engine/rig/worked.ts';

/** How an entry was understood: `4.7 µH`, with a word where something was taken for granted. */
export function echoOf(field: Quantity, input: WorkedInput): string | undefined {
  if (typeof input.value !== 'number' || input.text === undefined) return undefined;
  const value = formatTrimmed(input.value, field.unit, input.note === undefined ? 9 : 4);
  return input.note === undefined ? value : `${value} ${input.note}`;
}

/** What is used while the field is blank. */
export function typicalOf(field: Quantity | Count): string | undefined {
  if (field.default === null || field.default === undefined) return undefined;
  return field.kind === 'count'
    ? String(field.default)
    : formatTrimmed(field.default, field.unit, 6);
}

/** The unit that a bare number is taken in. */
export function unitShown(field: Quantity): string | undefined {
  const { shown } = units[field.unit];
  return shown === '' ? undefined : shown;
}

/** Prefix letters that this quantity is usually written with, for telephones. */
export function prefixesOf(field: Quantity): readonly string[] | undefined {
  const usual: Partial<Record<string, readonly string[]>> = {
    F: ['f', 'p', 'n', 'µ'],
    H: ['n', 'µ', 'm'],
    Hz: ['k', 'M'],
    Ω: ['k', 'M'],
    W: ['m', 'dBm', 'Vpp'],
    A: ['m'],
    V: ['m'],
    Vpp: ['m'],
    Vrms: ['m', 'µ'],
  };
  return usual[field.unit];
}
