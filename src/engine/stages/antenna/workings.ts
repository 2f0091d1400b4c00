import { grounds } from '../../data/grounds.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import {
  DIPOLE_GAIN,
  QUARTER_GAIN,
  QUARTER_RESISTANCE,
  SHORT_GAIN,
} from '../../waves/antennaGain.ts';
import { DIPOLE, mutualImpedance } from '../../waves/dipoleImpedance.ts';
import { SPEED_OF_LIGHT } from '../../waves/freeSpaceLoss.ts';
import { reflection } from '../../waves/reflection.ts';
import {
  levelGainFormula,
  reflectionSteps,
  uprightGainFormula,
} from '../../waves/reflectionFormula.ts';
import type { antennaFields } from './fields.ts';
import { ALONG_FROM_LEVEL } from './work.ts';

type Where = Record<string, Bound>;

const c: Bound = { value: SPEED_OF_LIGHT, unit: 'm/s', says: 'speed of light, exact' };
const kindOf = (look: Look) => look('antenna.kind') as string;
const isLevel = (look: Look) => kindOf(look) === 'dipole' || kindOf(look) === 'endFed';
const groundOf = (look: Look) => grounds[look('antenna.ground') as keyof typeof grounds];

/** Directivity as a bound number. */
const most = (look: Look): Bound =>
  isLevel(look)
    ? { value: DIPOLE_GAIN, unit: '1', says: 'directivity of a half-wave dipole' }
    : kindOf(look) === 'vertical'
      ? { value: QUARTER_GAIN, unit: '1', says: 'of a quarter-wave vertical over perfect ground' }
      : { value: SHORT_GAIN, unit: '1', says: 'of a short vertical over perfect ground' };

const textbook = 'closed form; Balanis, Antenna Theory';

