import { enLimit } from './enLimit.ts';

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
}

/** A rule on unwanted emissions, as it was read, with where it stands. */
export interface RuleSet {
  readonly title: string;
  /** What the decibels count from. */
  readonly below: 'mean power' | 'PEP';
  readonly source: string;
  readonly year: number;
  /** Where and for whom the rule is taken to hold. */
  readonly validity: string;
  /** Least attenuation, dB below the wanted signal. */
  readonly limit: (emission: Emission) => number;
}

/**
 * Rule sets for harmonics of an amateur transmitter below 54 MHz. They are planning figures: the
 * text in force, a measurement, and the operator, who answers for the station, decide.
 */
export const ruleSets = {
  us: {
    title: 'United States',
    below: 'mean power',
    source: 'US 47 CFR 97.307(d), (e)',
    year: 2003,
    validity: 'amateur transmitters installed after 1 January 2003',
    limit: ({ fundamental, power }) => (fundamental < 30e6 ? 43 : usAbove30(power)),
  },
  usBefore2003: {
    title: 'United States, installed before 2003',
    below: 'mean power',
    source: 'US 47 CFR 97.307(d), (e)',
    year: 2003,
    validity: 'amateur transmitters installed on or before 1 January 2003',
    limit: ({ fundamental, power }) => (fundamental < 30e6 ? usOld(power) : usAbove30(power)),
  },
  itu: {
    title: 'ITU Radio Regulations',
    below: 'PEP',
    source: 'ITU Radio Regulations, Appendix 3; ITU-R SM.329 category A (from memory)',
    year: 2012,
    validity: 'the amateur service; above 30 MHz the cap is 70 dB (from memory)',
    limit: ({ fundamental, power }) =>
      Math.min(43 + 10 * Math.log10(power), fundamental < 30e6 ? 50 : 70),
  },
  cept: {
    title: 'CEPT country (EN 301 783)',
    below: 'PEP',
    source: 'EN 301 783 as enacted in Austria',
    year: 2008,
    validity: 'one CEPT country; others enact it differently',
    limit: ({ frequency, power }) => enLimit(frequency, power),
  },
  own: {
    title: 'Own figure',
    below: 'PEP',
    source: 'typed by the user',
    year: 0,
    validity: 'this rig',
    limit: ({ own }) => own,
  },
} as const satisfies Record<string, RuleSet>;

export type RuleSetKey = keyof typeof ruleSets;

/** Before 2003, below 30 MHz: at most 50 mW and 40 dB; under 5 W mean power 30 dB is enough. */
function usOld(power: number): number {
  return power < 5 ? 30 : Math.max(40, 10 * Math.log10(power / 50e-3));
}

/** 30 to 225 MHz: 60 dB; up to 25 W at most 25 µW and 40 dB, but never needing less than 10 µW. */
function usAbove30(power: number): number {
  if (power > 25) return 60;
  const must = Math.max(40, 10 * Math.log10(power / 25e-6));
  return Math.min(must, 10 * Math.log10(power / 10e-6));
}
