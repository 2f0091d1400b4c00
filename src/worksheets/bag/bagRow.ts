/** A line of the bag, as the stage has it. */
export interface BagRow {
  readonly line: number;
  readonly label: string;
  readonly fs: number | null;
  readonly off: number | null;
  readonly lm: number | null;
  readonly rm: number | null;
  readonly c0: number | null;
  readonly standing: 'counts' | 'aside';
  readonly note: string;
}

/** Where a crystal is used. */
export type Use =
  | { readonly kind: 'filter'; readonly position: number }
  | { readonly kind: 'carrier' };
