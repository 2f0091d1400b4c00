import { turnAngles } from './turnAngles.ts';
import './winding.css';

interface ToroidDrawingProps {
  /** What the picture shows, in words. */
  label: string;
  /** Of the core; any unit, as long as it is the same. */
  outer: number;
  inner: number;
  /** Diameter of the wire over its enamel, in the same unit. */
  wire: number;
  /** Turns of each winding: the first in copper, each numbered. */
  turns: readonly number[];
  /** Wires wound together as one bundle: their turns lie side by side. */
  bundle?: boolean;
}

/** Outer radius of the core in the picture's units, where the numbers stand, where the wires end. */
const RADIUS = 66;
const NUMBERS = 80;
const TAIL = 84;

/**
 * A toroid from above with every turn to be counted: whole lines lie on the face that is seen,
 * broken ones pass beneath. Drawn to scale, so a full core looks full.
 */
export function ToroidDrawing(props: ToroidDrawingProps) {
  const { label, outer, inner, wire, turns, bundle = false } = props;
  const hole = (RADIUS * inner) / outer;
  const width = Math.min(8, Math.max(1.4, (2 * RADIUS * wire) / outer));
  const [rim, edge] = [RADIUS + width / 2, hole - width / 2];
  const windings = turnAngles(turns, bundle ? width / hole : null);
  return (
    <svg className="toroid" viewBox="-100 -100 200 200" role="img" aria-label={label}>
      <path className="toroid__core" fillRule="evenodd" d={`${ring(RADIUS)}${ring(hole)}`} />
      {windings.map(({ key, at, end }) => (
        <g key={key} className={`toroid__winding toroid__winding--${key}`}>
          <path
            className="toroid__under"
            d={at.map((angle, i) => under(edge, angle, rim, at[i + 1] ?? end)).join('')}
          />
        </g>
      ))}
      {windings.map(({ key, at, end }) => (
        <g key={key} className={`toroid__winding toroid__winding--${key}`}>
          <path
            strokeWidth={width}
            d={`${at
              .map((angle, i) => `M${point(i === 0 ? TAIL : rim, angle)}L${point(edge, angle)}`)
              .join('')}M${point(rim, end)}L${point(TAIL, end)}`}
          />
          {(!bundle || key === 1) &&
            at.map((angle, i) => (
              <Numbered key={angle} number={i + 1} of={at.length} angle={angle} />
            ))}
        </g>
      ))}
    </svg>
  );
}

function Numbered({ number, of, angle }: { number: number; of: number; angle: number }) {
  const every = of <= 30 ? 1 : 5;
  if (number % every !== 0 && number !== 1) return null;
  // The first turn's own tail stands where its number would.
  const [x, y] = point(number === 1 ? TAIL + 10 : NUMBERS, angle).split(' ');
  return (
    <text className="toroid__number" x={x} y={y} dy="0.35em" textAnchor="middle">
      {number}
    </text>
  );
}

/** Beneath the core from the hole to the next turn's place at the rim; a long way goes round the hole. */
function under(edge: number, from: number, rim: number, to: number): string {
  const start = `M${point(edge, from)}`;
  if (to - from < 0.5) return `${start}L${point(rim, to)}`;
  const mid = (edge + rim) / 2;
  const large = to - from - 0.3 > Math.PI ? 1 : 0;
  return `${start}L${point(mid, from + 0.15)}A${mid.toFixed(2)} ${mid.toFixed(2)} 0 ${large} 1 ${point(mid, to - 0.15)}L${point(rim, to)}`;
}

const ring = (radius: number) =>
  `M${-radius} 0a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0z`;

const point = (radius: number, angle: number) =>
  `${(radius * Math.cos(angle)).toFixed(2)} ${(radius * Math.sin(angle)).toFixed(2)}`;
