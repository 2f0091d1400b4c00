/** One amateur allocation below 30 MHz. */
export interface Band {
  readonly name: string;
  /** Hz, the widest edges of the three ITU regions. */
  readonly low: number;
  readonly high: number;
}

/**
 * Amateur allocations below 30 MHz as a planning figure: the widest edges of the three regions.
 * Source: ITU Radio Regulations, Article 5 (from memory); national rules are narrower.
 */
export const bands: readonly Band[] = [
  { name: '160 m', low: 1.8e6, high: 2.0e6 },
  { name: '80 m', low: 3.5e6, high: 4.0e6 },
  { name: '60 m', low: 5.3515e6, high: 5.3665e6 },
  { name: '40 m', low: 7.0e6, high: 7.3e6 },
  { name: '30 m', low: 10.1e6, high: 10.15e6 },
  { name: '20 m', low: 14.0e6, high: 14.35e6 },
  { name: '17 m', low: 18.068e6, high: 18.168e6 },
  { name: '15 m', low: 21.0e6, high: 21.45e6 },
  { name: '12 m', low: 24.89e6, high: 24.99e6 },
  { name: '10 m', low: 28.0e6, high: 29.7e6 },
];

/** The band that holds a frequency (Hz), or undefined. */
export function bandAt(frequency: number): Band | undefined {
  return bands.find((b) => frequency >= b.low && frequency <= b.high);
}
