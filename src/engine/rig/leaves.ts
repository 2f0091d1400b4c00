import { stages } from './stages.ts';

/** Sheets that consist of several stages, each a leaf of its own; all others are one leaf. */
const several: Readonly<Record<string, readonly string[]>> = {
  quartz: ['quartz', 'measure', 'sweep', 'bag'],
  filter: ['filter', 'ends', 'yield', 'compare'],
};

const worked = new Set(stages.map(({ fields }) => fields.key));
const owner = new Map(
  Object.entries(several).flatMap(([sheet, leaves]) => leaves.map((leaf) => [leaf, sheet])),
);

/** The sheet that a stage is shown on. */
export const sheetOf = (stage: string): string => owner.get(stage) ?? stage;

/** The leaves of a sheet, in the order in which they are turned. */
export const leavesOf = (sheet: string): readonly string[] =>
  (several[sheet] ?? [sheet]).filter((leaf) => worked.has(leaf));

/** All sheets, in the order of the work: a sheet stands where its own stage does. */
export const sheets: readonly string[] = stages
  .map(({ fields }) => fields.key)
  .filter((key) => sheetOf(key) === key);

/** All leaves, in the order in which they are read. */
export const allLeaves: readonly string[] = sheets.flatMap(leavesOf);
