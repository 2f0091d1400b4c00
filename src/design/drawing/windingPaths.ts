import { type TurnAngles, turnAngles } from './turnAngles.ts';

/** A bend of a wire round a core that is seen from above: on the face that is seen, or beneath. */
export interface Bend {
  readonly radius: number;
  /** Radians, clockwise from three o’clock. */
  readonly angle: number;
  readonly face: 'upper' | 'lower';
}

/** One wire from its start to its finish. */
export interface WoundWire {
  readonly letter: string;
  readonly key: number;
  /** Where each turn enters the hole, radians. */
  readonly at: readonly number[];
  readonly bends: readonly Bend[];
}

/** Radii between which the wires run, in the picture's units. */
export interface WindingRadii {
  /** Just within the hole, just outside the rim, at the ends of the tails. */
  readonly edge: number;
  readonly rim: number;
  readonly tail: number;
}

/** Tails of wires that run side by side are drawn this far apart at least, rad. */
const FAN = 0.19;

/**
 * The way of each wire round the core: from above down through the hole at every turn, back up
 * beyond the rim. Drawings and their dots are both made from it.
 *
 * @param turns of each wire
 * @param apart angle between wires wound together, rad; null where later ones lie in the gaps
 * @param over turns of one more wire that lies in the gaps of a bundle
 * @param paired the last wire of those in the gaps is two wires, side by side
 */
export function windingPaths(
  turns: readonly number[],
  apart: number | null,
  { edge, rim, tail }: WindingRadii,
  over: number | null = null,
  paired: number | null = null,
): readonly WoundWire[] {
  const middle = (turns.length - 1) / 2;
  const places = [...turnAngles(turns, apart)];
  if (over !== null) {
    const more = turnAngles([turns[0] ?? 1, over], null)[1];
    // Clear of the bundle's own finishes.
    if (more) places.push({ ...more, key: turns.length, end: more.end + FAN * 0.7 });
  }
  const gaps = places.at(-1);
  if (paired !== null && gaps) {
    const shifted = (by: number, key: number, end: number): TurnAngles => ({
      key,
      at: gaps.at.map((angle) => angle + by),
      end,
    });
    places.splice(
      -1,
      1,
      shifted(-paired / 2, gaps.key, gaps.end),
      shifted(paired / 2, gaps.key + 1, gaps.end + FAN),
    );
  }
  return places.map(({ key, at, end }) => {
    const lone = apart === null || key >= turns.length;
    const fan = lone ? 0 : Math.max(0, FAN - apart) * (key - middle);
    const first = at[0] ?? 0;
    const bends: Bend[] = [{ radius: tail, angle: first + fan, face: 'upper' }];
    at.forEach((angle, i) => {
      const next = at[i + 1] ?? end;
      bends.push(
        { radius: rim, angle, face: 'upper' },
        { radius: edge, angle, face: 'upper' },
        { radius: edge, angle, face: 'lower' },
        { radius: rim, angle: next, face: 'lower' },
      );
    });
    bends.push(
      { radius: rim, angle: end, face: 'upper' },
      { radius: tail, angle: end + fan, face: 'upper' },
    );
    return { letter: String.fromCharCode(65 + key), key, at, bends };
  });
}

/** How often a wire passes down through the hole, less how often it passes up. */
export function passesThrough(bends: readonly Bend[], hole: number): number {
  let passes = 0;
  for (let i = 1; i < bends.length; i += 1) {
    const [from, to] = [bends[i - 1], bends[i]];
    if (!from || !to || from.face === to.face || from.radius > hole) continue;
    passes += to.face === 'lower' ? 1 : -1;
  }
  return passes;
}
