/**
 * The hatching for what is not wanted or not allowed, and dots for what is barely there; one for
 * the page is enough, any copy does.
 */
export function Hatch() {
  return (
    <defs>
      <pattern
        id="hatch"
        width="7"
        height="7"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path className="chart__hatch" d="M0 0v7" />
      </pattern>
      <pattern id="dots" width="5" height="5" patternUnits="userSpaceOnUse">
        <circle className="chart__dot" cx="2.5" cy="2.5" r="1" />
      </pattern>
    </defs>
  );
}