/** Gain at the elevation that `psi` stands for. */
function gainAt(look: Look, psi: Bound): Working {
  const common: Where = { psi, f_0: 'plan.nominal', c };
  if (isLevel(look)) {
    return {
      says: 'The dipole’s own pattern, its ray and the ground’s together, and how the ground changes its resistance.',
      formula: levelGainFormula,
      where: {
        ...common,
        ...reflectionSteps(groundOf(look), 'horizontal'),
        h_a: 'antenna.height',
        alpha_b: 'antenna.off',
        G_d: most(look),
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
      source: `${textbook}; Fresnel’s equations`,
      assumes: 'Flat ground; off broadside the ground is taken as for the level part of the wave.',
    };
  }
  return {
    says: 'The vertical’s pattern over perfect ground, its image weakened as this ground reflects.',
    formula: uprightGainFormula[kindOf(look) === 'vertical' ? 'quarter' : 'short'],
    where: {
      ...common,
      ...reflectionSteps(groundOf(look), 'vertical'),
      G_m: most(look),
      eta: 'antenna.efficiency',
    },
    source: `${textbook}; Fresnel’s equations`,
    assumes: 'Flat ground; the ground wave is not in it.',
  };
}

export const antennaWorkings: StageWorkings<typeof antennaFields> = {
  over: {
    says: 'Height over the wavelength.',
    formula: 'h_a * f_0 / c',
    where: { h_a: 'antenna.height', f_0: 'plan.nominal', c },
    source: 'definition',
  },
  radiation: (look) => {
    if (isLevel(look)) {
      const frequency = look('plan.nominal') as number;
      const height = look('antenna.height') as number;
      const { r, x } = mutualImpedance((2 * height * frequency) / SPEED_OF_LIGHT);
      const { size, turn } = reflection(Math.PI / 2, frequency, groundOf(look), 'horizontal');
      return {
        says: 'The dipole’s own, and what its image couples in, weakened and turned as the ground reflects a ray straight down.',
        formula: 'R_d + rho_90 * (R_m * cos(tau_90) - X_m * sin(tau_90))',
        where: {
          R_d: { value: DIPOLE.r, unit: 'Ω', says: 'resistance of the dipole without ground' },
          rho_90: { value: size, unit: '1', says: 'reflection of a ray straight down' },
          tau_90: { value: turn, unit: '°', says: 'its turn' },
          R_m: { value: r, unit: 'Ω', says: 'mutual resistance of dipole and image' },
          X_m: { value: x, unit: 'Ω', says: 'mutual reactance' },
        },
        source: 'Carter, Proc. IRE 20, 1932; reflection-coefficient method',
        assumes: 'From a tenth of a wavelength up.',
      };
    }
    if (kindOf(look) === 'vertical') {
      return {
        says: 'Half of a dipole’s.',
        formula: 'R_q',
        where: {
          R_q: { value: QUARTER_RESISTANCE, unit: 'Ω', says: 'half of the half-wave dipole’s' },
        },
        source: textbook,
      };
    }
    return {
      says: 'It falls with the square of the length.',
      formula: '40 * R_1 * (pi * l_w * f_0 / c)^2',
      where: {
        R_1: { value: 1, unit: 'Ω', says: 'one ohm' },
        l_w: 'antenna.length',
        f_0: 'plan.nominal',
        c,
      },
      source: 'closed form for a triangular current',
    };
  },
  losses: (look) =>
    kindOf(look) === 'vertical'
      ? {
          says: 'The ground’s.',
          formula: 'R_g',
          where: { R_g: 'antenna.groundLoss' },
          source: 'as typed',
        }
      : {
          says: 'The ground’s and the coil’s: the coil has to tune out the whip’s reactance.',
          formula:
            'R_g + abs(60 * R_1 * (log(4 * l_w / d_w) - 1) / tan(2 * pi * l_w * f_0 / c)) / Q_w',
          where: {
            R_g: 'antenna.groundLoss',
            R_1: { value: 1, unit: 'Ω', says: 'one ohm' },
            l_w: 'antenna.length',
            d_w: 'antenna.wire',
            Q_w: 'antenna.coilQ',
            f_0: 'plan.nominal',
            c,
          },
          source: 'transmission-line view of a thin monopole (Schelkunoff), from memory',
        },
  efficiency: (look) => ({
    says: 'What is radiated over all that the current passes, less what tuner or transformer takes.',
    formula: `${isLevel(look) ? '1' : 'R_rad / (R_rad + R_loss)'} * 10^(-A_m / 10)`,
    where: {
      ...(isLevel(look) ? {} : { R_rad: 'antenna.radiation', R_loss: 'antenna.losses' }),
      A_m: 'antenna.matching',
    },
    source: 'definition',
  }),
  along: (look) => ({
    says: isLevel(look)
      ? 'A level wire has no business with the ground wave: what is left of it comes from its sag and feeder.'
      : 'Over perfect ground, along it.',
    formula: `10 * log10(G_m * eta)${isLevel(look) ? ' - A_x' : ''}`,
    where: {
      G_m: most(look),
      eta: 'antenna.efficiency',
      ...(isLevel(look)
        ? { A_x: { value: ALONG_FROM_LEVEL, unit: 'dB', says: 'rule of thumb' } as const }
        : {}),
    },
    source: isLevel(look) ? 'common practice, no source' : textbook,
  }),
  free: (look) => ({
    says: 'Without any ground.',
    formula: `10 * log10(G_m * eta)${isLevel(look) ? '' : ' - 10 * log10(2)'}`,
    where: { G_m: most(look), eta: 'antenna.efficiency' },
    source: textbook,
  }),
  best: (look) => ({
    ...gainAt(look, 'antenna.bestAt'),
    says: 'The greatest of the curve.',
  }),
  bestAt: (look) => ({
    says: 'Where the curve is highest, to the degree.',
    formula: 'beta_h',
    where: {
      beta_h: {
        value: look('antenna.bestAt') as number,
        unit: '°',
        says: 'highest of ninety elevations',
      },
    },
    source: 'the curve of gain over elevation',
  }),
  nature: {
    says: 'In words.',
    rule: 'By the gain at 60° and at 15°: more than 6 dB apart or not.',
    where: {},
    source: 'this program’s own scale',
  },
  good: {
    says: 'By the gain at 60° against that at 15°.',
    rule: 'More than 6 dB one way: near or far; else both.',
    where: {},
    source: 'this program’s own scale',
  },
  'pattern.gain': (look) => gainAt(look, 'point.elevation'),
};
