import { usePlotArea } from 'recharts';

interface AxisNameProps {
  x?: string | undefined;
  y?: string | undefined;
  top?: { name?: string; nameAt?: 'start' | 'end' } | undefined;
  em: number;
}

/** What the axes are, written at their ends instead of along them. */
export function AxisName({ x, y, top, em }: AxisNameProps) {
  const area = usePlotArea();
  if (area === undefined) return null;
  const right = area.x + area.width;
  return (
    <g className="chart__soft">
      {y !== undefined && (
        <text x={0} y={area.y - em * 0.6}>
          {y}
        </text>
      )}
      {x !== undefined && (
        <text x={right} y={area.y + area.height + em * 2.3} textAnchor="end">
          {x}
        </text>
      )}
      {top?.name !== undefined && (
        <text
          x={top.nameAt === 'start' ? area.x + em * 0.25 : right}
          y={area.y - em * 0.6}
          textAnchor={top.nameAt}
        >
          {top.name}
        </text>
      )}
    </g>
  );
}
