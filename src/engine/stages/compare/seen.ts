import type { Seen } from '../../fields/stage.ts';
import type { filterFields } from '../filter/fields.ts';
import type { compareFields } from './fields.ts';
import type { compareReads } from './reads.ts';

/** What the stage is given. */
export type CompareSeen = Seen<typeof filterFields | typeof compareFields, typeof compareReads>;
