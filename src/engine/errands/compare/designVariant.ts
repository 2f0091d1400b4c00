import type { CarrierSeen } from '../../stages/carrier/seen.ts';
import { workCarrier } from '../../stages/carrier/work.ts';
import type { Variant } from '../../stages/compare/variants.ts';
import type { FilterSeen } from '../../stages/filter/seen.ts';
import { workFilter } from '../../stages/filter/work.ts';

/**
 * One filter as the Filter sheet designs it, and the carrier as the Carrier sheet puts it on it.
 *
 * @param filter what the Filter sheet sees of the present rig
 * @param carrier what the Carrier sheet sees of it
 * @return what both found, `heard` null where there is no passband; what is wrong with the filter
 */
export function designVariant(variant: Variant, filter: FilterSeen, carrier: CarrierSeen) {
  const { results, problems } = workFilter(asked(variant, filter));
  const says = problems
    .filter(({ weight, field }) => weight === 'stops' || field === 'filter.family')
    .map((problem) => problem.says);
  const { ladder, loss, low3, high3, low6, high6 } = results;
  const lacks =
    !ladder || loss === null || low3 === null || high3 === null || low6 === null || high6 === null;
  const heard = lacks
    ? null
    : workCarrier({ ...carrier, ladder, loss, low3, high3, low6, high6 }).results;
  return { results, says, heard };
}

/** What the Filter sheet would see: an alternative works between its own ends. */
function asked(variant: Variant, filter: FilterSeen): FilterSeen {
  if (variant.name === 'A') return filter;
  const { crystals, bandwidth, family, form, ripple } = variant;
  return {
    ...filter,
    crystals,
    bandwidth,
    family,
    form,
    ripple,
    chosen: crystals === filter.crystals ? filter.chosen : null,
    sourceResistance: null,
    loadResistance: null,
    sourceReactance: 0,
    loadReactance: 0,
  };
}
