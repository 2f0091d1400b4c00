import { SPEED_OF_LIGHT } from '../../waves/freeSpaceLoss.ts';
import { ABSORBING_HEIGHT } from './absorption.ts';
import { FIELD_FACTOR } from './fieldStrength.ts';
import { EARTH_RADIUS } from './hop.ts';
import { TOUCHDOWN_LOSS } from './skyRay.ts';
import { S_UNIT, S9_LEVEL } from './sMeter.ts';

/** Constants that the formulas of this stage name, as the workings show them. */
export const constants = {
  earth: {
    value: EARTH_RADIUS,
    unit: 'm',
    says: 'radius of the Earth',
    source: 'ITU-R P.533',
  },
  light: {
    value: SPEED_OF_LIGHT,
    unit: 'm/s',
    says: 'speed of light, exact',
    source: 'SI brochure',
  },
  absorbing: {
    value: ABSORBING_HEIGHT,
    unit: 'm',
    says: 'height at which the slant through the D region is taken',
    source: 'common practice with this formula',
  },
  megahertz: { value: 1e6, unit: 'Hz', says: 'one megahertz' },
  hertz: { value: 1, unit: 'Hz', says: 'one hertz' },
  milliwatt: { value: 1e-3, unit: 'W', says: 'one milliwatt' },
  microvolt: { value: 1e-6, unit: 'V/m', says: 'one microvolt per metre' },
  thirty: {
    value: FIELD_FACTOR,
    unit: 'Ω',
    says: 'impedance of free space over 4π, rounded as is usual',
    source: 'ITU-R P.525',
  },
  touchdown: {
    value: TOUCHDOWN_LOSS,
    unit: 'dB',
    says: 'loss of one reflection at the ground',
    source: 'ITU-R P.533 (second-hand)',
  },
  s9: {
    value: S9_LEVEL,
    unit: 'dBm',
    says: 'level of S9 below 30 MHz',
    source: 'IARU Region 1, recommendation R.1',
  },
  sUnit: { value: S_UNIT, unit: 'dB', says: 'one S-unit', source: 'IARU R.1' },
  noon: { value: 43_200, unit: 'h', says: 'noon' },
  day: { value: 86_400, unit: 'h', says: 'a day' },
} as const;
