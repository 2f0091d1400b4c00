import type { Seen } from '../../fields/stage.ts';
import type { Look } from '../../fields/workings.ts';
import type { measureFields } from './fields.ts';
import { measureReads } from './reads.ts';

/** What the stage is given. */
export type MeasureSeen = Seen<typeof measureFields, typeof measureReads>;

/** The same for the workings, which look each value up. */
export const seenBy = (look: Look): MeasureSeen =>
  Object.fromEntries(
    Object.entries(measureReads).map(([name, path]) => [name, look(path.replace('?', '')) ?? null]),
  ) as unknown as MeasureSeen;
