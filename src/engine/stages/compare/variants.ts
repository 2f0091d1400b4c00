import type { ValueOf } from '../../fields/kinds.ts';
import { filterFields } from '../filter/fields.ts';
import type { CompareSeen } from './seen.ts';

type FilterInputs = (typeof filterFields)['inputs'];

/** The key of a family of filters. */
export type FamilyKey = ValueOf<FilterInputs['family']>;

/** The key of how crystals stand. */
export type FormKey = ValueOf<FilterInputs['form']>;

/** One of the filters side by side: how it differs from the present one. */
export interface Variant {
  readonly name: 'A' | 'B' | 'C' | 'D';
  readonly crystals: number;
  /** Hz */
  readonly bandwidth: number;
  readonly family: FamilyKey;
  /** In series, or to ground. */
  readonly form: FormKey;
  /** dB */
  readonly ripple: number;
}

/** The alternatives by the letter of their fields, in order. */
export const letters = ['b', 'c', 'd'] as const;
export type Letter = (typeof letters)[number];

/** The present filter, and each alternative that is to stand beside it. */
export function variantsOf(seen: CompareSeen): Variant[] {
  const { crystals, bandwidth, family, form, ripple } = seen;
  const present: Variant = { name: 'A', crystals, bandwidth, family, form, ripple };
  const others = letters
    .filter((letter) => seen[letter] === 'yes')
    .map((letter): Variant => {
      const other = seen[`${letter}Family`];
      const stand = seen[`${letter}Form`];
      return {
        name: letter.toUpperCase() as Variant['name'],
        crystals: seen[`${letter}Crystals`] ?? crystals,
        bandwidth: seen[`${letter}Bandwidth`] ?? bandwidth,
        family: other === 'same' ? family : other,
        form: stand === 'same' ? form : stand,
        ripple: seen[`${letter}Ripple`] ?? ripple,
      };
    });
  return [present, ...others];
}

/** A family in words. */
export const familyWords = (family: FamilyKey): string =>
  filterFields.inputs.family.options[family];

/** How crystals stand, in a word. */
export const formWords: Readonly<Record<FormKey, string>> = {
  series: 'in series',
  shunt: 'to ground',
};
