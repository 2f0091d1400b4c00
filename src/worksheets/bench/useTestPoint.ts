import { useMemo } from 'react';
import type { Point } from '../../engine/stages/bench/point.ts';
import type { PointRow } from '../../engine/stages/bench/pointRow.ts';
import { points, pointsOf } from '../../engine/stages/bench/points.ts';
import { useValue } from '../../store/hooks.ts';
import { type PointText, pointText } from './pointText.ts';

export interface TestPointView {
  readonly row: PointRow;
  readonly text: PointText;
  /** Place in its table. */
  readonly index: number;
}

/** The worked row of a test point; null while the sheet has no answer. */
export function useTestPoint(point: Point): TestPointView | null {
  const rows = useValue<readonly PointRow[]>(`bench.${point.group}`);
  const index = pointsOf(point.group).indexOf(point);
  const row = rows?.[index] ?? null;
  return useMemo(
    () => (row === null ? null : { row, text: pointText(point, row), index }),
    [point, row, index],
  );
}

/** The points from one step of the work to another; a reading comes before what follows from it. */
export const pointsBetween = (from: number, to: number): readonly Point[] =>
  points
    .filter(({ step }) => step >= from && step <= to)
    .sort((a, b) => a.step - b.step || Number(a.asVolts ?? false) - Number(b.asVolts ?? false));
