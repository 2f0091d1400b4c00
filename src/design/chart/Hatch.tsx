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
      <pattern id="dots" width="6" height="6" patternUnits="userSpaceOnUse">
        <circle className="map__dot" cx="3" cy="3" r="1.1" />
      </pattern>
    </defs>
  );
}
