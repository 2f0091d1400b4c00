import { grounds } from '../../data/grounds.ts';
import type { Bound, Look, Working } from '../../fields/workings.ts';
import { DIPOLE_GAIN, QUARTER_GAIN, SHORT_GAIN } from '../../waves/antennaGain.ts';
import { DIPOLE } from '../../waves/dipoleImpedance.ts';
import {
  levelGainFormula,
  reflectionSteps,
  uprightGainFormula,
} from '../../waves/reflectionFormula.ts';
import { constants } from './constants.ts';
import { LEAST } from './gains.ts';

type Where = Record<string, Bound>;

const source = 'closed form; Balanis, Antenna Theory; Fresnel’s equations';
const isKnown = (look: Look) => look('antenna.made') === null;
const isLevel = (look: Look) => ['dipole', 'endFed'].includes(look('antenna.kind') as string);

/** Formula and symbols of the antenna's gain; `psi` comes from the caller. */
function gainOf(look: Look): { formula: string; where: Where } {
  const ground = grounds[look('antenna.ground') as keyof typeof grounds];
  if (isLevel(look)) {
    return {
      formula: levelGainFormula,
      where: {
        ...reflectionSteps(ground, 'horizontal'),
        h_a: 'antenna.height',
        alpha_b: 'antenna.off',
        G_d: { value: DIPOLE_GAIN, unit: '1', says: 'directivity of a half-wave dipole' },
        R_d: { value: DIPOLE.r, unit: 'Ω', says: 'resistance of the dipole without ground' },
        R_f: 'antenna.radiation',
        eta: 'antenna.efficiency',
        s_a: {
          formula: 'cos(psi) * sin(alpha_b)',
          unit: '1',
          says: 'cosine of the angle between ray and wire',
        },
        lag: {
          formula: '4 * pi * h_a * sin(psi) * f_0 / c',
          unit: '°',
          says: 'how much later the ground’s ray is',
        },
      },
    };
  }
  const quarter = look('antenna.kind') === 'vertical';
  return {
    formula: uprightGainFormula[quarter ? 'quarter' : 'short'],
    where: {
      ...reflectionSteps(ground, 'vertical'),
      G_m: {
        value: quarter ? QUARTER_GAIN : SHORT_GAIN,
        unit: '1',
        says: 'directivity over perfect ground',
      },
      eta: 'antenna.efficiency',
    },
  };
}

const least: Bound = { value: LEAST, unit: '°', says: 'as low as a gain is worked out' };
const first: Where = { f_0: 'plan.nominal', c: constants.light };

/** Gain of the antenna here towards the ray. */
export function hereGain(look: Look): Working {
  if (isKnown(look)) {
    return { says: 'As typed.', formula: 'G_t', where: { G_t: 'path.gain' }, source: 'as typed' };
  }
  const route = look('path.route');
  if (route !== 'skyWave') {
    return {
      says:
        route === 'groundWave'
          ? 'Along perfect ground: what real ground takes is counted in the path.'
          : 'Without ground: its ray is counted in the path.',
      formula: 'G_x',
      where: { G_x: route === 'groundWave' ? 'antenna.along' : 'antenna.free' },
      source,
    };
  }
  const { formula, where } = gainOf(look);
  return {
    says: 'The antenna’s pattern over this ground, at the elevation of the ray.',
    formula,
    where: {
      ...first,
      beta: 'path.elevation',
      beta_0: least,
      psi: { formula: 'max(beta_0, beta)', unit: '°', says: 'elevation' },
      ...where,
    },
    source,
  };
}

/** Both gains at one point of the curve. */
export function gainsOver(look: Look): Working {
  const same = look('antenna.far') === 'same';
  if (isKnown(look) || look('path.route') !== 'skyWave') {
    return {
      says: 'The same over every distance.',
      formula: 'G_h + G_f',
      where: { G_h: 'path.gainHere', G_f: 'path.gainThere' },
      source: 'sum in decibels',
    };
  }
  const { formula, where } = gainOf(look);
  return {
    says: 'The antenna’s pattern at the elevation of this ray, and the other antenna’s.',
    formula: same ? `2 * (${formula})` : `${formula} + G_r`,
    where: {
      ...first,
      D: 'point.distance',
      n: 'point.hops',
      R_E: constants.earth,
      h_v: 'path.mirror',
      theta: {
        formula: 'D / n / (2 * R_E)',
        unit: '°',
        says: 'half the angle at the Earth’s centre of one hop',
      },
      beta: {
        formula: 'atan(((R_E + h_v) * cos(theta) - R_E) / ((R_E + h_v) * sin(theta)))',
        unit: '°',
        says: 'elevation of the ray',
      },
      beta_0: least,
      psi: { formula: 'max(beta_0, beta)', unit: '°', says: 'elevation reckoned with' },
      ...where,
      ...(same ? {} : { G_r: 'path.farGain' }),
    },
    source,
  };
}
