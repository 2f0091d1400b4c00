/** What a column of a sweep is. */
export type Holds =
  | 'frequency'
  | 'level'
  | 'voltage'
  | 'angle'
  | 'real'
  | 'imaginary'
  | 'other'
  | 'nothing';

/** Units a frequency column may have. */
export type FrequencyUnit = 'Hz' | 'kHz' | 'MHz' | 'GHz';

/** One column of a pasted sweep, in the file's own units. */
export interface SweepColumn {
  /** As the file names it, or what it must be. */
  readonly name: string;
  /** As written in the file: `MHz`, `dBm`, `mV`; empty where it says none. */
  readonly unit: string;
  readonly holds: Holds;
  readonly values: Float64Array;
  /** Something comes back to the port it left from: one minus it is what a fixture would pass. */
  readonly reflection?: true;
}

/** Something worth saying about the text, with how many lines it is about. */
export interface SweepNote {
  readonly lines: number;
  readonly says: string;
}

/** A pasted sweep, taken apart but not yet understood: columns of equal length. */
export interface SweepText {
  /** In words: `Touchstone, two ports, magnitude and angle`. */
  readonly format: string;
  readonly columns: readonly SweepColumn[];
  /** Reference resistance that the file names, Ω. */
  readonly reference: number | null;
  /** The unit of frequency is not said by the file but a rule's. */
  readonly unitSupposed: boolean;
  readonly notes: readonly SweepNote[];
}

/** Lines of a text, whatever ends them; a byte-order mark is no part of the first. */
export const linesOf = (text: string): string[] => text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/);

/** Rows turned into columns. */
export function columnsOf(rows: readonly (readonly number[])[], count: number): Float64Array[] {
  return Array.from({ length: count }, (_, c) =>
    Float64Array.from(rows, (row) => row[c] ?? Number.NaN),
  );
}
