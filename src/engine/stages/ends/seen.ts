import type { Seen } from '../../fields/stage.ts';
import type { Look } from '../../fields/workings.ts';
import type { filterFields } from '../filter/fields.ts';
import type { transmitFields } from '../transmit/fields.ts';
import type { endsFields } from './fields.ts';
import { endsReads } from './reads.ts';

/** What the stage is given. */
export type EndsSeen = Seen<
  typeof filterFields | typeof transmitFields | typeof endsFields,
  typeof endsReads
>;

/** The same for the workings, which look each value up. */
export const seenBy = (look: Look): EndsSeen =>
  Object.fromEntries(
    Object.entries(endsReads).map(([name, path]) => [name, look(path.replace('?', '')) ?? null]),
  ) as unknown as EndsSeen;
