import { useId } from 'react';
import { Curve as Shape } from 'recharts';
import type { Curve } from './Plot.tsx';
import { thinned } from './thinned.ts';
import { useScales } from './useScales.ts';

interface CurvesProps {
  of: readonly Curve[];
  from: number;
  to: number;
}

/** The curves, cut off at the edge of the picture; a gap in the figures is a gap in the line. */
export function Curves({ of, from, to }: CurvesProps) {
  const s = useScales();
  const id = useId();
  if (s === null || of.length === 0) return null;
  const by = {
    x: (s.right - s.left) / (to - from || 1),
    y: Math.abs(s.beyondY(1) - s.beyondY(0)),
    slack: 0.2,
  };
  return (
    <g clipPath={`url(#${id})`}>
      <clipPath id={id}>
        <rect x={s.left} y={s.top - 2} width={s.right - s.left} height={s.bottom - s.top + 2} />
      </clipPath>
      {of.map((curve) => (
        <Shape
          key={curve.key}
          className={`chart__curve chart__curve--${curve.ink}`}
          type="linear"
          connectNulls={false}
          points={thinned(curve, from, to, by).map(({ x, y }) => ({
            x: s.beyondX(x),
            y: Number.isFinite(y) ? s.beyondY(y) : null,
          }))}
        />
      ))}
    </g>
  );
}
