import './transformer.css';

interface TwoHoleDrawingProps {
  /** What the picture shows, in words. */
  label: string;
  /** Turns of each winding. */
  turns: readonly number[];
}

/** Middles of the holes, and where each winding's tails leave, in the picture's units. */
const APART = 34;
const HOLE = 22;

/**
 * A two-hole core seen from the end where the wires go in: each turn goes in at the left, away from
 * the eye (cross), and comes back at the right (point). Starts have a dot.
 */
export function TwoHoleDrawing({ label, turns }: TwoHoleDrawingProps) {
  return (
    <svg className="transformer" viewBox="-118 -118 236 236" role="img" aria-label={label}>
      <rect className="transformer__core" x="-72" y="-40" width="144" height="80" rx="38" />
      {[-APART, APART].map((x) => (
        <circle key={x} className="transformer__hole" cx={x} cy="0" r={HOLE} />
      ))}
      {turns.map((count, key) => {
        const y = (key === 0 ? -1 : 1) * (key === 0 || turns.length === 2 ? 9 : 4 + 8 * (key - 1));
        const out = key === 0 ? -1 : 1;
        const edge = out * (64 + 14 * Math.max(0, key - 1));
        return (
          <g key={String.fromCharCode(65 + key)}>
            <g className={`wire wire--${key}`}>
              {[-1, 1].map((side) => {
                const d = `M${side * APART} ${y}L${side * (APART + 12 * key)} ${edge}`;
                return (
                  <g key={side}>
                    <path d={d} strokeWidth="3.2" />
                    {key > 0 && <path className="wire__pattern" d={d} strokeWidth="1.8" />}
                  </g>
                );
              })}
            </g>
            <g className={`transformer__ends wire--${key}`}>
              <circle className="transformer__dot" cx={-APART - 12 * key} cy={edge} r="4" />
              <text x={-APART - 12 * key} y={edge + out * 13} dy="0.35em" textAnchor="middle">
                {String.fromCharCode(65 + key)}
              </text>
              <text x={APART + 12 * key} y={edge + out * 13} dy="0.35em" textAnchor="middle">
                {String.fromCharCode(65 + key)}′
              </text>
              <text x="0" y={edge} dy="0.35em" textAnchor="middle">
                {count} ×
              </text>
            </g>
            <path className="transformer__sense" d={`M${-APART - 3.5} ${y - 3.5}l7 7m0 -7l-7 7`} />
            <circle className="transformer__point" cx={APART} cy={y} r="2.8" />
          </g>
        );
      })}
    </svg>
  );
}
