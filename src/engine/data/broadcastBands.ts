import type { Band } from './bands.ts';

/**
 * Long, medium and short wave bands of broadcasting as they are used in most of the world; what
 * holds where differs by region. Source: ITU Radio Regulations, Article 5 (from memory).
 */
export const broadcastBands: readonly Band[] = [
  { name: 'long wave', low: 148.5e3, high: 283.5e3 },
  { name: 'medium wave', low: 526.5e3, high: 1606.5e3 },
  { name: '75 m', low: 3.9e6, high: 4e6 },
  { name: '60 m', low: 4.75e6, high: 5.06e6 },
  { name: '49 m', low: 5.9e6, high: 6.2e6 },
  { name: '41 m', low: 7.2e6, high: 7.45e6 },
  { name: '31 m', low: 9.4e6, high: 9.9e6 },
  { name: '25 m', low: 11.6e6, high: 12.1e6 },
  { name: '22 m', low: 13.57e6, high: 13.87e6 },
  { name: '19 m', low: 15.1e6, high: 15.8e6 },
  { name: '16 m', low: 17.48e6, high: 17.9e6 },
  { name: '15 m', low: 18.9e6, high: 19.02e6 },
  { name: '13 m', low: 21.45e6, high: 21.85e6 },
  { name: '11 m', low: 25.67e6, high: 26.1e6 },
];

/** So far within its band a station is looked for, and so far from the own frequency, Hz. */
const WITHIN = 25e3;

/** The nearest place in a broadcasting band that is not the own channel, Hz. */
export function nearestBroadcast(frequency: number): Band & { readonly place: number } {
  const places = broadcastBands.flatMap((band) => {
    const within = Math.min(band.high - WITHIN, Math.max(band.low + WITHIN, frequency));
    // In the middle of a band: a station beside the own channel.
    const place = Math.abs(within - frequency) < WITHIN ? frequency + WITHIN : within;
    return [{ ...band, place }];
  });
  return places.reduce((a, b) =>
    Math.abs(b.place - frequency) < Math.abs(a.place - frequency) ? b : a,
  );
}
