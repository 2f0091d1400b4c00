import type { Wave } from './twoPeriods.ts';

interface Place {
  readonly nameAt: number;
  readonly side: 'above' | 'left' | 'right';
}

/** Height over the foot, as a share of the crest's, at which a name is put beside a flank. */
const FLANK = 0.45;

/** Where a wave is highest between two places, and where its flanks pass a height. */
function shapeOf({ x, y }: Wave, from: number, to: number) {
  let crest = -1;
  x.forEach((at, i) => {
    if (at >= from && at <= to && (crest < 0 || (y[i] ?? 0) > (y[crest] ?? 0))) crest = i;
  });
  const top = y[crest] ?? 0;
  const flank = (height: number) => {
    let [rise, fall] = [crest, crest];
    while ((x[rise] ?? from) > from && (y[rise] ?? 0) > height) rise -= 1;
    while ((x[fall] ?? to) < to && (y[fall] ?? 0) > height) fall += 1;
    return { rise: x[rise] ?? from, fall: x[fall] ?? to };
  };
  return { at: x[crest] ?? from, top, flank };
}

/**
 * Where the names of two waves don't meet: that of the higher one above its crest, that of the other
 * beside the flank on which it stands further out.
 *
 * @param one, other the waves, and two places between which each has one crest
 * @return the place of each name
 */
export function namesApart(
  one: Wave,
  other: Wave,
  from: number,
  to: number,
): readonly [Place, Place] {
  const shapes = [shapeOf(one, from, to), shapeOf(other, from, to)] as const;
  const [high, low] = shapes[0].top >= shapes[1].top ? shapes : [shapes[1], shapes[0]];
  const height = FLANK * low.top;
  const [mine, theirs] = [low.flank(height), high.flank(height)];
  const above: Place = { nameAt: high.at, side: 'above' };
  const beside: Place =
    theirs.rise - mine.rise > mine.fall - theirs.fall
      ? { nameAt: mine.rise, side: 'left' }
      : { nameAt: mine.fall, side: 'right' };
  return high === shapes[0] ? [above, beside] : [beside, above];
}
