import { useScales } from './useScales.ts';

export interface BandProps {
  from: number;
  to: number;
  label?: string | undefined;
  /** `wanted` tinted, `unwanted` hatched. */
  kind: 'wanted' | 'unwanted';
  em: number;
}

/** A stretch of the axis: tinted where it is wanted, hatched where it is not. */
export function Band({ from, to, label, kind, em }: BandProps) {
  const s = useScales();
  if (s === null) return null;
  const [a, b] = [s.x(from), s.x(to)].sort((p, q) => p - q) as [number, number];
  if (b - a < 1) return null;
  return (
    <g>
      <rect className={`chart__${kind}`} x={a} y={s.top} width={b - a} height={s.bottom - s.top} />
      {label !== undefined && b - a > em * label.length * 0.4 && (
        <text className="chart__halo" x={(a + b) / 2} y={s.bottom - em * 0.6} textAnchor="middle">
          {label}
        </text>
      )}
    </g>
  );
}
