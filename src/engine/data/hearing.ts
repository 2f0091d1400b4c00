/**
 * Sound pressure levels that the ear bears day after day, dB: 85 for eight hours, half the time for
 * each 3 dB more. Source: NIOSH 98-126 (from memory).
 */
export const HEARING = { eightHours: 85, quarterHour: 100 } as const;
