/** The hatching for what is not wanted or not allowed; one for the page is enough, any copy does. */
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
    </defs>
  );
}
