/** S9 below 30 MHz, dBm, and decibels a unit. Source: IARU Region 1 Technical Recommendation R.1. */
export const S9 = -73;
export const DB_PER_UNIT = 6;

/** S1 to S9 and S9+10 to + 40 dB, with their levels in dBm. */
export const sReports: readonly { readonly report: string; readonly level: number }[] = [
  ...[1, 2, 3, 4, 5, 6, 7, 8, 9].map((n) => ({
    report: `S${n}`,
    level: S9 + DB_PER_UNIT * (n - 9),
  })),
  ...[10, 20, 30, 40].map((db) => ({ report: `S9+${db} dB`, level: S9 + db })),
];
