import type { Unit } from '../quantity/units.ts';

/** Where a value came from. */
export type Origin = 'typed' | 'typical' | 'worked' | 'measured';

/** How a check turned out. */
export type Outcome = 'holds' | 'close' | 'fails';

/** What every field says of itself, whatever its kind. */
export interface Said {
  /** A few words, as they stand on the sheet. */
  readonly label: string;
  /** The trade's symbol as a name that a formula can use: `L_m`, `f_s`, `omega`. */
  readonly symbol?: string;
  /** One or two sentences: what it is and why it matters. */
  readonly help: string;
  /** Standard, book or "common practice, no source". */
  readonly source?: string;
}

/** A physical quantity in SI units. */
export interface Quantity extends Said {
  readonly kind: 'quantity';
  readonly unit: Unit;
  /** Smallest and largest value that makes sense, in SI units. */
  readonly range?: readonly [number, number];
  /** What is used where nothing is typed; null where a blank stays a blank. */
  readonly default?: number | null;
  /** Where most builders' values lie, in SI units. */
  readonly typical?: readonly [number, number];
  /** Significant digits worth showing. */
  readonly digits?: number;
  /** For powers: the resistance in which volts are meant, in ohms or as the path of a field. */
  readonly across?: number | string;
  /** Read off a meter, and blank until then: while it is wrong it counts as not taken yet. */
  readonly reading?: true;
}

/** A whole number of things. */
export interface Count extends Said {
  readonly kind: 'count';
  readonly range?: readonly [number, number];
  readonly default?: number | null;
}

/** One of a few named possibilities: key to the words shown. */
export interface Choice extends Said {
  readonly kind: 'choice';
  readonly options: Readonly<Record<string, string>>;
  readonly default?: string | null;
}

/** Text of several lines, pasted or read from a file, that a stage takes apart itself. */
export interface Pasted extends Said {
  readonly kind: 'pasted';
  /** Most characters that are kept. */
  readonly longest: number;
  /** Always blank until something is pasted. */
  readonly default: null;
}

/** A sentence or name worked out by a stage. */
export interface Words extends Said {
  readonly kind: 'words';
}

/** Several quantities of one kind, in order. */
export interface List extends Said {
  readonly kind: 'list';
  readonly unit: Unit;
  readonly digits?: number;
}

export type Column = Quantity | Count | Choice | Words;

/** Rows of named columns. */
export interface Table extends Said {
  readonly kind: 'table';
  readonly columns: Readonly<Record<string, Column>>;
}

/** One or more quantities along another, for a chart. */
export interface Curve extends Said {
  readonly kind: 'curve';
  /** Key of the quantity along the axis. */
  readonly along: string;
  /** The quantities, the one along the axis included. */
  readonly of: Readonly<Record<string, Quantity>>;
}

/** Plain data that one stage hands to the next and nobody reads as a figure. */
export interface Model<T = unknown> extends Said {
  readonly kind: 'model';
  /** Never set: carries the type only. */
  readonly shape?: T;
}

export type InputField = Quantity | Count | Choice | Pasted;
export type ResultField = Quantity | Count | Choice | Words | List | Table | Curve | Model;
export type Field = InputField | ResultField;

/** The value that a field of a given declaration takes when it has one. */
export type ValueOf<F> = F extends { kind: 'quantity' | 'count' }
  ? number
  : F extends { kind: 'choice'; options: infer O }
    ? keyof O & string
    : F extends { kind: 'words' | 'pasted' }
      ? string
      : F extends { kind: 'list' }
        ? readonly number[]
        : F extends { kind: 'table'; columns: infer C }
          ? readonly RowOf<C>[]
          : F extends { kind: 'curve'; of: infer Q }
            ? { readonly [K in keyof Q]: Float64Array }
            : F extends Model<infer T>
              ? T
              : never;

/** A row of a table; a cell that has no value is null. */
export type RowOf<C> = { readonly [K in keyof C]: ValueOf<C[K]> | null };
