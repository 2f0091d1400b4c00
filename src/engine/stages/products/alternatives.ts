import { imageOf, mixed, oscillatorFor, wayOf } from '../../circuit/mixing.ts';
import { nearestMeeting, type Product, type Tuning } from './products.ts';

/** Markings of crystals that are cheap and sold by the dozen, Hz. Common practice, no source. */
const CHEAP = [
  3.2768e6, 3.579545e6, 3.6864e6, 4e6, 4.194304e6, 4.433619e6, 4.9152e6, 5e6, 5.0688e6, 6e6,
  6.144e6, 7.3728e6, 8e6, 8.192e6, 8.867238e6, 9e6, 9.216e6, 9.8304e6, 10e6, 10.24e6, 11.0592e6,
  12e6, 12.288e6, 13.56e6, 14.31818e6, 14.7456e6, 16e6, 18.432e6, 20e6,
] as const;

/** Nearest that operating and intermediate frequency may come; lowest and highest oscillator, Hz. */
const BOUNDS = { apart: 500e3, low: 500e3, high: 40e6 } as const;

/** How many are shown. */
const SHOWN = 8;

export interface Around {
  /** Operating frequency and how far it is tuned, Hz. */
  readonly nominal: number;
  readonly span: number;
  /** Half of the band-pass, and the window of the voice, Hz. */
  readonly halfWidth: number;
  readonly window: number;
  readonly products: readonly Product[];
}

/** Lowest order of a product that falls within a distance; null where none does. */
export function lowestWithin(
  products: readonly Product[],
  tuning: Tuning,
  within: number,
  but: (product: Product) => boolean,
): number | null {
  for (const product of products) {
    if (but(product)) continue;
    if (Math.abs(nearestMeeting(product, tuning).beside) <= within) return product.m + product.n;
  }
  return null;
}

/** The product that is wanted itself. */
export const isWanted = ({ m, n }: Product): boolean => m === 1 && n === 1;

/** The intermediate frequency itself. */
export const isFilter = ({ m, n }: Product): boolean => m === 0 && n === 1;

/** How a choice of crystals and side does: the oscillator, and the lowest orders sent and heard. */
export function tried(marking: number, side: 'difference' | 'sum', around: Around) {
  const way = wayOf(side, around.nominal, marking);
  const from = oscillatorFor(way, around.nominal, marking);
  const to = way === 'takes' ? from - around.span : from + around.span;
  const sentAlong: Tuning = {
    from,
    to,
    other: marking,
    metFrom: mixed(way, from, marking),
    metTo: mixed(way, to, marking),
  };
  const filterAlong: Tuning = { ...sentAlong, metFrom: marking, metTo: marking };
  const { products, halfWidth, window } = around;
  const onSignal = lowestWithin(products, sentAlong, window, isWanted);
  const onFilter = lowestWithin(products, filterAlong, window, isFilter);
  const heard =
    onSignal === null || onFilter === null ? (onSignal ?? onFilter) : Math.min(onSignal, onFilter);
  return {
    marking,
    side,
    oscillator: from,
    image: imageOf(way, from, marking),
    sent: lowestWithin(products, sentAlong, halfWidth, isWanted),
    heard,
  };
}

export type Tried = ReturnType<typeof tried>;

/** Common crystals and both sides, best first. */
export function alternatives(around: Around): readonly Tried[] {
  const all = CHEAP.filter((marking) => Math.abs(marking - around.nominal) >= BOUNDS.apart)
    .flatMap((marking) => [tried(marking, 'difference', around), tried(marking, 'sum', around)])
    .filter(({ oscillator }) => oscillator >= BOUNDS.low && oscillator <= BOUNDS.high);
  return all.sort((a, b) => merit(b) - merit(a) || a.oscillator - b.oscillator).slice(0, SHOWN);
}

/** None found counts as one order more than any. */
const NONE = 16;

/** The weaker of the two orders decides, then both together. */
function merit({ sent, heard }: Tried): number {
  const a = sent ?? NONE;
  const b = heard ?? NONE;
  return 100 * Math.min(a, b) + a + b;
}
