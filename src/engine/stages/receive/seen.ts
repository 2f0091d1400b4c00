import type { Seen } from '../../fields/stage.ts';
import type { antennaFields } from '../antenna/fields.ts';
import type { convertFields } from '../convert/fields.ts';
import type { feedFields } from '../feed/fields.ts';
import type { filterFields } from '../filter/fields.ts';
import type { frontFields } from '../front/fields.ts';
import type { outputFields } from '../output/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { transmitFields } from '../transmit/fields.ts';
import type { receiveFields } from './fields.ts';
import type { receiveReads } from './reads.ts';

/** The values that Receive is given. */
export type ReceiveSeen = Seen<
  | typeof planFields
  | typeof filterFields
  | typeof convertFields
  | typeof frontFields
  | typeof transmitFields
  | typeof outputFields
  | typeof antennaFields
  | typeof feedFields
  | typeof receiveFields,
  typeof receiveReads
>;
