import { useMemo } from 'react';
import type {
  MismatchedAnswer,
  MismatchedPoint,
} from '../../engine/errands/mismatched/mismatchedAnswer.ts';
import { useAnswer } from '../../store/errands.ts';
import { useValue } from '../../store/hooks.ts';

/**
 * One figure of the exact final once round at the ratio typed, closed to a whole round; null where
 * it is not there. The page only puts it into degrees.
 */
export function useExactRound(of: keyof MismatchedPoint): { x: number[]; y: number[] } | null {
  const answer = useAnswer<MismatchedAnswer>('mismatched');
  const swr = useValue<number>('mismatch.swr');
  return useMemo(() => {
    const round = answer?.rounds.find((one) => one.swr === swr);
    const points = round?.points ?? [];
    const [first] = points;
    if (first === undefined) return null;
    const closed = first.angle === 0 ? [...points, { ...first, angle: 2 * Math.PI }] : points;
    return {
      x: closed.map(({ angle }) => (angle * 180) / Math.PI),
      y: closed.map((point) => point[of]),
    };
  }, [answer, swr, of]);
}
