import { directPoints } from './directPoints.ts';
import { harmonicPoints } from './harmonicPoints.ts';
import type { Group, Point } from './point.ts';
import { signalPoints } from './signalPoints.ts';
import { sweepPoints } from './sweepPoints.ts';

/** Every test point, in the order of work. */
export const points: readonly Point[] = [
  ...directPoints,
  ...sweepPoints,
  ...signalPoints,
  ...harmonicPoints,
].sort((a, b) => a.step - b.step);

/** The points of one table, in its order of rows. */
export const pointsOf = (group: Group): readonly Point[] =>
  points.filter((point) => point.group === group);
