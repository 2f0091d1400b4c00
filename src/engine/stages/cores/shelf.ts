import type { AirForm } from '../../circuit/winding/airCoilOf.ts';
import type { WindingStock, WoundCoil } from '../../circuit/winding/windCoil.ts';
import { type Core, cores } from '../../data/cores.ts';
import { type Wire, wires } from '../../data/wires.ts';

/** A core that a coil may be wound on, with its Q as the winding mathematics wants it. */
export type ShelfCore = Core & { readonly coreQ: number | null };

/** A coil wound from the shelf. */
export type ShelfCoil = WoundCoil<ShelfCore, Wire>;

/** What there is to wind tuned coils with: cores smallest first. */
export interface Shelf extends WindingStock<ShelfCore, Wire> {
  /** Keys of the ferrites of the box, where only those may be taken; null where any may. */
  readonly ferrites: readonly string[] | null;
}

/** Above this frequency mix 6 is taken, below it mix 2, Hz. */
const MIX_SPLIT = 10e6;

/** Wire thicker than this is too stiff for a toroid by hand, m. */
const STIFFEST = 0.81e-3;

/** Part of the room that wire takes where some is to be left for squeezing. */
const ROOMY = 0.6;

const withQ = (core: Core): ShelfCore => ({ ...core, coreQ: core.mix.coreQ });

/** Toroids of the mix for a frequency, smallest first. */
const usual = (frequency: number): ShelfCore[] =>
  ['T37', 'T44', 'T50', 'T68', 'T80', 'T94', 'T106'].flatMap((size) =>
    cores.filter(({ key }) => key === `${size}-${frequency > MIX_SPLIT ? '6' : '2'}`).map(withQ),
  );

/** Does an iron core of the box serve for tuned coils at a frequency? */
export const servesAt = ({ mix }: Core, frequency: number): boolean =>
  mix.kind === 'iron' && frequency >= mix.useful[0] && frequency <= mix.useful[1];

/** What was asked for. */
export interface ShelfAsked {
  readonly coilCore: string;
  readonly wire: string;
  readonly tail: number;
}

/**
 * What there is to choose from.
 *
 * @param boxed cores of the box with their pieces, any order
 * @param blocks keys of the cores with two holes in the box
 * @param air how coils are wound that have no core
 */
export function shelfOf(
  asked: ShelfAsked,
  frequency: number,
  boxed: readonly { readonly core: Core; readonly pieces: number }[],
  blocks: readonly string[] = [],
  air: AirForm | null = null,
): Shelf {
  const named = cores.find(({ key }) => key === asked.coilCore);
  const own = boxed
    .filter(({ core }) => servesAt(core, frequency))
    .sort((a, b) => a.core.size.outer - b.core.size.outer);
  const fromBox = asked.coilCore === 'box' && own.length > 0;
  const wire = wires.find(({ title }) => title === asked.wire);
  const system = asked.wire.startsWith('awg') ? 'awg' : 'metric';
  const ferrites = [
    ...boxed.flatMap(({ core }) => (core.mix.kind === 'ferrite' ? [core.key] : [])),
    ...blocks,
  ];
  const any = usual(frequency);
  return {
    row: named ? [withQ(named)] : fromBox ? own.map(({ core }) => withQ(core)) : any,
    pieces: fromBox ? own.map(({ pieces }) => pieces) : null,
    otherwise: any,
    wires: wire ? [wire] : wires.filter((one) => one.system === system && one.bare <= STIFFEST),
    fill: asked.wire.endsWith('Room') ? ROOMY : 1,
    tail: asked.tail,
    air: asked.coilCore === 'air' ? air : null,
    ferrites: asked.coilCore === 'box' && ferrites.length > 0 ? ferrites : null,
  };
}
