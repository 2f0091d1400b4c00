import { DIPOLE, mutualImpedance } from './dipoleImpedance.ts';
import { SPEED_OF_LIGHT } from './freeSpaceLoss.ts';
import type { Ground } from './ground.ts';
import { reflection } from './reflection.ts';

/** Directivity of a thin half-wave dipole in free space, plain: 2.15 dBi. */
export const DIPOLE_GAIN = 1.6409;

/** Directivity over perfect ground: a quarter-wave vertical, and a short one. */
export const QUARTER_GAIN = 2 * DIPOLE_GAIN;
export const SHORT_GAIN = 3;

/** Resistance of a quarter-wave vertical over perfect ground, Ω. */
export const QUARTER_RESISTANCE = DIPOLE.r / 2;

/** A wire antenna over ground, as its pattern follows from it. */
export type Antenna =
  | {
      readonly kind: 'horizontal';
      /** Over the ground, m. */
      readonly height: number;
      /** Of the other station's direction from broadside, rad. */
      readonly off: number;
      /** Share of the power that is radiated, plain. */
      readonly efficiency: number;
    }
  | {
      readonly kind: 'quarter' | 'short';
      readonly efficiency: number;
    };

/**
 * Feed resistance of a horizontal half-wave dipole over ground, Ω: its own, and what its image
 * couples in, weakened and turned as a ray straight down is.
 *
 * Good from a tenth of a wavelength up.
 * Source: reflection-coefficient method; see Balanis, Antenna Theory, 4.8 (from memory).
 */
export function dipoleResistance(height: number, frequency: number, ground: Ground): number {
  const { r, x } = mutualImpedance((2 * height * frequency) / SPEED_OF_LIGHT);
  const { size, turn } = reflection(Math.PI / 2, frequency, ground, 'horizontal');
  return DIPOLE.r + size * (r * Math.cos(turn) - x * Math.sin(turn));
}

/**
 * Gain of an antenna over ground towards an elevation, dBi.
 *
 * Horizontal: the dipole's own pattern times |1 + ρ_h·e^(−j2kh sin ψ)|², over how much the ground
 * changes its feed resistance. Vertical on the ground: its pattern over perfect ground times
 * |(1 + ρ_v)/2|². Flat ground; the ground wave is not in it.
 *
 * @param elevation rad, above 0 up to π/2
 */
export function antennaGain(
  antenna: Antenna,
  elevation: number,
  frequency: number,
  ground: Ground,
): number {
  if (antenna.kind === 'horizontal') {
    const { height, off, efficiency } = antenna;
    const mirror = reflection(elevation, frequency, ground, 'horizontal');
    const lag = (4 * Math.PI * height * Math.sin(elevation) * frequency) / SPEED_OF_LIGHT;
    const both = 1 + mirror.size ** 2 + 2 * mirror.size * Math.cos(mirror.turn - lag);
    // Angle between the ray and the wire.
    const along = Math.cos(elevation) * Math.sin(off);
    const across = Math.sqrt(Math.max(1e-12, 1 - along * along));
    const shape = (Math.cos((Math.PI / 2) * along) / across) ** 2;
    const share = DIPOLE.r / dipoleResistance(height, frequency, ground);
    return 10 * Math.log10(DIPOLE_GAIN * shape * both * share * efficiency);
  }
  const mirror = reflection(elevation, frequency, ground, 'vertical');
  const both = (1 + mirror.size ** 2 + 2 * mirror.size * Math.cos(mirror.turn)) / 4;
  const cos = Math.cos(elevation);
  const quarter = antenna.kind === 'quarter';
  const shape = quarter
    ? (Math.cos((Math.PI / 2) * Math.sin(elevation)) / Math.max(1e-9, cos)) ** 2
    : cos * cos;
  const most = quarter ? QUARTER_GAIN : SHORT_GAIN;
  // Straight up a vertical radiates nothing; the figure stays finite.
  return 10 * Math.log10(Math.max(1e-9, most * shape * both) * antenna.efficiency);
}

/**
 * Radiation resistance of a short vertical over ground without a top load, Ω: 40π²(l/λ)².
 *
 * @param length m, up to an eighth of a wavelength
 * Source: closed form for a triangular current.
 */
export function shortResistance(length: number, frequency: number): number {
  return 40 * (Math.PI * ((length * frequency) / SPEED_OF_LIGHT)) ** 2;
}
