import { useScales } from './useScales.ts';

export interface CarrierMarksProps {
  /** kHz; `direction` +1 where audio rises with frequency (USB), −1 where it falls (LSB). */
  carrier: { at: number; label: string; direction: 1 | -1 };
  /** Where a rule of thumb would put it, with what that costs. */
  rules: readonly { at: number; label: string }[];
  em: number;
}

/**
 * The carrier, and where rules of thumb would have put it. The places are often closer together
 * than print is wide, so the names stand in a column to the side, each tied to its own line.
 */
export function CarrierMarks({ carrier, rules, em }: CarrierMarksProps) {
  const s = useScales();
  if (s === null) return null;
  const away = carrier.direction > 0 ? -1 : 1;
  const marks = [{ ...carrier, live: true }, ...rules.map((rule) => ({ ...rule, live: false }))];
  const places = marks.map((mark) => s.x(mark.at));
  const longest = Math.max(...marks.map((mark) => mark.label.length)) * em * 0.47;
  const beyond = away > 0 ? s.right - Math.max(...places) : Math.min(...places) - s.left;
  // Beside the skirt where there is room; else at the foot, under the passband.
  const roomy = beyond > longest + em;
  const side = roomy ? away : -away;
  const column = (side > 0 ? Math.max(...places) : Math.min(...places)) + side * em * 1.1;
  const first = roomy ? s.top + em * 1.15 : s.bottom - em * (0.9 + 1.3 * marks.length);
  return (
    <g>
      {marks.map((mark, index) => {
        const x = places[index] ?? 0;
        const y = first + em * 1.3 * index;
        return (
          <g
            key={mark.label}
            className={`chart__upright ${mark.live ? 'chart__upright--live' : ''}`}
          >
            <path d={`M${x} ${s.top}V${s.bottom}`} />
            <path className="chart__tie" d={`M${x} ${y - em * 0.3}H${column - side * em * 0.3}`} />
            <circle cx={x} cy={y - em * 0.3} r={em * 0.14} />
            <text className="chart__halo" x={column} y={y} textAnchor={side > 0 ? 'start' : 'end'}>
              {mark.label}
            </text>
          </g>
        );
      })}
    </g>
  );
}
