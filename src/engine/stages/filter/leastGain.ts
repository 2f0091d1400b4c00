/** What comes through at least of anything that may be called a filter, dB. */
export const LEAST_GAIN = -30;
