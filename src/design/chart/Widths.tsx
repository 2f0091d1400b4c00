import { useScales } from './useScales.ts';

export interface Width {
  /** dB, negative. */
  level: number;
  low: number;
  high: number;
  /** The width, ready to read: `2.40 kHz`. */
  label: string;
}

/**
 * Widths at given levels, as the dimension lines of a workshop drawing. The first in the list
 * matters most; one that finds no room for its words is left out.
 */
export function Widths({ of, em }: { of: readonly Width[]; em: number }) {
  const s = useScales();
  if (s === null) return null;
  const taken: number[] = [];
  return (
    <g className="chart__widths">
      {of.map(({ level, low, high, label }) => {
        const [a, b, y] = [s.x(low), s.x(high), s.y(level)];
        const written = `${String(level).replace('-', '−')} dB\u2002${label}`;
        // Below its line, or above it at the foot of the picture.
        const words = y + em * (y > s.bottom - em * 1.4 ? -0.4 : 1.02);
        const crowded = taken.some((other) => Math.abs(other - words) < em * 1.3);
        if (crowded || b - a < em * 3) return null;
        taken.push(words);
        return (
          <g key={level}>
            <path
              d={`M${a} ${y - 4}v8M${b} ${y - 4}v8M${a} ${y}H${b}M${a + 6} ${y - 3}L${a} ${y}l6 3M${b - 6} ${y - 3}L${b} ${y}l-6 3`}
            />
            <text className="chart__halo" x={(a + b) / 2} y={words} textAnchor="middle">
              {written}
            </text>
          </g>
        );
      })}
    </g>
  );
}
