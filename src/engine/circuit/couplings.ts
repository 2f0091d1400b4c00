import { besselPoles } from './besselPoles.ts';
import { bracketedRoot } from './bracketedRoot.ts';
import { doubledEnds } from './doubledEnds.ts';
import { gaussianPoles } from './gaussianPoles.ts';
import { ladderFromPoles } from './ladderFromPoles.ts';
import { linearPhasePoles } from './linearPhasePoles.ts';
import type { Pole } from './poles.ts';
import { butterworth, chebyshev, type Prototype } from './prototype.ts';

/** Filter families that are known by their poles alone; linear phase with its ripple in degrees. */
export type PoleFamily = 'bessel' | 'gaussian' | 'linear005' | 'linear05';

/**
 * Filter families by shape. `equal` has all coupling capacitors alike, for least loss; `doubled` has
 * them alike too, and two crystals side by side at each end, which evens out the ripple.
 */
export type Family = 'butterworth' | 'chebyshev' | PoleFamily | 'equal' | 'doubled';

/**
 * A chain of coupled resonators, normalised to half of the −3 dB (half power) bandwidth:
 * coupling coefficients k[0] … k[n−2] and the loaded Q of the first and last resonator.
 */
export interface Couplings {
  readonly k: readonly number[];
  readonly qSource: number;
  readonly qLoad: number;
  /** Crystals side by side at each position; one everywhere if left out. */
  readonly parallel?: readonly number[];
  /** Elements of the prototype from source to load, at half power, of families known by poles. */
  readonly g?: readonly number[];
  /** Deepest dip of the lossless response, dB, where the family has one that nobody asked for. */
  readonly ripple?: number;
}

const poles: Readonly<Record<PoleFamily, (n: number) => Pole[]>> = {
  bessel: besselPoles,
  gaussian: gaussianPoles,
  linear005: (n) => linearPhasePoles(n, (0.05 * Math.PI) / 180),
  linear05: (n) => linearPhasePoles(n, (0.5 * Math.PI) / 180),
};

/** What does not depend on the rig is worked once. */
const known = new Map<string, Couplings>();

/**
 * Couplings of a family, normalised to its half-power bandwidth.
 *
 * Of the ladders that families known by their poles can have, that with zeros of reflection to the
 * left and right by turns: its ends are nearly alike and its couplings differ least, so that the same
 * crystals reach a greater width than with the ladders of the published tables.
 *
 * @param n number of resonators, 2 to 12
 * @param ripple dB, for Chebyshev only, 0.001 to 3
 * @source Matthaei, Young & Jones, 1964, section 11.02; `equal`: S. B. Cohn, Dissipation Loss in
 * Multiple-Coupled-Resonator Filters, Proc. IRE 47, 1959 (all g equal to 1)
 */
export function couplings(family: Family, n: number, ripple: number): Couplings {
  if (family === 'chebyshev') return fromPrototype(chebyshev(n, ripple));
  const key = `${family} ${n}`;
  const before = known.get(key);
  if (before) return before;
  const made = withoutRipple(family, n);
  known.set(key, made);
  return made;
}

function withoutRipple(family: Exclude<Family, 'chebyshev'>, n: number): Couplings {
  if (family === 'butterworth') return fromPrototype(butterworth(n));
  if (family === 'doubled') return doubledEnds(n);
  if (family === 'equal') {
    const all = { k: Array<number>(n - 1).fill(1), qSource: 1, qLoad: 1 };
    return rescale(all, halfPowerOf(all));
  }
  const g = ladderFromPoles(poles[family](n), 'by turns');
  return { ...fromPrototype({ g, halfPower: 1 }), g };
}

/** Couplings from a low-pass prototype: k = 1/√(g g′), q = product of the end pair. */
function fromPrototype({ g, halfPower }: Prototype): Couplings {
  const n = g.length - 2;
  const at = (i: number) => g[i] ?? 1;
  const k = Array.from({ length: n - 1 }, (_, i) => 1 / Math.sqrt(at(i + 1) * at(i + 2)));
  return rescale({ k, qSource: at(0) * at(1), qLoad: at(n) * at(n + 1) }, halfPower);
}

/**
 * Loss of the lossless chain between its ends, in dB.
 *
 * @param omega distance from the middle, in units of half the bandwidth the couplings are for
 */
export function couplingLoss({ k, qSource, qLoad }: Couplings, omega: number): number {
  const n = k.length + 1;
  // The determinant of a chain, by its three-term recursion.
  let re = 1 / qSource;
  let im = omega;
  let re1 = 1;
  let im1 = 0;
  let gain = 4 / (qSource * qLoad);
  for (let i = 1; i < n; i += 1) {
    const kk = (k[i - 1] ?? 0) ** 2;
    const r = i === n - 1 ? 1 / qLoad : 0;
    const nextRe = r * re - omega * im + kk * re1;
    const nextIm = r * im + omega * re + kk * im1;
    re1 = re;
    im1 = im;
    re = nextRe;
    im = nextIm;
    gain *= kk;
  }
  return -10 * Math.log10(gain / (re * re + im * im));
}

function rescale({ k, qSource, qLoad }: Couplings, edge: number): Couplings {
  return { k: k.map((one) => one / edge), qSource: qSource * edge, qLoad: qLoad * edge };
}

/** The outermost half-power point of a chain with equal k = 1: its image band ends at 2. */
function halfPowerOf(chain: Couplings): number {
  const half = 10 * Math.log10(2);
  const past = (omega: number) => couplingLoss(chain, omega) - half;
  let out = 2.5;
  while (out > 0.1 && past(out - 0.01) > 0) out -= 0.01;
  return bracketedRoot(past, out - 0.01, out, 1e-15);
}
