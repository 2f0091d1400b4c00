import './winding.css';

interface AirCoilDrawingProps {
  /** What the picture shows, in words. */
  label: string;
  /** Outside of the former, length of the winding, diameter of the wire; any one unit. */
  former: number;
  long: number;
  wire: number;
  /** Parts of a turn are drawn too. */
  turns: number;
  /** Length and diameter, ready to read. */
  longText: string;
  formerText: string;
}

/** Room for coil and its ends in the picture's units. */
const WIDE = 250;
const TALL = 110;
const TAIL = 20;

/** A coil on air from the side, to scale: whole lines lie in front, broken ones behind. */
export function AirCoilDrawing(props: AirCoilDrawingProps) {
  const { label, former, long, wire, turns, longText, formerText } = props;
  const scale = Math.min(WIDE / long, TALL / (former + 2 * wire));
  const [l, d, w] = [long * scale, (former + wire) * scale, Math.max(1.2, wire * scale)];
  const pitch = l / turns;
  const [top, bottom] = [-d / 2, d / 2];
  const whole = Math.floor(turns);
  const part = turns - whole;
  const at = (turn: number) => -l / 2 + turn * pitch;
  const front = Array.from(
    { length: whole },
    (_, i) => `M${xy(at(i), bottom)}L${xy(at(i + 0.5), top)}`,
  ).join('');
  const back = Array.from(
    { length: whole },
    (_, i) => `M${xy(at(i + 0.5), top)}L${xy(at(i + 1), bottom)}`,
  ).join('');
  // The last piece of a turn ends where it ends: in front on its way up, or behind on its way down.
  const end =
    part <= 0.5
      ? { x: at(turns), y: bottom - (part / 0.5) * d }
      : { x: at(turns), y: top + ((part - 0.5) / 0.5) * d };
  const lastFront =
    part > 0
      ? `M${xy(at(whole), bottom)}L${part <= 0.5 ? xy(end.x, end.y) : xy(at(whole + 0.5), top)}`
      : '';
  const lastBack = part > 0.5 ? `M${xy(at(whole + 0.5), top)}L${xy(end.x, end.y)}` : '';
  const below = bottom + TAIL + 18;
  return (
    <svg className="air-coil" viewBox="-200 -90 400 200" role="img" aria-label={label}>
      <rect
        className="air-coil__former"
        x={-l / 2 - 12}
        y={(-former * scale) / 2}
        width={l + 24}
        height={former * scale}
      />
      <path className="air-coil__back" d={`${back}${lastBack}`} />
      <path
        className="air-coil__front"
        strokeWidth={w}
        d={`M${xy(at(0), bottom + TAIL)}L${xy(at(0), bottom)}${front}${lastFront}M${xy(end.x, end.y)}L${xy(end.x, bottom + TAIL)}`}
      />
      <g className="air-coil__measure">
        <path d={`M${xy(-l / 2, below)}L${xy(l / 2, below)}`} />
        <path d={`M${xy(-l / 2, below - 4)}v8M${xy(l / 2, below - 4)}v8`} />
        <text x="0" y={below} dy="1.2em" textAnchor="middle">
          {longText}
        </text>
        <path
          d={`M${xy(l / 2 + 26, (-former * scale) / 2)}L${xy(l / 2 + 26, (former * scale) / 2)}`}
        />
        <path
          d={`M${xy(l / 2 + 22, (-former * scale) / 2)}h8M${xy(l / 2 + 22, (former * scale) / 2)}h8`}
        />
        <text x={l / 2 + 33} y="0" dy="0.35em">
          {formerText}
        </text>
      </g>
    </svg>
  );
}

const xy = (x: number, y: number) => `${x.toFixed(2)} ${y.toFixed(2)}`;
