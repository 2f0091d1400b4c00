import { type Core, cores } from '../../data/cores.ts';
import { type Wire, wires } from '../../data/wires.ts';

/** A core that a coil may be wound on, with its Q as the winding mathematics wants it. */
export type ShelfCore = Core & { readonly coreQ: number | null };

/** What there is to wind tuned coils with. */
export interface Shelf {
  /** Cores, smallest first: the first that suffices is taken. */
  readonly row: readonly ShelfCore[];
  /** Wires, thinnest first: the thickest that fits is taken. */
  readonly wires: readonly Wire[];
  /** m. */
  readonly tail: number;
  /** Keys of the ferrites of the box, where only those may be taken; null where any may. */
  readonly ferrites: readonly string[] | null;
}

/** Above this frequency mix 6 is taken, below it mix 2, Hz. */
const MIX_SPLIT = 10e6;

/** Wire thicker than this is too stiff for a toroid by hand, m. */
const STIFFEST = 0.81e-3;

const withQ = (core: Core): ShelfCore => ({ ...core, coreQ: core.mix.coreQ });

/** Toroids of the mix for a frequency, smallest first. */
const usual = (frequency: number): ShelfCore[] =>
  ['T37', 'T44', 'T50', 'T68', 'T80', 'T94', 'T106'].flatMap((size) =>
    cores.filter(({ key }) => key === `${size}-${frequency > MIX_SPLIT ? '6' : '2'}`).map(withQ),
  );

/** Does an iron core of the box serve for tuned coils at a frequency? */
export const servesAt = ({ mix }: Core, frequency: number): boolean =>
  mix.kind === 'iron' && frequency >= mix.useful[0] && frequency <= mix.useful[1];

/**
 * What there is to choose from.
 *
 * @param boxed cores of the box, any order
 */
export function shelfOf(
  asked: { readonly coilCore: string; readonly wire: string; readonly tail: number },
  frequency: number,
  boxed: readonly Core[],
): Shelf {
  const named = cores.find(({ key }) => key === asked.coilCore);
  const own = boxed
    .filter((core) => servesAt(core, frequency))
    .sort((a, b) => a.size.outer - b.size.outer)
    .map(withQ);
  const fromBox = asked.coilCore === 'box' && own.length > 0;
  const wire = wires.find(({ title }) => title === asked.wire);
  const system = asked.wire === 'awg' ? 'awg' : 'metric';
  const ferrites = boxed.filter(({ mix }) => mix.kind === 'ferrite').map(({ key }) => key);
  return {
    row: named ? [withQ(named)] : fromBox ? own : usual(frequency),
    wires: wire ? [wire] : wires.filter((one) => one.system === system && one.bare <= STIFFEST),
    tail: asked.tail,
    ferrites: asked.coilCore === 'box' && ferrites.length > 0 ? ferrites : null,
  };
}
