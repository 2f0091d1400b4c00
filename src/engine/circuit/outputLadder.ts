/** One branch of a ladder between collector and antenna. */
export interface LadderBranch {
  /** Across the path, or in it. */
  readonly place: 'shunt' | 'series';
  /** Coil, H; 0 where the branch has none. */
  readonly l: number;
  /** Capacitor, F; 0 where the branch has none. With a coil it lies across it: a trap, or strays. */
  readonly c: number;
  /** Quality factor of the coil at the ladder's reference frequency; it grows as √f (skin effect). */
  readonly ql: number;
  /** Quality factor of the capacitor, the same at every frequency (loss tangent). */
  readonly qc: number;
}

/** A ladder fed by a current source: branches in order from the source to the load. */
export interface OutputLadder {
  readonly branches: readonly LadderBranch[];
  /** Turns on the ladder's side over turns on the source's side of an ideal transformer; 1 = none. */
  readonly ratio: number;
  /** Resistance across the source, Ω; Infinity where there is none. */
  readonly sourceResistance: number;
  /** Capacitance across the source, F. */
  readonly sourceCapacitance: number;
  /** Antenna resistance, Ω. */
  readonly load: number;
  /** Frequency at which the coils' quality factors are meant, Hz. */
  readonly reference: number;
}

/** A branch with a coil alone. */
export const coil = (place: LadderBranch['place'], l: number, ql: number, across = 0) =>
  ({ place, l, c: across, ql, qc: Number.POSITIVE_INFINITY }) satisfies LadderBranch;

/** A branch with a capacitor alone. */
export const capacitor = (place: LadderBranch['place'], c: number, qc: number) =>
  ({ place, l: 0, c, ql: Number.POSITIVE_INFINITY, qc }) satisfies LadderBranch;
