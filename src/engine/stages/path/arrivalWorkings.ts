import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { constants } from './constants.ts';
import type { pathFields } from './fields.ts';
import { hereGain } from './gainWorkings.ts';
import { lineUsed } from './noiseWorkings.ts';
import { requiredDensity, type SpeechGrade } from './speechGrade.ts';

const report = 'IARU Region 1 Technical Recommendation R.1';
const grading = 'ITU-R F.339-8, class J3E (second-hand)';
const { s9, sUnit } = constants;

/** Workings from the power radiated to the grade of speech. */
export const arrivalWorkings = {
  eirp: (look) => ({
    says: 'Power at the antenna terminal of the rig, less the feed line, times the antenna’s gain.',
    formula: 'P * 10^((G_t - A_t) / 10)',
    where: {
      P: look('output.pepAntenna') === null ? 'plan.pep' : 'output.pepAntenna',
      G_t: 'path.gainHere',
      A_t: 'path.lineHere',
    },
    source: 'definition',
  }),
  lineHere: lineUsed('feed.loss'),
  lineThere: lineUsed('feed.farLoss'),
  atAntenna: (look) => ({
    says: 'The rig’s power less what the line takes.',
    formula: 'P * 10^(-A_t / 10)',
    where: {
      P: look('output.pepAntenna') === null ? 'plan.pep' : 'output.pepAntenna',
      A_t: 'path.lineHere',
    },
    source: 'definition',
    assumes: 'The rig gives its full power into the line, by a tuner where the SWR asks for one.',
  }),
  gainHere: (look) => hereGain(look),
  gainThere: (look) =>
    look('antenna.far') === 'same'
      ? {
          says: 'The same antenna, and the ray comes down as it went up.',
          formula: 'G_h',
          where: { G_h: 'path.gainHere' },
          source: 'reciprocity',
        }
      : {
          says: 'As typed.',
          formula: 'G_r',
          where: { G_r: 'path.farGain' },
          source: 'as typed',
        },
  length: (look) =>
    look('path.route') === 'skyWave'
      ? {
          says: 'Up to the layer and down again, so many times.',
          formula:
            'n * 2 * sqrt(((R_E + h_v) * cos(theta) - R_E)^2 + ((R_E + h_v) * sin(theta))^2)',
          where: {
            n: 'path.hopCount',
            R_E: constants.earth,
            h_v: 'path.mirror',
            d: 'path.hopDistance',
            theta: {
              formula: 'd / (2 * R_E)',
              unit: '°',
              says: 'half the angle at the Earth’s centre',
            },
          },
          source: 'closed form: straight rays, spherical Earth',
        }
      : look('path.route') === 'groundWave'
        ? {
            says: 'Along the ground.',
            formula: 'D',
            where: { D: 'path.distance' },
            source: 'as typed',
          }
        : {
            says: 'Straight from one antenna to the other.',
            formula: 'sqrt(D^2 + (h_t - h_r)^2)',
            where: { D: 'path.distance', h_t: 'path.height', h_r: 'path.farHeight' },
            source: 'closed form',
          },
  spreading: {
    says: 'The wave spreads over a sphere; the receiving antenna’s area shrinks with the wavelength.',
    formula: '20 * log10(4 * pi * L * f_0 / c)',
    where: { L: 'path.length', f_0: 'plan.nominal', c: constants.light },
    source: 'ITU-R P.525',
  },
  loss,
  field: (look) => {
    const along = look('path.route') === 'groundWave';
    return {
      says: along
        ? 'The field over perfect flat ground at that distance, less what real ground takes.'
        : 'The free-space field at that distance, less everything lost besides spreading.',
      formula: `20 * log10(sqrt(Z_30 * P_E) / L / E_ref) - ${along ? 'A_s' : '(A - A_0)'}`,
      where: {
        Z_30: constants.thirty,
        P_E: 'path.eirp',
        L: 'path.length',
        E_ref: constants.microvolt,
        ...(along ? { A_s: 'path.surface' } : { A: 'path.loss', A_0: 'path.spreading' }),
      },
      source: 'ITU-R P.525',
    };
  },
  received: {
    says: 'What is radiated, less the path, plus the other antenna, less its feed line.',
    formula: '10 * log10(P_E / P_ref) - A + G_r - A_r',
    where: {
      P_E: 'path.eirp',
      P_ref: constants.milliwatt,
      A: 'path.loss',
      G_r: 'path.gainThere',
      A_r: 'path.lineThere',
    },
    source: 'link budget, definition',
  },
  sUnits: {
    says: 'Six decibels a unit, counted from S9.',
    formula: 'min(9, max(0, 9 + (L_r - L_S9) / a_S))',
    where: { L_r: 'path.received', L_S9: s9, a_S: sUnit },
    source: report,
  },
  overS9: {
    says: 'What is left above S9.',
    formula: 'max(0, L_r - L_S9)',
    where: { L_r: 'path.received', L_S9: s9 },
    source: report,
  },
  report: {
    says: 'As it is spoken.',
    rule: 'The nearest whole S-unit; above S9 the nearest five decibels over it.',
    where: { S: 'path.sUnits', S_over: 'path.overS9' },
    source: report,
  },
  snr: {
    says: 'Signal less noise.',
    formula: 'L_r - L_n',
    where: { L_r: 'path.received', L_n: 'path.noise' },
    source: 'definition',
  },
  snrLow: {
    says: 'The estimate less its spread.',
    formula: 'SNR - Delta',
    where: { SNR: 'path.snr', Delta: 'path.spread' },
    source: 'common practice, no source',
  },
  snrHigh: {
    says: 'The estimate plus its spread.',
    formula: 'SNR + Delta',
    where: { SNR: 'path.snr', Delta: 'path.spread' },
    source: 'common practice, no source',
  },
  cause: {
    says: 'What the estimate cannot know.',
    rule: 'Said by the way the signal goes and by the noise class.',
    where: { Delta: 'path.spread' },
    source: 'ITU-R P.372 deciles (second-hand); otherwise common practice',
  },
  density: {
    says: 'The noise of one hertz is weaker by the bandwidth.',
    formula: 'SNR + 10 * log10(B / B_ref)',
    where: { SNR: 'path.snr', B: 'filter.noiseBandwidth', B_ref: constants.hertz },
    source: 'definition',
  },
  'grades.grade': {
    says: 'The three grades of the standard.',
    rule: 'Audio signal over noise of 6, 15 and 33 dB.',
    where: {},
    source: grading,
  },
  'grades.needed': (look) => ({
    says: 'As the standard has it, for a stable path or a fading one.',
    formula: 'C_need',
    where: { C_need: need(look, look('row.grade') as Exclude<SpeechGrade, 'none'>) },
    source: grading,
  }),
  'grades.spare': {
    says: 'What there is, less what is needed.',
    formula: 'C_N0 - C_need',
    where: { C_N0: 'path.density', C_need: 'row.needed' },
    source: 'definition',
  },
  speech: (look) => graded(look, 'The best grade whose need is met.', 'C_N0'),
  speechLow: (look) => graded(look, 'The same at the low end of the spread.', '(C_N0 - Delta)'),
  speechHigh: (look) => graded(look, 'The same at the high end of the spread.', '(C_N0 + Delta)'),
  verdict: {
    says: 'The three grades in a sentence.',
    rule: 'Likely grade first, then the poor and the good day.',
    where: { low: 'path.speechLow', likely: 'path.speech', high: 'path.speechHigh' },
    source: grading,
  },
} satisfies Partial<StageWorkings<typeof pathFields>>;

