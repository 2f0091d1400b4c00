import { besideEachOther, surfaceRise } from '../../circuit/broadbandTransformer.ts';
import { type Former, formerOf, formers, thickestOn } from './former.ts';
import type { WindingsSeen } from './seen.ts';
import type { TransformerWanted } from './transformersWanted.ts';
import { wound } from './wound.ts';

/** Below this frequency mixes 77 and 73 are tried for small signals as well, Hz. */
export const LOW = 5e6;

/** Most turns, all windings together, that a small core is given before another is tried. */
export const MANY = 30;

/** Thinnest wire over its enamel that the choice of a core puts up with, m. */
const THINNEST = 0.25e-3;

/** Warming by a steady tone that the choice of a core puts up with, K. */
export const WARM = 40;

type Seen = Pick<
  WindingsSeen,
  'nominal' | 'reactanceTimes' | 'transformerCore' | 'modulatorCore' | 'shelf'
>;

/** Those of a row that the user's box holds, where only those may be taken and some are there. */
function atHand(row: readonly Former[], { shelf }: Seen): readonly Former[] {
  const { ferrites } = shelf;
  if (ferrites === null) return row;
  const some = row.filter(({ key }) => ferrites.includes(key));
  return some.length > 0 ? some : row;
}

/**
 * The core of a transformer: the one asked for; else, for power, the smallest of mix 61 that stays
 * cool, and for small signals the first on which thirty turns suffice, or the fewest.
 */
export function pickFerrite(wanted: TransformerWanted, seen: Seen): Former {
  const named = formerOf(wanted.kind === 'output' ? seen.transformerCore : seen.modulatorCore);
  if (named) return named;
  return wanted.kind === 'output' ? forPower(wanted, seen) : forSmall(wanted, seen);
}

/** Mix 61 in the order of size. */
const powerRow = list('FT37-61', 'FT50-61', 'FT82-61', '2xFT82-61');

function forPower(wanted: TransformerWanted, seen: Seen): Former {
  const row = atHand(powerRow.slice(smallestFor(wanted.power ?? 0)), seen);
  const cool = row.find((former) => {
    const { stores, loses, turns, all } = wound(wanted, former, seen);
    const reactance = 2 * Math.PI * seen.nominal * former.al * turns ** 2;
    const { r } = besideEachOther(reactance, former.ferrite.permeability, stores, loses);
    const heat = ((wanted.power ?? 0) * wanted.first) / r;
    return surfaceRise(heat, former.surface) <= WARM && thickestOn(former, all) >= THINNEST;
  });
  return cool ?? last(row);
}

/** The size that the power alone asks for: up to 1 W, 5 W, 20 W, above. */
export const smallestFor = (power: number): number =>
  power <= 1 ? 0 : power <= 5 ? 1 : power <= 20 ? 2 : 3;

const high = list('FT37-43', 'FT50-43', 'BN-43-202');
const low = list('FT37-43', 'FT37-77', 'FT50-77', 'BN-73-202');

function forSmall(wanted: TransformerWanted, seen: Seen): Former {
  const row = atHand(seen.nominal < LOW ? low : high, seen);
  let fewest: { former: Former; all: number } | null = null;
  for (const former of row) {
    const { all } = wound(wanted, former, seen);
    if (all <= MANY && thickestOn(former, all) >= THINNEST) return former;
    if (fewest === null || all < fewest.all) fewest = { former, all };
  }
  return fewest?.former ?? last(row);
}

function list(...keys: readonly string[]): readonly Former[] {
  return keys.flatMap((key) => formerOf(key) ?? []);
}

const last = (row: readonly Former[]): Former => row.at(-1) ?? (formers[0] as Former);
