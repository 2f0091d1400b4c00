/** What is typical of a crystal holder. Wide guesses, never data. */
export interface Holder {
  readonly name: string;
  /** F, holder capacitance: usual value and band. */
  readonly c0: number;
  readonly c0Band: readonly [number, number];
  /** Motional capacitance against that of a full-size HC-49/U can. */
  readonly cmFactor: number;
  /** Motional resistance against the same. */
  readonly rmFactor: number;
  readonly source: string;
}

export type HolderKey = 'full' | 'low' | 'smd';

const source = 'makers’ data and builders’ measurements, from memory; wide';

export const holders: Readonly<Record<HolderKey, Holder>> = {
  full: {
    name: 'HC-49/U (full height)',
    c0: 4e-12,
    c0Band: [3e-12, 6e-12],
    cmFactor: 1,
    rmFactor: 1,
    source,
  },
  low: {
    name: 'HC-49/S (low profile)',
    c0: 3e-12,
    c0Band: [2e-12, 5e-12],
    cmFactor: 0.42,
    rmFactor: 2.5,
    source,
  },
  smd: {
    name: 'Surface mount',
    c0: 1.5e-12,
    c0Band: [0.8e-12, 3e-12],
    cmFactor: 0.25,
    rmFactor: 3,
    source,
  },
};

/**
 * Typical fundamental crystals in full-height cans: frequency (Hz), motional inductance (H) and
 * resistance (Ω), the geometric middle of the usual band.
 * Source: makers’ data and builders’ measurements, from memory; wide (a factor of 1.3 for L, 2 for R).
 */
export const typicalCrystals: readonly { f: number; lm: number; rm: number }[] = [
  { f: 3.58e6, lm: 122e-3, rm: 49 },
  { f: 4.9152e6, lm: 70e-3, rm: 24.5 },
  { f: 8e6, lm: 19.9e-3, rm: 12.6 },
  { f: 10e6, lm: 11.4e-3, rm: 9.5 },
];
