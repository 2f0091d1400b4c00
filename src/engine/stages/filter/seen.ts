import type { Seen } from '../../fields/stage.ts';
import type { quartzFields } from '../quartz/fields.ts';
import type { filterFields } from './fields.ts';
import type { filterReads } from './reads.ts';

/** What the stage is given. */
export type FilterSeen = Seen<typeof quartzFields | typeof filterFields, typeof filterReads>;
