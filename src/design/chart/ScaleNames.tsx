import { useScales } from './useScales.ts';

interface ScaleNamesProps {
  x?: string | undefined;
  y?: string | undefined;
  em: number;
}

/** What the axes are, written at their ends instead of along them. */
export function ScaleNames({ x, y, em }: ScaleNamesProps) {
  const s = useScales();
  if (s === null) return null;
  return (
    <g className="chart__soft">
      {y !== undefined && (
        <text x={0} y={s.top - em * 0.6}>
          {y}
        </text>
      )}
      {x !== undefined && (
        <text x={s.right} y={s.bottom + em * 2.3} textAnchor="end">
          {x}
        </text>
      )}
    </g>
  );
}
