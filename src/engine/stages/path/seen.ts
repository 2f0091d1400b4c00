import type { Seen } from '../../fields/stage.ts';
import type { antennaFields } from '../antenna/fields.ts';
import type { feedFields } from '../feed/fields.ts';
import type { filterFields } from '../filter/fields.ts';
import type { outputFields } from '../output/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { receiveFields } from '../receive/fields.ts';
import type { pathFields } from './fields.ts';
import type { pathReads } from './reads.ts';

/** What the stage is given. */
export type PathSeen = Seen<
  | typeof planFields
  | typeof filterFields
  | typeof outputFields
  | typeof receiveFields
  | typeof antennaFields
  | typeof feedFields
  | typeof pathFields,
  typeof pathReads
>;

/** What the way doesn't look at: powers, noises, and what is made of them. */
export const besideWay = [
  'pep',
  'power',
  'bandNoise',
  'floor',
  'external',
  'place',
  'atmospheric',
  'bandwidth',
  'feedLoss',
  'farFeedLoss',
  'farPlace',
  'farAtmospheric',
  'farPower',
  'spread',
  'duty',
] as const satisfies readonly (keyof PathSeen)[];

/** What the way is given. */
export type WaySeen = Omit<PathSeen, (typeof besideWay)[number]>;
