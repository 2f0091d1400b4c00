/** Where the turns of one winding stand round a core, in radians, and where its end leaves it. */
export interface TurnAngles {
  key: number;
  at: readonly number[];
  end: number;
}

/** The part of the ring that stays free, and its middle: at the bottom of the picture. */
const GAP = Math.PI / 6;
const BOTTOM = Math.PI / 2;
/** Share of the ring that a winding takes when it is spread as far as it may be. */
const SPREAD = 1 - GAP / (2 * Math.PI);
/** How far past the wound part the end comes up, rad. */
const PAST = GAP * 0.3;

/**
 * Angles of every turn of one or more windings, none upon another.
 *
 * @param turns of each winding
 * @param apart angle between wires that are wound together as a bundle, rad; null where a later
 *   winding lies in the gaps of the first
 * @param share of the ring that is wound; at most all of it but the gap
 */
export function turnAngles(
  turns: readonly number[],
  apart: number | null,
  share = SPREAD,
): readonly TurnAngles[] {
  const first = turns[0] ?? 0;
  const wound = 2 * Math.PI * Math.min(SPREAD, share);
  const pitch = wound / first;
  const free = Math.PI - wound / 2;
  const start = BOTTOM + free + pitch / 2;
  const finish = BOTTOM - free + 2 * Math.PI;
  return turns.map((count, key) => {
    if (key === 0 || apart !== null) {
      const shift = (apart ?? 0) * (key - (turns.length - 1) / 2);
      const at = Array.from({ length: count }, (_, i) => start + i * pitch + shift);
      return { key, at, end: finish + PAST + shift };
    }
    const at = inTheGaps(count, Math.max(1, first - 1)).map((place) => start + place * pitch);
    return { key, at, end: finish + GAP * 0.7 };
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
