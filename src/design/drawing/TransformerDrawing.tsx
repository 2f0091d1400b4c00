import './transformer.css';
import { type Bend, passesThrough, type WoundWire, windingPaths } from './windingPaths.ts';

interface TransformerDrawingProps {
  /** What the picture shows, in words. */
  label: string;
  /** Of the core; any unit, as long as it is the same. */
  outer: number;
  inner: number;
  /** Diameter of the wire over its enamel, in the same unit. */
  wire: number;
  /** Turns of each winding. */
  turns: readonly number[];
  /** Wires wound together as one bundle. */
  bundle?: boolean;
  /** Turns of one more winding over a bundle. */
  over?: number | null;
  /** The last winding is two wires side by side. */
  paired?: boolean;
  /** The finish of which wire goes to the start of which: that is the centre tap. */
  joined?: readonly [number, number] | null;
}

/** Radii in the picture's units. */
const RADIUS = 62;
const NUMBERS = 75;
const TAIL = 84;
const LETTERS = 95;
const BRIDGE = 108;

/**
 * A transformer from above: every turn of the first winding numbered, each winding with a pattern
 * and a letter of its own, a dot where it starts. Whole lines lie on the face that is seen.
 */
export function TransformerDrawing(props: TransformerDrawingProps) {
  const {
    label,
    outer,
    inner,
    wire,
    turns,
    bundle = false,
    over = null,
    paired = false,
    joined = null,
  } = props;
  const hole = (RADIUS * inner) / outer;
  const width = Math.min(6, Math.max(1.6, (2 * RADIUS * wire) / outer));
  const radii = { edge: hole - width / 2, rim: RADIUS + width / 2, tail: TAIL };
  const apart = (1.25 * width) / hole;
  const wound = windingPaths(turns, bundle ? apart : null, radii, over, paired ? apart : null);
  return (
    <svg className="transformer" viewBox="-118 -118 236 236" role="img" aria-label={label}>
      <path className="transformer__core" fillRule="evenodd" d={`${ring(RADIUS)}${ring(hole)}`} />
      {wound.map(({ key, bends }) => (
        <path key={key} className={`transformer__under wire--${key}`} d={lines(bends, 'lower')} />
      ))}
      {wound.map(({ key, bends }) => (
        <Wire key={key} kind={key} d={lines(bends, 'upper')} width={width} />
      ))}
      {wound.map((one) => (
        <Ends key={one.key} of={one} hole={hole} />
      ))}
      {wound[0]?.at.map((angle, i, all) => (
        <Numbered key={angle} number={i + 1} of={all.length} angle={angle} beside={bundle} />
      ))}
      {joined && <Bridge from={wound[joined[0]]} to={wound[joined[1]]} />}
    </svg>
  );
}

/** A wire in its pattern: plain, banded, hollow. */
function Wire({ kind, d, width }: { kind: number; d: string; width: number }) {
  return (
    <g className={`wire wire--${kind}`}>
      <path d={d} strokeWidth={width} />
      {kind > 0 && <path className="wire__pattern" d={d} strokeWidth={width * 0.55} />}
    </g>
  );
}

/** Dot and letter at the start, letter with a stroke at the finish. */
function Ends({ of, hole }: { of: WoundWire; hole: number }) {
  const [start, finish] = [of.bends[0], of.bends.at(-1)];
  if (!start || !finish) return null;
  // A wire that came up through the hole would have its dot at the other end.
  const [dotted, plain] = passesThrough(of.bends, hole) >= 0 ? [start, finish] : [finish, start];
  const [x, y] = xy(TAIL, dotted.angle);
  const [ax, ay] = xy(LETTERS, dotted.angle);
  const [bx, by] = xy(LETTERS, plain.angle);
  return (
    <g className={`transformer__ends wire--${of.key}`}>
      <circle className="transformer__dot" cx={x} cy={y} r="4" />
      <text x={ax} y={ay} dy="0.35em" textAnchor="middle">
        {of.letter}
      </text>
      <text x={bx} y={by} dy="0.35em" textAnchor="middle">
        {of.letter}′
      </text>
    </g>
  );
}

function Numbered(props: { number: number; of: number; angle: number; beside: boolean }) {
  const { number, of, angle, beside } = props;
  // The first turn's own tail stands where its number would; past thirty only every fifth is said.
  if (number === 1 || (of > 30 && number % 5 !== 0)) return null;
  const [x, y] = xy(beside ? NUMBERS + 3 : NUMBERS, angle);
  return (
    <text className="transformer__number" x={x} y={y} dy="0.35em" textAnchor="middle">
      {number}
    </text>
  );
}

/** The joint between a finish and a start: the centre tap. */
function Bridge({ from, to }: { from: WoundWire | undefined; to: WoundWire | undefined }) {
  const [a, b] = [from?.bends.at(-1), to?.bends[0]];
  if (!a || !b) return null;
  const start = a.angle % (2 * Math.PI);
  const end = b.angle < start ? b.angle + 2 * Math.PI : b.angle;
  const large = end - start > Math.PI ? 1 : 0;
  const middle = (start + end) / 2;
  const path = `M${point(LETTERS + 7, start)}L${point(BRIDGE, start)}A${BRIDGE} ${BRIDGE} 0 ${large} 1 ${point(BRIDGE, end)}L${point(LETTERS + 7, end)}`;
  return (
    <g className="transformer__bridge">
      <path d={path} />
      <path d={`M${point(BRIDGE, middle)}L${point(BRIDGE + 9, middle)}`} />
    </g>
  );
}

/** All stretches on one face, as one path. */
function lines(bends: readonly Bend[], face: Bend['face']): string {
  let d = '';
  for (let i = 1; i < bends.length; i += 1) {
    const [from, to] = [bends[i - 1], bends[i]];
    if (!from || !to || from.face !== face || to.face !== face) continue;
    d += `M${point(from.radius, from.angle)}${face === 'upper' ? `L${point(to.radius, to.angle)}` : under(from, to)}`;
  }
  return d;
}

/** Beneath the core from the hole to the next turn's place at the rim; a long way goes round the hole. */
function under(from: Bend, to: Bend): string {
  const turn = to.angle - from.angle;
  if (turn < 0.5) return `L${point(to.radius, to.angle)}`;
  const mid = (from.radius + to.radius) / 2;
  const large = turn - 0.3 > Math.PI ? 1 : 0;
  return `L${point(mid, from.angle + 0.15)}A${mid.toFixed(2)} ${mid.toFixed(2)} 0 ${large} 1 ${point(mid, to.angle - 0.15)}L${point(to.radius, to.angle)}`;
}

const ring = (radius: number) =>
  `M${-radius} 0a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0z`;

const xy = (radius: number, angle: number): readonly [string, string] => [
  (radius * Math.cos(angle)).toFixed(2),
  (radius * Math.sin(angle)).toFixed(2),
];

const point = (radius: number, angle: number) => xy(radius, angle).join(' ');
