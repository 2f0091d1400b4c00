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

/** What lies nearest to a frequency without covering it: an edge of a band, Hz. */
export function nearestBroadcast(frequency: number): BroadcastBand & { readonly edge: number } {
  const edges = broadcastBands.flatMap((band) => [
    { ...band, edge: band.from },
    { ...band, edge: band.to },
  ]);
  return edges.reduce((a, b) =>
    Math.abs(b.edge - frequency) < Math.abs(a.edge - frequency) ? b : a,
  );
}
