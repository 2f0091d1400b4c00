/** The final at one angle of the reflection. */
export interface MismatchedPoint {
  /** Of the reflection coefficient at the antenna terminal, rad. */
  readonly angle: number;
  /** Into the antenna's resistance, W. */
  readonly power: number;
  /** Greatest collector–emitter voltage V, collector current of each transistor A. */
  readonly voltage: number;
  readonly current: number;
  /** Direct current of the whole final, A. */
  readonly supply: number;
  /** Heat in each transistor W, and where its junction would go with it for minutes, K. */
  readonly dissipation: number;
  readonly junction: number;
  /** The harmonic with the least margin: its order, level dBc, margin dB. */
  readonly order: number;
  readonly level: number;
  readonly margin: number;
}

/** The final once round at one standing wave ratio. */
export interface MismatchedRound {
  readonly swr: number;
  /** In order of the angle; those without a steady state are left out. */
  readonly points: readonly MismatchedPoint[];
  /** Angles at which no steady state was found. */
  readonly missing: number;
  /** The worst point of each kind; null where there is none at all. */
  readonly worst: {
    readonly voltage: MismatchedPoint;
    readonly current: MismatchedPoint;
    readonly dissipation: MismatchedPoint;
    readonly power: MismatchedPoint;
    readonly margin: MismatchedPoint;
  } | null;
}

/** What becomes of the final, driven as for its power into the right load, as the antenna reflects. */
export interface MismatchedAnswer {
  readonly says: string;
  readonly how: string;
  /** Limit of the collector voltage, V, to be compared with. */
  readonly limitVce: number;
  /** Into the right load. */
  readonly matched: MismatchedPoint | null;
  /** Rising ratio. */
  readonly rounds: readonly MismatchedRound[];
}
