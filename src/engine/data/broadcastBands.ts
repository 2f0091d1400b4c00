/** A band in which broadcasting stations work with hundreds of kilowatts, Hz. */
export interface BroadcastBand {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

/**
 * Long, medium and short wave bands of broadcasting as they are used in most of the world; what
 * holds where differs by region. Source: ITU Radio Regulations, Article 5 (from memory).
 */
export const broadcastBands: readonly BroadcastBand[] = [
  { name: 'long wave', from: 148.5e3, to: 283.5e3 },
  { name: 'medium wave', from: 526.5e3, to: 1606.5e3 },
  { name: '75 m', from: 3.9e6, to: 4e6 },
  { name: '60 m', from: 4.75e6, to: 5.06e6 },
  { name: '49 m', from: 5.9e6, to: 6.2e6 },
  { name: '41 m', from: 7.2e6, to: 7.45e6 },
  { name: '31 m', from: 9.4e6, to: 9.9e6 },
  { name: '25 m', from: 11.6e6, to: 12.1e6 },
  { name: '22 m', from: 13.57e6, to: 13.87e6 },
  { name: '19 m', from: 15.1e6, to: 15.8e6 },
  { name: '16 m', from: 17.48e6, to: 17.9e6 },
  { name: '15 m', from: 18.9e6, to: 19.02e6 },
  { name: '13 m', from: 21.45e6, to: 21.85e6 },
  { name: '11 m', from: 25.67e6, to: 26.1e6 },
];

/** So far within its band a station is looked for, and so far from the own frequency, Hz. */
const WITHIN = 25e3;

/** The nearest place in a broadcasting band that is not the own channel, Hz. */
export function nearestBroadcast(frequency: number): BroadcastBand & { readonly place: number } {
  const places = broadcastBands.flatMap((band) => {
    const within = Math.min(band.to - WITHIN, Math.max(band.from + WITHIN, frequency));
    // In the middle of a band: a station beside the own channel.
    const place = Math.abs(within - frequency) < WITHIN ? frequency + WITHIN : within;
    return [{ ...band, place }];
  });
  return places.reduce((a, b) =>
    Math.abs(b.place - frequency) < Math.abs(a.place - frequency) ? b : a,
  );
}
