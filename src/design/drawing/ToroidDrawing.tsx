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
  /** Part of the ring that is wound, 0 to 1; all of it but the gap where none is said. */
  share?: number;
  /** Start and finish by name, the turns counted in the hole, the gap marked. */
  told?: boolean;
  /** False where the picture is too small for numbers. */
  numbered?: boolean;
}

/** Outer radius of the core in the picture's units, where the numbers stand, where the wires end. */
const RADIUS = 66;
const NUMBERS = 80;
const TAIL = 84;
/** Where the ends are named, and where the gap is marked. */
const NAMES = 92;
const MARK = 74;
/** Number 1 stands beside its tail, on the side where the turns follow, rad. */
const BESIDE = 0.13;

/**
 * A toroid from above with every turn to be counted: whole lines lie on the face that is seen,
 * broken ones pass beneath. Drawn to scale, so a full core looks full. The wire comes over the top,
 * goes down through the hole and comes back up outside, clockwise.
 */
export function ToroidDrawing(props: ToroidDrawingProps) {
  const { label, outer, inner, wire, turns, bundle = false, share } = props;
  const { told = false, numbered = true } = props;
  const hole = (RADIUS * inner) / outer;
  const width = Math.min(8, Math.max(1.4, (2 * RADIUS * wire) / outer));
  const [rim, edge] = [RADIUS + width / 2, hole - width / 2];
  const windings = turnAngles(turns, bundle ? width / hole : null, share);
  const [first] = windings;
  return (
    <svg
      className="toroid"
      viewBox={told ? '-100 -92 200 200' : '-100 -100 200 200'}
      role="img"
      aria-label={label}
    >
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
          {numbered &&
            (!bundle || key === 1) &&
            at.map((angle, i) => (
              <Numbered
                key={angle}
                number={i + 1}
                of={at.length}
                angle={angle}
                wound={share}
                told={told}
              />
            ))}
        </g>
      ))}
      {told && first && <Ends at={first.at} end={first.end} />}
      {told && (
        <text className="toroid__count" y="0.36em" textAnchor="middle">
          {turns[0]}
        </text>
      )}
    </svg>
  );
}

/** Start and finish by name, and an arc along what stays free between them. */
function Ends({ at, end }: { at: readonly number[]; end: number }) {
  const start = (at[0] ?? 0) + 2 * Math.PI;
  const free = start - end;
  const [sx, sy] = point(NAMES, at[0] ?? 0).split(' ');
  const [fx, fy] = point(NAMES, end).split(' ');
  return (
    <g className="toroid__ends">
      {free > 0.3 && (
        <path
          d={`M${point(MARK, end + 0.09)}A${MARK} ${MARK} 0 ${free > Math.PI ? 1 : 0} 1 ${point(MARK, start - 0.09)}`}
        />
      )}
      <text x={sx} y={sy} dx="-0.5" dy="0.5em" textAnchor="end">
        start
      </text>
      <text x={fx} y={fy} dx="0.5" dy="0.5em" textAnchor="start">
        finish
      </text>
    </g>
  );
}

/** From so many turns on only every fifth is numbered; closer still when they are pushed together. */
const CROWDED = 30;

function Numbered(props: {
  number: number;
  of: number;
  angle: number;
  wound: number | undefined;
  told: boolean;
}) {
  const { number, of, angle, wound = 1, told } = props;
  const every = of <= CROWDED * wound ? 1 : 5;
  if (number % every !== 0 && number !== 1) return null;
  // The first turn's own tail stands where its number would.
  const [radius, beside] = number > 1 ? [NUMBERS, 0] : told ? [NUMBERS, BESIDE] : [TAIL + 10, 0];
  const [x, y] = point(radius, angle + beside).split(' ');
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
