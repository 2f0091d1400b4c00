/** A kind of fuse with the currents that it is made for, A. */
export interface Fuse {
  readonly title: string;
  readonly ratings: readonly number[];
  readonly source: string;
}

/** Fuses. The steps of IEC 60127 are those of ISO 3's series R10. */
export const fuses = {
  glass: {
    title: 'Glass tube, 5 × 20 mm, slow',
    ratings: [
      0.032, 0.04, 0.05, 0.063, 0.08, 0.1, 0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8, 1,
      1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10,
    ],
    source: 'IEC 60127-2',
  },
  blade: {
    title: 'Blade, as in cars',
    ratings: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40],
    source: 'ISO 8820-3; 1, 2 and 4 A as makers sell them, from memory',
  },
} as const satisfies Record<string, Fuse>;

/** The next rating that is no less than a current (A); null beyond the list. */
export const fuseFor = ({ ratings }: Fuse, least: number): number | null =>
  ratings.find((rating) => rating >= least) ?? null;
