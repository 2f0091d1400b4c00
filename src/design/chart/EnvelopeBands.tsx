import { useId } from 'react';
import { useScales } from './useScales.ts';

interface EnvelopeBandsProps {
  x: ArrayLike<number>;
  /** Lower and upper edge of each band, the widest band first. */
  of: readonly (readonly [low: ArrayLike<number>, high: ArrayLike<number>])[];
  from: number;
  to: number;
}

/** Where most builds lie: areas between two curves, the inner ones darker. */
export function EnvelopeBands({ x, of, from, to }: EnvelopeBandsProps) {
  const s = useScales();
  const id = useId();
  if (s === null) return null;
  const inside = [...Array(x.length).keys()].filter(
    (i) => (x[i + 1] ?? x[i] ?? 0) >= from && (x[i - 1] ?? x[i] ?? 0) <= to,
  );
  const edge = (y: ArrayLike<number>, places: readonly number[]) =>
    places
      .map((i) => `${s.beyondX(x[i] ?? 0).toFixed(1)} ${s.beyondY(y[i] ?? 0).toFixed(1)}`)
      .join('L');
  return (
    <g clipPath={`url(#${id})`}>
      <clipPath id={id}>
        <rect x={s.left} y={s.top} width={s.right - s.left} height={s.bottom - s.top} />
      </clipPath>
      {of.map(([low, high], place) => (
        <path
          key={place === 0 ? 'outer' : `inner${place}`}
          className={`chart__envelope chart__envelope--${place === 0 ? 'outer' : 'inner'}`}
          d={`M${edge(low, inside)}L${edge(high, inside.toReversed())}Z`}
        />
      ))}
    </g>
  );
}
