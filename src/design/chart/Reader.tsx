import { type KeyboardEvent, type PointerEvent, useState } from 'react';
import { useScales } from './useScales.ts';

interface ReaderProps {
  from: number;
  to: number;
  /** One arrow-key step along the axis. */
  step: number;
  start: number;
  /** Spoken name: "Read along the curve". */
  label: string;
  /** What stands at a place, ready to read. */
  says: (at: number) => string;
  heightAt: (at: number) => number | null;
  em: number;
}

const moves: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
};

/** A line to move over the picture with pointer or arrow keys, and what it reads there. */
export function Reader({ from, to, step, start, label, says, heightAt, em }: ReaderProps) {
  const [at, setAt] = useState<number | null>(null);
  const s = useScales();
  if (s === null) return null;
  const held = (value: number) => Math.max(from, Math.min(to, value));

  const byPointer = (event: PointerEvent<SVGRectElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    setAt(held(from + ((event.clientX - box.left) / box.width) * (to - from)));
  };
  const byKey = (event: KeyboardEvent<SVGRectElement>) => {
    const here = at ?? start;
    const by = moves[event.key];
    const next =
      by !== undefined
        ? here + by * step * (event.shiftKey ? 10 : 1)
        : event.key === 'Home'
          ? from
          : event.key === 'End'
            ? to
            : null;
    if (event.key === 'Escape') setAt(null);
    if (next === null) return;
    event.preventDefault();
    // Projector view steps through the workings with the same keys: not from in here.
    event.stopPropagation();
    setAt(held(next));
  };

  const y = at === null ? null : heightAt(at);
  const x = at === null ? 0 : s.x(at);
  const words = says(at ?? start);
  const leftward = x > (s.left + s.right) / 2;
  return (
    <g className="chart__reader">
      {at !== null && (
        <g>
          <path d={`M${x} ${s.top}V${s.bottom}`} />
          {y !== null && <circle className="chart__dot" cx={x} cy={s.y(y)} r={em * 0.26} />}
          <text
            className="chart__halo"
            x={x + (leftward ? -0.5 : 0.5) * em}
            y={s.bottom - em * 2.2}
            textAnchor={leftward ? 'end' : 'start'}
          >
            {words}
          </text>
        </g>
      )}
      <rect
        x={s.left}
        y={s.top}
        width={s.right - s.left}
        height={s.bottom - s.top}
        fill="transparent"
        role="slider"
        tabIndex={0}
        aria-label={label}
        aria-valuemin={from}
        aria-valuemax={to}
        aria-valuenow={at ?? start}
        aria-valuetext={words}
        onPointerMove={byPointer}
        onPointerDown={byPointer}
        onPointerLeave={(event) => event.pointerType === 'mouse' && setAt(null)}
        onKeyDown={byKey}
        onBlur={() => setAt(null)}
      />
    </g>
  );
}
