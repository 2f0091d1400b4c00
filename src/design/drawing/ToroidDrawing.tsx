import './winding.css';

export interface DrawnWinding {
  turns: number;
  /** Wires wound side by side as one: their turns lie together. */
  beside?: boolean;
}

interface ToroidDrawingProps {
  /** What the picture shows, in words. */
  label: string;
  /** Of the core; any unit, as long as it is the same. */
  outer: number;
  inner: number;
  /** Diameter of the wire over its enamel, in the same unit. */
  wire: number;
  /** The first is drawn in copper and its turns are numbered. */
  windings: readonly DrawnWinding[];
}

/** Outer radius of the core in the picture's units, where the numbers stand, and the free gap. */
const RADIUS = 66;
const NUMBERS = 82;
const GAP = Math.PI / 6;

/**
 * A toroid from above with every turn to be counted: whole lines lie on the face that is seen,
 * broken ones pass beneath. Drawn to scale, so a full core looks full.
 */
export function ToroidDrawing({ label, outer, inner, wire, windings }: ToroidDrawingProps) {
  const hole = (RADIUS * inner) / outer;
  const width = Math.min(8, Math.max(1.4, (2 * RADIUS * wire) / outer));
  return (
    <svg className="toroid" viewBox="-96 -96 192 192" role="img" aria-label={label}>
      <path className="toroid__core" fillRule="evenodd" d={`${ring(RADIUS)}${ring(hole)}`} />
      {windings.map((winding, index) => (
        <Winding
          // biome-ignore lint/suspicious/noArrayIndexKey: windings have no other name
          key={index}
          place={index}
          of={winding}
          among={windings}
          hole={hole}
          width={width}
        />
      ))}
    </svg>
  );
}

interface WindingProps {
  place: number;
  of: DrawnWinding;
  among: readonly DrawnWinding[];
  hole: number;
  width: number;
}

function Winding({ place, of, among, hole, width }: WindingProps) {
  const { turns } = of;
  const pitch = (2 * Math.PI - GAP) / turns;
  // Wires side by side lie a wire apart; a winding over another lies between its turns.
  const shift = of.beside ? (place - (among.length - 1) / 2) * (width / hole) : (place * pitch) / 2;
  const at = (turn: number) => Math.PI / 2 + GAP / 2 + pitch * (turn + 0.5) + shift;
  const [rim, edge] = [RADIUS + width / 2, hole - width / 2];
  const passes = Array.from({ length: turns }, (_, turn) => turn);
  const on = passes.map(
    (turn) => `M${point(turn === 0 ? 92 : rim, at(turn))}L${point(edge, at(turn))}`,
  );
  const under = passes.map((turn) => `M${point(edge, at(turn))}L${point(rim, at(turn + 0.9))}`);
  const end = `M${point(rim, at(turns - 0.1))}L${point(92, at(turns - 0.1))}`;
  const every = turns <= 30 ? 1 : 5;
  return (
    <g className={`toroid__winding toroid__winding--${Math.min(place, 2)}`}>
      <path className="toroid__under" d={under.join('')} />
      <path d={`${on.join('')}${end}`} strokeWidth={width} />
      {place === 0 &&
        passes.map((turn) =>
          (turn + 1) % every === 0 || turn === 0 ? (
            <Numbered key={turn} number={turn + 1} angle={at(turn) + (turn === 0 ? 0.13 : 0)} />
          ) : null,
        )}
    </g>
  );
}

function Numbered({ number, angle }: { number: number; angle: number }) {
  const [x, y] = point(NUMBERS, angle).split(' ');
  return (
    <text className="toroid__number" x={x} y={y} dy="0.35em" textAnchor="middle">
      {number}
    </text>
  );
}

const ring = (radius: number) =>
  `M${-radius} 0a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0z`;

const point = (radius: number, angle: number) =>
  `${(radius * Math.cos(angle)).toFixed(2)} ${(radius * Math.sin(angle)).toFixed(2)}`;
