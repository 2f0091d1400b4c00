/** Where a part, or its share of a part, comes from: the workings show the formula for each. */
export type Share =
  | { readonly of: 'piSource' | 'piCoil' | 'piLoad' | 'halfCoil' | 'halfCapacitor' | 'acrossTrap' }
  | { readonly of: 'prototype'; readonly g: number };

/** One part before it has a name. */
export interface Piece {
  /** A capacitor to ground, a coil in the path, or a capacitor across the coil before it. */
  readonly kind: 'capacitor' | 'coil' | 'across';
  /** F or H. */
  readonly value: number;
  readonly shares: readonly Share[];
  /** Frequency that a coil with a capacitor across it stops, Hz; null for all others. */
  readonly notch: number | null;
  /** Harmonic that it was tuned to in place of a plain coil; null where the filter has it so. */
  readonly order: number | null;
}

/** One part of the network with its exact value, from the collector on. */
export interface Part extends Omit<Piece, 'value'> {
  readonly label: string;
  readonly exact: number;
}

/** A piece without a notch. */
export const plain = (kind: 'capacitor' | 'coil', value: number, share: Share): Piece => ({
  kind,
  value,
  shares: [share],
  notch: null,
  order: null,
});
