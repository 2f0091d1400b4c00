/** What a rule set is asked about one unwanted emission. */
export interface Emission {
  /** Frequency of the emission, Hz. */
  readonly frequency: number;
  /** Frequency that the transmitter works on, Hz. */
  readonly fundamental: number;
  /** Power of the wanted signal with one steady tone at full drive, W (mean and PEP are then equal). */
  readonly power: number;
  /** The user's own figure, dB below the wanted signal; used by `own` only. */
  readonly own: number;
  /** The user's own lines, which go before the figure; used by `own` only. */
  readonly ownLines?: readonly OwnLine[] | null | undefined;
}

/** One line of a user's own set of limits. A line without frequencies is not understood, and skipped. */
export interface OwnLine {
  /** Frequencies for which it holds, ends included, Hz. */
  readonly from: number | null;
  readonly to: number | null;
  /** dB below the wanted signal. */
  readonly below: number | null;
  /** Level of the emission itself, dBm. */
  readonly absolute: number | null;
  /** Where both are given: the one that asks less is enough, or both must hold. */
  readonly whichever: 'less' | 'more' | null;
}
