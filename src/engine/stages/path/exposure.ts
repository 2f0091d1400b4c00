import { FIELD_FACTOR } from './fieldStrength.ts';

const MHZ = 1e6;

/** Limit on the electric field, V/m rms, as a function of frequency in Hz. */
export interface ExposureLimit {
  readonly name: string;
  readonly source: string;
  readonly field: (frequency: number) => number;
}

/**
 * Limits for people near the antenna, as planning figures for 1.6–30 MHz.
 * The FCC's public limit is flat below 1.34 MHz and its occupational one below 3 MHz.
 */
export const exposureLimits = {
  public: {
    name: 'general public, US',
    source: '47 CFR 1.1310, table 1(b): 824/f V/m, 1.34–30 MHz, f in MHz',
    field: (frequency) => 824 / (frequency / MHZ),
  },
  occupational: {
    name: 'occupational, US',
    source: '47 CFR 1.1310, table 1(a): 614 V/m to 3 MHz, 1842/f V/m to 30 MHz, f in MHz',
    field: (frequency) => Math.min(614, 1842 / (frequency / MHZ)),
  },
  icnirp: {
    name: 'general public, ICNIRP',
    source: 'ICNIRP 2020, 300/f^0.7 V/m, whole body, 30 min, f in MHz (second-hand)',
    field: (frequency) => 300 / (frequency / MHZ) ** 0.7,
  },
} as const satisfies Readonly<Record<string, ExposureLimit>>;

/**
 * How far from the antenna the free-space field falls to a limit, m.
 *
 * A far-field figure: within about λ/2π of the antenna it does not hold and the field can be far
 * stronger; a reflecting ground can raise the field by up to 2 (1.6 in FCC OET Bulletin 65).
 * Source: E = √(30 EIRP)/R solved for R.
 *
 * @param eirp mean over the averaging time, in the direction of greatest gain, W
 * @param limit V/m rms
 */
export function exposureDistance(eirp: number, limit: number): number {
  return Math.sqrt(FIELD_FACTOR * eirp) / limit;
}
