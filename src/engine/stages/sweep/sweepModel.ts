/** How a figure of the crystal answers to the noise: for its standard error. */
export interface Answering {
  /** How far it moves for one dB of scatter, in its own unit. */
  readonly perDb: number;
  /** How far it moves if a held C0 is off by what it may be off. */
  readonly doubt: number;
}

/** Figures that a fit gives with a standard error. */
export type Figure = 'fs' | 'lm' | 'cm' | 'rm' | 'c0' | 'qu' | 'fp' | 'shunt' | 'level';

/** What the workings of a sweep start from. */
export interface SweepModel {
  /** Rows as read: what each column has in its first and last row, by column. */
  readonly ends: readonly (readonly [number, number])[];
  readonly rows: number;
  readonly from: number;
  readonly to: number;
  /** Rows next to the highest, Hz, and over how many steps. */
  readonly around: readonly [below: number, above: number, steps: number];
  /** Reference resistance in the file, Ω. */
  readonly reference: number | null;
  /** Typical crystal of the frequency on the Plan; null without one. */
  readonly expected: {
    readonly fs: number;
    readonly lm: number;
    readonly rm: number;
    readonly fp: number;
  } | null;
  /** Level of the curve's rows as read, dB against a wire. */
  readonly levels: Float64Array | null;
  readonly fitted: {
    /** Rm in the fitted circuit, also where it is no answer; level and capacitance of the fixture. */
    readonly rm: number;
    readonly level: number;
    readonly shunt: number;
    /** C0 was held. */
    readonly held: boolean;
    /** What the rows say of each figure, on the mean. */
    readonly means: {
      readonly fs: number;
      readonly lm: number;
      readonly rm: number;
      readonly c0All: number;
      readonly shunt: number;
      readonly level: number;
    };
    readonly answering: Readonly<Record<Figure, Answering>>;
    readonly sum: number;
    readonly count: number;
    readonly free: number;
  } | null;
}
