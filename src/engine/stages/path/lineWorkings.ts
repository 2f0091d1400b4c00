import { grounds } from '../../data/grounds.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import {
  REFLECTION_SIZE,
  REFLECTION_TURN,
  reflectionSteps,
} from '../../waves/reflectionFormula.ts';
import { constants } from './constants.ts';
import type { pathFields } from './fields.ts';
import { STANDARD_REFRACTION } from './radioHorizon.ts';

/** Workings of the way in line of sight. */
export const lineWorkings = {
  horizon: {
    says: 'Each antenna sees as far as a tangent to the Earth; refraction makes the Earth look a third larger.',
    formula: 'sqrt(2 * k * R_E * h_t) + sqrt(2 * k * R_E * h_r)',
    where: {
      k: {
        value: STANDARD_REFRACTION,
        unit: '1',
        says: 'standard refraction',
        source: 'ITU-R P.310',
      },
      R_E: constants.earth,
      h_t: 'path.height',
      h_r: 'path.farHeight',
    },
    source: 'closed form; ITU-R P.310 for the refraction',
  },
  grazing: {
    says: 'Angle of the reflected ray over flat ground.',
    formula: 'atan((h_t + h_r) / D)',
    where: { h_t: 'path.height', h_r: 'path.farHeight', D: 'path.distance' },
    source: 'closed form',
  },
  mirrorSize: (look) => ({
    says: 'Fresnel’s coefficient for ground with the complex permittivity ε − j·60λσ; its root is p − jq.',
    formula: REFLECTION_SIZE,
    where: mirror(look, 'path.grazing'),
    source: 'Fresnel’s equations; ITU-R P.527',
    assumes: 'Flat, smooth ground.',
  }),
  mirrorTurn: (look) => ({
    says: 'The phase of the same coefficient.',
    formula: REFLECTION_TURN,
    where: mirror(look, 'path.grazing'),
    source: 'Fresnel’s equations; ITU-R P.527',
  }),
  groundRay: {
    says: 'The two rays add as phasors: the second is weaker, turned over and later.',
    formula: '10 * log10(1 + s_2^2 + 2 * s_2 * cos(tau - lag))',
    where: {
      rho: 'path.mirrorSize',
      tau: 'path.mirrorTurn',
      ...twoRays('path.distance'),
    },
    source: 'two-ray model, closed form',
    assumes: 'Flat ground, no surface wave, antennas that see both rays alike.',
  },
} satisfies Partial<StageWorkings<typeof pathFields>>;

/** Symbols of the loss over one distance in line of sight, for the curve. */
export function lineLoss(look: Look): Working {
  const straight: Record<string, Bound> = {
    D: 'point.distance',
    h_t: 'path.height',
    h_r: 'path.farHeight',
    f_0: 'plan.nominal',
    c: constants.light,
    L: { formula: 'sqrt(D^2 + (h_t - h_r)^2)', unit: 'm', says: 'length of the ray' },
  };
  const source = 'ITU-R P.525';
  if (look('path.route') !== 'twoRay') {
    return {
      says: 'Free-space loss over this distance.',
      formula: '20 * log10(4 * pi * L * f_0 / c)',
      where: straight,
      source,
    };
  }
  return {
    says: 'Free-space loss over this distance, less what the ground ray adds.',
    formula: '20 * log10(4 * pi * L * f_0 / c) - 10 * log10(1 + s_2^2 + 2 * s_2 * cos(tau - lag))',
    where: {
      ...straight,
      psi: { formula: 'atan((h_t + h_r) / D)', unit: '°', says: 'grazing angle' },
      ...mirror(look, null),
      rho: {
        formula: REFLECTION_SIZE,
        unit: '1',
        says: 'size of the reflection',
      },
      tau: {
        formula: REFLECTION_TURN,
        unit: '°',
        says: 'turn of the reflection',
      },
      ...twoRays('point.distance'),
    },
    source: `${source}; two-ray model, Fresnel’s equations`,
  };
}

/** Symbols of Fresnel's coefficient; `grazing` is the path of ψ, or null where it is a step. */
function mirror(look: Look, grazing: string | null): Record<string, Bound> {
  const ground = grounds[look('antenna.ground') as keyof typeof grounds];
  const polarisation = look('path.polarisation') === 'vertical' ? 'vertical' : 'horizontal';
  const { rho: _, tau: __, ...steps } = reflectionSteps(ground, polarisation);
  return {
    ...(grazing === null ? {} : { psi: grazing }),
    f_0: 'plan.nominal',
    c: constants.light,
    ...steps,
  };
}

/** Symbols of the second ray; `distance` is the path of D. */
function twoRays(distance: string): Record<string, Bound> {
  return {
    D: distance,
    h_t: 'path.height',
    h_r: 'path.farHeight',
    f_0: 'plan.nominal',
    c: constants.light,
    l_1: { formula: 'sqrt(D^2 + (h_t - h_r)^2)', unit: 'm', says: 'direct ray' },
    l_2: { formula: 'sqrt(D^2 + (h_t + h_r)^2)', unit: 'm', says: 'ray by way of the ground' },
    s_2: { formula: 'rho * l_1 / l_2', unit: '1', says: 'strength of the second ray' },
    lag: {
      formula: '2 * pi * 4 * h_t * h_r / (l_1 + l_2) * f_0 / c',
      unit: '°',
      says: 'phase lag by its longer way',
    },
  };
}
