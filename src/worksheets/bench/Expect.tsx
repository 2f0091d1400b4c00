import { Told } from '../../design/Told.tsx';
import { points } from '../../engine/stages/bench/points.ts';
import { useTestPoint } from './useTestPoint.ts';

/** The reading to expect at a test point, inside a sentence. */
export function Expect({ at }: { at: string }) {
  const point = points.find((one) => one.point === at);
  if (!point) throw new Error(`no test point ${at}`);
  const view = useTestPoint(point);
  return <Told of={view?.text.expected ?? '…'} />;
}
