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
