import type { Seen } from '../../fields/stage.ts';
import type { bagFields } from '../bag/fields.ts';
import type { quartzFields } from '../quartz/fields.ts';
import type { filterFields } from './fields.ts';
import type { filterReads } from './reads.ts';

/** What the stage is given. */
export type FilterSeen = Seen<
  typeof bagFields | typeof quartzFields | typeof filterFields,
  typeof filterReads
>;
