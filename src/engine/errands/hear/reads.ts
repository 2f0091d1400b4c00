import { carrierReads } from '../../stages/carrier/reads.ts';
import { filterReads } from '../../stages/filter/reads.ts';
import { named } from '../compare/named.ts';

/** What is heard follows from the filters, and from what Hear says of the way. */
export const hearReads = {
  variants: 'compare.variants',
  ...named('filter_', filterReads),
  ...named('carrier_', carrierReads),
  side: 'plan.filterSideband',
  noiseBandwidth: 'filter.noiseBandwidth?',
  ratioUsed: 'hear.ratioUsed?',
  fadingUsed: 'hear.fadingUsed',
  ways: 'hear.ways',
  offTune: 'hear.offTune',
  micLow: 'hear.micLow?',
  micHigh: 'hear.micHigh?',
  final: 'hear.final',
  over: 'hear.over',
  knee: 'hear.knee',
  speakerLow: 'hear.speakerLow?',
  speakerHigh: 'hear.speakerHigh?',
} as const;
