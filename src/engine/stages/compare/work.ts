import type { Problem, Work } from '../../fields/stage.ts';
import type { compareFields } from './fields.ts';
import type { CompareSeen } from './seen.ts';
import { familyWords, formWords, type Variant, variantsOf } from './variants.ts';

/** Families whose shape depends on the ripple. */
const withRipple: readonly string[] = ['chebyshev'];

/** Which filters are to stand side by side; they are designed on an errand. */
export function workCompare(seen: CompareSeen): Work<typeof compareFields> {
  const variants = variantsOf(seen);
  return {
    results: {
      filters: variants.length,
      described: variants.map(({ name, crystals, bandwidth, family, form, ripple }) => ({
        name: name === 'A' ? 'A, the present one' : name,
        crystals,
        bandwidth,
        family: familyWords(family),
        form: formWords[form],
        ripple: withRipple.includes(family) ? ripple : null,
      })),
      variants,
    },
    problems: problems(variants),
  };
}

/** Alternatives that are none. */
function problems([present, ...others]: readonly Variant[]): Problem[] {
  return others
    .filter((other) => present && alike(other, present))
    .map(({ name }) => ({
      field: `compare.${name.toLowerCase()}Family`,
      weight: 'warns',
      says: `Filter ${name} is as the present one in everything.`,
      try: 'Another family, width or number of crystals.',
    }));
}

const alike = (a: Variant, b: Variant): boolean =>
  a.crystals === b.crystals &&
  a.bandwidth === b.bandwidth &&
  a.family === b.family &&
  a.form === b.form &&
  (a.ripple === b.ripple || !withRipple.includes(a.family));
