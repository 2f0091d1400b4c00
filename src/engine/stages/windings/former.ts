import { thickestWire } from '../../circuit/toroid.ts';
import { cores } from '../../data/cores.ts';
import { type Ferrite, ferrites } from '../../data/ferrites.ts';
import { twoHoleCores } from '../../data/twoHoleCores.ts';

/** A piece of ferrite that takes a broadband winding: a toroid, two of them stacked, or a two-hole core. */
export interface Former {
  readonly key: string;
  readonly title: string;
  readonly shape: 'ring' | 'block';
  readonly ferrite: Ferrite;
  /** Inductance of one turn, H, and how it scatters. */
  readonly al: number;
  readonly tolerance: number;
  /** Cross section m², magnetic path m, surface m². */
  readonly area: number;
  readonly path: number;
  readonly surface: number;
  /** One turn round the section without the wire's own thickness, m. */
  readonly round: number;
  /** Outside, hole and height of a ring; width, hole and length of a block, m. */
  readonly outer: number;
  readonly inner: number;
  readonly height: number;
  /** Between the middles of a block's holes, m; 0 for a ring. */
  readonly apart: number;
  readonly source: string;
}

/** Diameter over the enamel of the thickest wire of which so many turns go on, m. */
export function thickestOn(former: Former, turns: number): number {
  // Wires in a bundle fill a round hole to a half.
  return former.shape === 'ring'
    ? thickestWire(former.inner, turns)
    : former.inner / Math.sqrt(2 * Math.max(1, turns));
}

const rings = (stack: 1 | 2): Former[] =>
  cores.flatMap((core): Former[] => {
    const ferrite = ferriteOf(core.key);
    if (core.mix.kind !== 'ferrite' || !ferrite) return [];
    const { outer, inner, path, area } = core.size;
    const height = stack * core.size.height;
    return [
      {
        key: stack === 1 ? core.key : `2x${core.key}`,
        title: stack === 1 ? core.title : `two ${core.title} stacked`,
        shape: 'ring',
        ferrite,
        al: stack * core.al,
        tolerance: core.mix.tolerance,
        area: stack * area,
        path,
        surface:
          (Math.PI / 2) * (outer * outer - inner * inner) + Math.PI * height * (outer + inner),
        round: 2 * height + outer - inner,
        outer,
        inner,
        height,
        apart: 0,
        source: core.source,
      },
    ];
  });

const blocks: readonly Former[] = twoHoleCores.map((core): Former => {
  const { length, width, height, hole } = core;
  return {
    key: core.key,
    title: core.title,
    shape: 'block',
    ferrite: ferrites[core.ferrite],
    al: core.al,
    tolerance: 0.3,
    area: (height - hole) * length,
    path: (Math.PI / 2) * (height + hole),
    surface: 2 * (length * width + width * height + height * length),
    round: 2 * (length + core.apart),
    outer: width,
    inner: hole,
    height: length,
    apart: core.apart,
    source: core.source,
  };
});

function ferriteOf(key: string): Ferrite | undefined {
  const mix = key.slice(key.indexOf('-') + 1);
  return mix in ferrites ? ferrites[mix as keyof typeof ferrites] : undefined;
}

/** Every former: toroids, two-hole cores, then pairs of toroids. */
export const formers: readonly Former[] = [...rings(1), ...blocks, ...rings(2)];

const byKey = new Map(formers.map((former) => [former.key, former]));
const byTitle = new Map(formers.map((former) => [former.title, former]));

/** A former by its key, or undefined. */
export const formerOf = (key: string): Former | undefined => byKey.get(key);

/** A former by its title, or undefined. */
export const formerTitled = (title: string): Former | undefined => byTitle.get(title);
