import { useScales } from './useScales.ts';

export interface UprightProps {
  at: number;
  label: string;
  /** `live` copper and whole, `rule` thin and dashed. */
  kind: 'live' | 'rule';
  /** Height of the label below the upper edge, in lines of text. */
  line?: number;
  /** Which side of the line the label stands on. */
  side?: 'left' | 'right';
  em: number;
}

/** A place on the axis: a line across the picture with its name beside it. */
export function Upright({ at, label, kind, line = 0, side = 'right', em }: UprightProps) {
  const s = useScales();
  if (s === null) return null;
  const x = s.x(at);
  return (
    <g className={`chart__upright chart__upright--${kind}`}>
      <path d={`M${x} ${s.top}V${s.bottom}`} />
      <text
        className="chart__halo"
        x={x + (side === 'right' ? 0.4 : -0.4) * em}
        y={s.top + em * (1 + 1.25 * line)}
        textAnchor={side === 'right' ? 'start' : 'end'}
      >
        {label}
      </text>
    </g>
  );
}
