import { bagFields } from '../../stages/bag/fields.ts';
import { carrierFields } from '../../stages/carrier/fields.ts';
import { carrierReads } from '../../stages/carrier/reads.ts';
import type { CarrierSeen } from '../../stages/carrier/seen.ts';
import { compareFields } from '../../stages/compare/fields.ts';
import type { Variant } from '../../stages/compare/variants.ts';
import { filterFields } from '../../stages/filter/fields.ts';
import { filterReads } from '../../stages/filter/reads.ts';
import type { FilterSeen } from '../../stages/filter/seen.ts';
import { planFields } from '../../stages/plan/fields.ts';
import { quartzFields } from '../../stages/quartz/fields.ts';
import { errand } from '../errand.ts';
import type { CompareAnswer, Compared } from './compareAnswer.ts';
import { compareFilter } from './compareFilter.ts';

/** The same reads under other names, where two sheets have names in common. */
type Named<P extends string, R> = { readonly [K in keyof R & string as `${P}${K}`]: R[K] };

const named = <const P extends string, R extends Readonly<Record<string, string>>>(
  prefix: P,
  reads: R,
): Named<P, R> =>
  Object.fromEntries(
    Object.entries(reads).map(([name, path]) => [`${prefix}${name}`, path]),
  ) as Named<P, R>;

/** What stands under a prefix, with its own names again. */
const under = (prefix: string, seen: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(
    Object.entries(seen).flatMap(([name, value]) =>
      name.startsWith(prefix) ? [[name.slice(prefix.length), value]] : [],
    ),
  );

/** Designs and works every filter that is to stand side by side. */
export const compareErrand = errand({
  key: 'compare',
  of: [planFields, bagFields, quartzFields, filterFields, carrierFields, compareFields],
  reads: {
    variants: 'compare.variants',
    ...named('filter_', filterReads),
    ...named('carrier_', carrierReads),
  },
  work: (seen) =>
    compareAll(
      seen.variants,
      under('filter_', seen) as FilterSeen,
      under('carrier_', seen) as CarrierSeen,
    ),
});

function* compareAll(
  variants: readonly Variant[],
  filter: FilterSeen,
  carrier: CarrierSeen,
): Generator<number, CompareAnswer, void> {
  const filters: Compared[] = [];
  for (const variant of variants) {
    filters.push(compareFilter(variant, filter, carrier));
    yield filters.length / variants.length;
  }
  return { filters };
}
