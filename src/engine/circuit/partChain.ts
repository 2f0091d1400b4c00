import type { Ladder } from './ladder.ts';

/** A capacitor of a ladder by its place: `coupling` or `series`, counted from the source from 0. */
export interface Place {
  readonly of: 'coupling' | 'series';
  readonly at: number;
}

/** One arm of a ladder at all probe frequencies: what stays, and the capacitor that may be changed. */
export interface Link {
  /** Across the signal's path: immittances are admittances, S; else impedances, Ω. */
  readonly shunt: boolean;
  /** What stays, at each frequency. */
  readonly re: Float64Array;
  readonly im: Float64Array;
  /** Number of the capacitor that belongs to the arm; −1 where it has none. */
  readonly part: number;
}

/** A ladder taken apart for trying other capacitors: nothing of a crystal is worked twice. */
export interface PartChain {
  /** From source to load. */
  readonly links: readonly Link[];
  /** Which capacitor each number stands for, in the order of the links. */
  readonly places: readonly Place[];
  /** Angular frequencies, rad/s. */
  readonly w: Float64Array;
  /** Loss factor of the capacitors. */
  readonly tan: number;
  readonly source: Ladder['source'];
  readonly load: Ladder['load'];
}

/**
 * Takes a ladder apart at a set of frequencies. Leakage past the filter is left out.
 *
 * @param frequency Hz
 */
export function partChain(ladder: Ladder, frequency: Float64Array): PartChain {
  const { lm, coupling, endC, capacitorQ, source, load } = ladder;
  const w = frequency.map((f) => 2 * Math.PI * f);
  const tan = 1 / capacitorQ;
  const n = lm.length;
  const shuntForm = ladder.form === 'shunt';
  const places: Place[] = [];
  const links: Link[] = [];
  const add = (shunt: boolean, fill: Fill, place?: Place) => {
    const re = new Float64Array(w.length);
    const im = new Float64Array(w.length);
    fill(re, im);
    links.push({ shunt, re, im, part: place ? places.push(place) - 1 : -1 });
  };
  if (!shuntForm && endC[0] > 0) add(true, capacitor(w, endC[0], tan));
  for (let k = 0; k < n; k += 1) {
    const own = (ladder.series[k] ?? 0) > 0 ? ({ of: 'series', at: k } as const) : undefined;
    const between = { of: 'coupling', at: k } as const;
    if (shuntForm) {
      const lossy = (k === 0 ? endC[0] : 0) + (k === n - 1 ? endC[1] : 0);
      add(true, node(ladder, w, k, lossy, tan), own);
      if (k < coupling.length) add(false, nothing, between);
    } else {
      add(false, crystal(ladder, w, k), own);
      if (k < coupling.length) {
        add(true, capacitor(w, ladder.stray[k] ?? 0, 0), between);
      }
    }
  }
  if (!shuntForm && endC[1] > 0) add(true, capacitor(w, endC[1], tan));
  return { links, places, w, tan, source, load };
}

type Fill = (re: Float64Array, im: Float64Array) => void;

const nothing: Fill = () => {};

const capacitor =
  (w: Float64Array, c: number, tan: number): Fill =>
  (re, im) => {
    for (let p = 0; p < w.length; p += 1) {
      const b = (w[p] as number) * c;
      re[p] = b * tan;
      im[p] = b;
    }
  };

/** The crystal in series: Z = Zm/(1 + jωC0·Zm). */
const crystal =
  ({ lm, cm, rm, c0 }: Ladder, w: Float64Array, k: number): Fill =>
  (re, im) => {
    const [l, c, r, ch] = [lm[k] as number, cm[k] as number, rm[k] as number, c0[k] as number];
    for (let p = 0; p < w.length; p += 1) {
      const one = w[p] as number;
      const xm = one * l - 1 / (one * c);
      const dr = 1 - one * ch * xm;
      const di = one * ch * r;
      const d = 1 / (dr * dr + di * di);
      re[p] = (r * dr + xm * di) * d;
      im[p] = (xm * dr - r * di) * d;
    }
  };

/** The crystal to ground with stray and end capacitor beside it. */
const node =
  (ladder: Ladder, w: Float64Array, k: number, lossy: number, tan: number): Fill =>
  (re, im) => {
    const [l, c, r] = [ladder.lm[k] as number, ladder.cm[k] as number, ladder.rm[k] as number];
    const still = (ladder.c0[k] as number) + (ladder.stray[k] ?? 0) + lossy;
    for (let p = 0; p < w.length; p += 1) {
      const one = w[p] as number;
      const xm = one * l - 1 / (one * c);
      const size = 1 / (r * r + xm * xm);
      re[p] = r * size + one * lossy * tan;
      im[p] = -xm * size + one * still;
    }
  };
