/** Grades of intelligibility, from none upward. */
export type SpeechGrade = 'none' | 'justUsable' | 'marginal' | 'good';

/** Required signal-to-noise density for one kind of channel, dB·Hz, PEP against noise in 1 Hz. */
export interface RequiredDensity {
  readonly justUsable: number;
  readonly marginal: number;
  readonly good: number;
}

/**
 * What single-sideband speech needs.
 * Source: ITU-R F.339-8, table for class J3E: audio S/N 6, 15, 33 dB; the peak envelope power is
 * set against the mean noise power in 1 Hz (second-hand).
 */
export const requiredDensity: Readonly<Record<'stable' | 'fading', RequiredDensity>> = {
  stable: { justUsable: 47, marginal: 56, good: 64 },
  fading: { justUsable: 48, marginal: 61, good: 72 },
};

/**
 * Whether speech gets through.
 *
 * @param density signal-to-noise density, dB·Hz
 * @param required row of `requiredDensity` for the channel
 */
export function speechGrade(density: number, required: RequiredDensity): SpeechGrade {
  if (density >= required.good) return 'good';
  if (density >= required.marginal) return 'marginal';
  return density >= required.justUsable ? 'justUsable' : 'none';
}
