import type { StageWorkings, Working } from '../../fields/workings.ts';
import { constants } from './constants.ts';
import type { pathFields } from './fields.ts';
import { gainsOver } from './gainWorkings.ts';
import { groundLossOver } from './groundWorkings.ts';
import { lineLoss } from './lineWorkings.ts';

const { earth, light } = constants;

const skyLoss: Working = {
  says: 'Spreading, absorption and ground reflections over this distance.',
  formula:
    '20 * log10(4 * pi * L * f_0 / c) + n * 677.2 * I * M_D / (((f_0 + f_H) / f_ref)^1.98 + 10.2) + A_touch * (n - 1)',
  where: {
    D: 'point.distance',
    n: 'point.hops',
    R_E: earth,
    h_v: 'path.mirror',
    h_D: constants.absorbing,
    I: 'path.index',
    f_0: 'plan.nominal',
    f_H: 'path.gyro',
    f_ref: constants.megahertz,
    c: light,
    A_touch: constants.touchdown,
    theta: {
      formula: 'D / n / (2 * R_E)',
      unit: '°',
      says: 'half the angle at the Earth’s centre of one hop',
    },
    l_up: { formula: '(R_E + h_v) * cos(theta) - R_E', unit: 'm', says: 'rise over the horizon' },
    l_out: { formula: '(R_E + h_v) * sin(theta)', unit: 'm', says: 'way along the horizon' },
    L: { formula: 'n * 2 * sqrt(l_up^2 + l_out^2)', unit: 'm', says: 'length of the ray' },
    beta: { formula: 'atan(l_up / l_out)', unit: '°', says: 'elevation' },
    M_D: {
      formula: '1 / sqrt(1 - (R_E * cos(beta) / (R_E + h_D))^2)',
      unit: '1',
      says: 'sec i in the D region',
    },
  },
  source: 'ITU-R P.525; CCIR Report 252-2 (second-hand); ITU-R P.533 (second-hand)',
};

/** Workings of the curve over distance. */
export const reachWorkings = {
  'reach.hops': (look) =>
    look('path.route') === 'skyWave'
      ? {
          says: 'As few as the lowest useful elevation allows.',
          formula: 'max(1, ceil(D / d_max))',
          where: { D: 'point.distance', d_max: 'path.usableHop' },
          source: 'closed form',
        }
      : {
          says: 'No hop in line of sight.',
          formula: 'n_0',
          where: { n_0: { value: 0, unit: '1', says: 'no hop' } },
          source: 'definition',
        },
  'reach.loss': (look) => {
    const route = look('path.route');
    if (route === 'skyWave') return skyLoss;
    return route === 'groundWave' ? groundLossOver(look) : lineLoss(look);
  },
  'reach.gains': (look) => gainsOver(look),
  'reach.received': (look) => ({
    says: 'Power and both antennas, less both feed lines and the path.',
    formula: '10 * log10(P / P_ref) - A_t - A_r + G_b - A',
    where: {
      P: look('output.pepAntenna') === null ? 'plan.pep' : 'output.pepAntenna',
      P_ref: constants.milliwatt,
      A_t: 'path.lineHere',
      A_r: 'path.lineThere',
      G_b: 'point.gains',
      A: 'point.loss',
    },
    source: 'link budget, definition',
  }),
  'reach.sUnits': {
    says: 'Six decibels a unit, counted from S9.',
    formula: 'min(9, max(0, 9 + (L_r - L_S9) / a_S))',
    where: { L_r: 'point.received', L_S9: constants.s9, a_S: constants.sUnit },
    source: 'IARU Region 1 Technical Recommendation R.1',
  },
  'reach.snr': {
    says: 'Signal less the noise there, which is the same from wherever the signal comes.',
    formula: 'L_r - L_n',
    where: { L_r: 'point.received', L_n: 'path.noise' },
    source: 'definition',
  },
} satisfies Partial<StageWorkings<typeof pathFields>>;
