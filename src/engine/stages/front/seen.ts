import type { Seen } from '../../fields/stage.ts';
import type { carrierFields } from '../carrier/fields.ts';
import type { convertFields } from '../convert/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { frontFields } from './fields.ts';
import type { frontReads } from './reads.ts';

/** What the stage is given. */
export type FrontSeen = Seen<
  typeof planFields | typeof carrierFields | typeof convertFields | typeof frontFields,
  typeof frontReads
>;
