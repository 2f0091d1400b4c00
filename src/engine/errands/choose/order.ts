import type { Seen } from '../../fields/stage.ts';
import { bagFields } from '../../stages/bag/fields.ts';
import { carrierFields } from '../../stages/carrier/fields.ts';
import { filterFields } from '../../stages/filter/fields.ts';
import { filterReads } from '../../stages/filter/reads.ts';
import { planFields } from '../../stages/plan/fields.ts';
import { quartzFields } from '../../stages/quartz/fields.ts';

export const of = [planFields, bagFields, quartzFields, filterFields, carrierFields] as const;

// What is chosen already is left out: the answer must be the same after it has been taken.
const { chosen: _, ...filter } = filterReads;

/** What the choice depends on: the bag, the filter as it is to be, the oscillator, and the wishes. */
export const reads = {
  ...filter,
  seed: 'bag.seed',
  wantedSideband: 'plan.filterSideband',
  ambient: 'plan.ambient',
  rule: 'carrier.rule',
  attenuationGiven: 'carrier.attenuationGiven',
  offsetGiven: 'carrier.offsetGiven',
  frequencyGiven: 'carrier.frequencyGiven?',
  c1: 'carrier.c1',
  c2: 'carrier.c2',
  standing: 'carrier.standing',
  ft: 'carrier.ft',
  ccb: 'carrier.ccb',
  strayAtBase: 'carrier.stray',
  carriers: 'carrier.crystals',
} as const;

export type Order = Seen<(typeof of)[number], typeof reads>;

/** What the number to buy depends on. */
export const buyReads = {
  bag: 'bag.rows?',
  spread: 'bag.spread?',
  set: 'bag.set?',
  window: 'bag.window?',
  lotSpread: 'bag.lotSpread?',
  confidence: 'bag.confidence',
  seed: 'bag.seed',
  fs: 'quartz.fs',
  crystals: 'filter.crystals',
  bandwidth: 'filter.bandwidth',
} as const;
