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
import { named, under } from './named.ts';

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
