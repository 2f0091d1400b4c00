import { useScales } from './useScales.ts';

interface CurveNameProps {
  x: number;
  y: number;
  label: string;
  em: number;
  /** A dot on the curve, for a figure worth reading off. */
  dot?: boolean;
  side?: 'above' | 'below' | 'right' | 'left';
}

/** A name or a figure beside a curve, instead of a legend. */
export function CurveName({ x, y, label, em, dot = false, side: asked = 'above' }: CurveNameProps) {
  const s = useScales();
  if (s === null) return null;
  const [px, py] = [s.x(x), s.y(y)];
  const wide = em * label.length * 0.5;
  const side = asked === 'right' && px + wide > s.right ? 'left' : asked;
  const dx = side === 'right' ? 0.5 : side === 'left' ? -0.5 : 0;
  const dy = side === 'above' ? -0.5 : side === 'below' ? 1.15 : 0.35;
  const near = px > s.right - wide / 2 ? 'end' : 'middle';
  return (
    <g>
      {dot && <circle className="chart__dot" cx={px} cy={py} r={em * 0.22} />}
      <text
        className="chart__halo"
        x={px + dx * em}
        y={py + dy * em}
        textAnchor={side === 'right' ? 'start' : side === 'left' ? 'end' : near}
      >
        {label}
      </text>
    </g>
  );
}
