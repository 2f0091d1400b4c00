/**
 * Mean envelope of speech over its peak, from its mean power over the peak's (fraction): that of
 * a Rayleigh-distributed envelope, √(πd)/2.
 */
export const speechEnvelope = (mean: number): number => Math.sqrt(Math.PI * mean) / 2;
