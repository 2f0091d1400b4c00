import { useScales } from './useScales.ts';

export interface FloorProps {
  /** dB, negative: nothing comes out below it. */
  at: number;
  label: string;
}

/** What a curve cannot sink below: hatched from its line downwards, with its name. */
export function Floor({ at, label, em }: FloorProps & { em: number }) {
  const s = useScales();
  if (s === null) return null;
  const y = s.y(at);
  if (!(y < s.bottom - 1)) return null;
  // The curve lies on the line; under it there is nothing.
  const roomBelow = s.bottom - y > em * 1.6;
  return (
    <g>
      <rect
        className="chart__unwanted"
        x={s.left}
        y={y}
        width={s.right - s.left}
        height={s.bottom - y}
      />
      <path className="chart__floor" d={`M${s.left} ${y}H${s.right}`} />
      <text className="chart__halo" x={s.left + em * 0.5} y={y + em * (roomBelow ? 1.15 : -0.4)}>
        {label}
      </text>
    </g>
  );
}
