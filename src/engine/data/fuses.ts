/**
 * Rated currents of fuses, A: the steps of IEC 60127 up to 10 A (the R10 series), then the usual
 * blade fuses of ISO 8820-3.
 */
export const fuseRatings: readonly number[] = [
  0.063, 0.08, 0.1, 0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15,
  4, 5, 6.3, 8, 10, 15, 20, 25, 30,
];

/** The next rating that carries a current with a factor of room; null beyond the list. */
export const fuseFor = (current: number, room: number): number | null =>
  fuseRatings.find((rating) => rating >= current * room) ?? null;
