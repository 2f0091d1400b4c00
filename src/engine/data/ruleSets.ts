import type { Emission } from './emission.ts';
import { enLimit } from './enLimit.ts';
import { ownLimit } from './ownLimit.ts';

export type { Emission } from './emission.ts';

/** A rule on unwanted emissions, as it was read, with where it stands. */
export interface RuleSet {
  readonly title: string;
  /** What the decibels count from. */
  readonly below: 'mean power' | 'PEP';
  readonly source: string;
  readonly year: number;
  /** Where and for whom the rule is taken to hold. */
  readonly validity: string;
  /** Least attenuation, dB below the wanted signal; 0 where no figure is asked. */
  readonly limit: (emission: Emission) => number;
}

/**
 * Rule sets for harmonics of an amateur transmitter. They are planning figures: the text in force,
 * a measurement, and the operator, who answers for the station, decide.
 *
 * Each hangs on the frequency that the transmitter works on, not on where a harmonic falls: what is
 * asked of transmitters for 30 to 225 MHz doesn't hold for a shortwave rig's harmonics there.
 * “Mean power” and “PEP” are the same with one steady tone at full drive, and so every rule is held
 * against that tone: speech has less mean power, but its crests make the same harmonics.
 */
export const ruleSets = {
  us: {
    title: 'United States',
    below: 'mean power',
    source: 'US 47 CFR 97.307(d), (e)',
    year: 2003,
    validity: 'amateur transmitters installed after 1 January 2003',
    limit: ({ fundamental, power }) => (fundamental < 30e6 ? 43 : usFrom30(fundamental, power)),
  },
  usBefore2003: {
    title: 'United States, installed before 2003',
    below: 'mean power',
    source: 'US 47 CFR 97.307(d), (e)',
    year: 2003,
    validity: 'amateur transmitters installed on or before 1 January 2003',
    limit: ({ fundamental, power }) =>
      fundamental < 30e6 ? usOld(power) : usFrom30(fundamental, power),
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
    validity: 'one CEPT country; others enact it differently: see your own',
    limit: ({ frequency, power }) => enLimit(frequency, power),
  },
  own: {
    title: 'Own figures',
    below: 'PEP',
    source: 'typed by the user',
    year: 0,
    validity: 'this rig',
    limit: ownLimit,
  },
} as const satisfies Record<string, RuleSet>;

export type RuleSetKey = keyof typeof ruleSets;

/** Where a rule was read, from when, and for whom it is taken to hold. */
export function ruleWords(key: RuleSetKey): string {
  const { title, source, year, validity, below }: RuleSet = ruleSets[key];
  const named = source.startsWith(title) ? source : `${title}: ${source}`;
  const since = year === 0 || source.includes(String(year)) ? '' : `, ${year}`;
  return `${named}${since}. Decibels below ${below}, with one steady tone at full drive. Taken to hold for ${validity}.`;
}

/** Before 2003, below 30 MHz: at most 50 mW and 40 dB; under 5 W mean power 30 dB is enough. */
function usOld(power: number): number {
  return power < 5 ? 30 : Math.max(40, 10 * Math.log10(power / 50e-3));
}

/**
 * From 30 to 225 MHz: 60 dB; up to 25 W at most 25 µW and 40 dB, but never needing less than 10 µW.
 * Higher up the text gives no figure.
 */
function usFrom30(fundamental: number, power: number): number {
  if (fundamental > 225e6) return 0;
  if (power > 25) return 60;
  const must = Math.max(40, 10 * Math.log10(power / 25e-6));
  return Math.min(must, 10 * Math.log10(power / 10e-6));
}

/**
 * Least suppression of a single-sideband transmitter's carrier, dB below peak envelope power. A
 * yardstick: the text is for maritime stations, no rule asks it of amateurs by figure.
 */
export const carrierYardstick = {
  below: 40,
  source: 'US 47 CFR 80.207 (maritime), as a yardstick',
} as const;
