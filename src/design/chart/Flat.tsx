import { useScales } from './useScales.ts';

export interface FlatProps {
  at: number;
  label: string;
  /** Which end of the picture the name stands at, and on which side of the line. */
  end?: 'left' | 'right';
  side?: 'above' | 'below';
  em: number;
}

/** A height on the axis: a thin line across the picture with its name on it. */
export function Flat({ at, label, end = 'right', side = 'above', em }: FlatProps) {
  const s = useScales();
  if (s === null) return null;
  const y = s.y(at);
  if (y < s.top - 1 || y > s.bottom + 1) return null;
  return (
    <g className="chart__upright">
      <path d={`M${s.left} ${y}H${s.right}`} />
      <text
        className="chart__halo"
        x={end === 'right' ? s.right - em * 0.4 : s.left + em * 0.4}
        y={y + (side === 'above' ? -0.4 : 1.1) * em}
        textAnchor={end === 'right' ? 'end' : 'start'}
      >
        {label}
      </text>
    </g>
  );
}