function loss(look: Look): Working {
  const route = look('path.route');
  if (route === 'groundWave') {
    return {
      says: 'Spreading, what the ground takes, and the doubling of the field, which antennas over perfect ground have in their gains at both ends.',
      formula: 'A_0 + 20 * log10(2) + A_s',
      where: { A_0: 'path.spreading', A_s: 'path.surface' },
      source: 'ITU-R P.525; P.368 for the method',
      assumes: 'Vertical antennas on the ground, their gains over perfect ground.',
    };
  }
  if (route === 'skyWave') {
    return {
      says: 'Spreading, absorption and ground reflections together.',
      formula: 'A_0 + A_D + A_g',
      where: { A_0: 'path.spreading', A_D: 'path.absorption', A_g: 'path.groundLoss' },
      source: 'sum of losses in decibels',
      assumes: 'Fading, focusing and polarisation loss are part of the spread.',
    };
  }
  if (route === 'twoRay') {
    return {
      says: 'Spreading, less what the ground ray adds.',
      formula: 'A_0 - A_2',
      where: { A_0: 'path.spreading', A_2: 'path.groundRay' },
      source: 'two-ray model',
    };
  }
  return {
    says: 'Nothing but spreading.',
    formula: 'A_0',
    where: { A_0: 'path.spreading' },
    source: 'ITU-R P.525',
  };
}

function need(look: Look, grade: Exclude<SpeechGrade, 'none'>) {
  const channel = look('path.route') === 'skyWave' ? 'fading' : 'stable';
  return {
    value: requiredDensity[channel][grade],
    unit: 'dB',
    says: `needed on a ${channel} path, dB·Hz`,
    source: grading,
  } as const;
}

/** The grade that a density in 1 Hz comes to. */
export function graded(look: Look, says: string, density: string): Working {
  const where: Record<string, Bound> = {
    C_N0: 'path.density',
    ...(density.includes('Delta') ? { Delta: 'path.spread' } : {}),
    C_1: need(look, 'justUsable'),
    C_2: need(look, 'marginal'),
    C_3: need(look, 'good'),
  };
  return {
    says,
    formula: `${density} >= C_3 ? "good" : (${density} >= C_2 ? "marginal" : (${density} >= C_1 ? "justUsable" : "none"))`,
    where,
    source: grading,
  };
}
