/** Where the turns of one winding stand round a core, in radians, and where its end leaves it. */
export interface TurnAngles {
  key: number;
  at: readonly number[];
  end: number;
}

/** The part of the ring that stays free, and its middle: at the bottom of the picture. */
const GAP = Math.PI / 6;
const BOTTOM = Math.PI / 2;
/** Where the wound part ends, once round. */
const END = BOTTOM - GAP / 2 + 2 * Math.PI;

/**
 * Angles of every turn of one or more windings, none upon another.
 *
 * @param turns of each winding
 * @param apart angle between wires that are wound together as a bundle, rad; null where a later
 *   winding lies in the gaps of the first
 */
export function turnAngles(turns: readonly number[], apart: number | null): readonly TurnAngles[] {
  const first = turns[0] ?? 0;
  const pitch = (2 * Math.PI - GAP) / first;
  const start = BOTTOM + GAP / 2 + pitch / 2;
  return turns.map((count, key) => {
    if (key === 0 || apart !== null) {
      const shift = (apart ?? 0) * (key - (turns.length - 1) / 2);
      const at = Array.from({ length: count }, (_, i) => start + i * pitch + shift);
      return { key, at, end: END + GAP * 0.3 + shift };
    }
    const at = inTheGaps(count, Math.max(1, first - 1)).map((place) => start + place * pitch);
    return { key, at, end: END + GAP * 0.7 };
  });
}

/** Places between the turns 0, 1, 2 … of another winding, in its pitches, shared out evenly. */
function inTheGaps(count: number, gaps: number): number[] {
  const shares = Array.from({ length: gaps }, (_, gap) => share(count, gaps, gap));
  return shares.flatMap((here, gap) =>
    Array.from({ length: here }, (_, i) => gap + (i + 1) / (here + 1)),
  );
}

/** How many of `count` fall to one of the gaps. */
const share = (count: number, gaps: number, gap: number) =>
  Math.floor(((gap + 1) * count) / gaps) - Math.floor((gap * count) / gaps);
