import type { NoiseClassKey } from '../../data/noiseClasses.ts';
import type { Look, StageWorkings, Working } from '../../fields/workings.ts';
import { TOO_GOOD, TOO_POOR, USUAL } from './dcSanity.ts';
import type { benchFields } from './fields.ts';
import { spreadOf } from './noiseHeard.ts';
import { pointWorkings } from './pointWorkings.ts';
import { TIMES_ONE_BANDWIDTH } from './scopeError.ts';

const practice = 'common practice, no source';

export const benchWorkings: StageWorkings<typeof benchFields> = {
  ...pointWorkings('supplies'),
  ...pointWorkings('currents'),
  ...pointWorkings('frequencies'),
  ...pointWorkings('widths'),
  ...pointWorkings('volts'),
  ...pointWorkings('powers'),
  ...pointWorkings('levels'),
  ...pointWorkings('harmonics'),
  overall: {
    says: 'The worst of all verdicts.',
    rule: 'Fails if one fails, close if one is close, else holds.',
    where: {},
    source: 'definition',
  },
  summary: {
    says: 'Counted over all test points.',
    rule: 'Each point counts once, with the worse of its two verdicts.',
    where: {},
    source: 'definition',
  },
  directPower: (look) => ({
    says: 'Voltage times current, as read where it was read.',
    formula: 'V * I_in',
    where: {
      V: look('bench.supplyRead') === null ? 'plan.supply' : 'bench.supplyRead',
      I_in: look('bench.finalRead') === null ? 'bench.transmitRead' : 'bench.finalRead',
    },
    source: 'definition',
  }),
  dcRatio: {
    says: 'Radio power over direct power.',
    formula: 'P_read / P_in',
    where: { P_read: 'bench.outputRead', P_in: 'bench.directPower' },
    source: 'definition',
  },
  dcCeiling: (look) => ({
    says: 'Class B turns π/4 into radio power, of what saturation leaves of the supply.',
    formula: 'pi / 4 * ((V - V_sat) / V)',
    where: {
      V: look('bench.supplyRead') === null ? 'plan.supply' : 'bench.supplyRead',
      V_sat: 'transmit.saturation',
    },
    source: 'closed form of class B',
  }),
  dcVerdict: {
    says: 'Where built stages lie it holds; what cannot be, or points to a fault, fails.',
    formula:
      'eta > eta_top or eta < eta_low ? "fails" : (eta >= eta_1 and eta <= eta_2 ? "holds" : "close")',
    where: {
      eta: 'bench.dcRatio',
      eta_top: { value: TOO_GOOD, unit: '%', says: 'more is a wrong reading' },
      eta_low: { value: TOO_POOR, unit: '%', says: 'less is mismatch, loss or oscillation' },
      eta_1: { value: USUAL[0], unit: '%', says: 'built stages, from' },
      eta_2: { value: USUAL[1], unit: '%', says: 'built stages, to' },
    },
    source: practice,
  },
  dcMeans: {
    says: 'By the side on which the ratio lies.',
    rule: 'Over 70 % the reading is wrong; under 30 % something is.',
    where: { eta: 'bench.dcRatio' },
    source: practice,
  },
  riseMeans: (look) => {
    const { upper, lower } = spreadOf(
      (look('receive.place') as NoiseClassKey | null) ?? 'residential',
    );
    return {
      says: 'Between the rises that the place’s noise makes at its deciles it is as it should be.',
      rule: 'Outside them it points to something.',
      where: {
        R_read: 'bench.noiseRiseRead',
        F_rx: 'receive.externalHere',
        NF: 'receive.noiseFigure',
        R_N: 'receive.noiseRise',
        D_u: { value: upper, unit: 'dB', says: 'upper decile' },
        D_l: { value: lower, unit: 'dB', says: 'lower decile' },
      },
      source: 'ITU-R P.372, deciles of man-made noise',
    };
  },
  noiseFigureRead: {
    says: 'The rise solved for the receiver’s noise figure.',
    formula: '10 * log10((10^(F_rx / 10) - 1) / (10^(R_read / 10) - 1))',
    where: { F_rx: 'receive.externalHere', R_read: 'bench.noiseRiseRead' },
    source: 'closed form: r = (fa + F − 1)/F',
    assumes: 'The place is as noisy as the middle of its kind.',
  },
  moreLoss: {
    says: 'A loss in front adds to the noise figure decibel for decibel.',
    formula: 'NF_read - NF',
    where: { NF_read: 'bench.noiseFigureRead', NF: 'receive.noiseFigure' },
    source: 'H. T. Friis, Noise figures of radio receivers, Proc. IRE 32, 1944, p. 419',
  },
  outputVpp: {
    says: 'A sine of power P in R swings √2 times its rms value each way.',
    formula: 'sqrt(8 * P_read * R_d)',
    where: { P_read: 'bench.outputRead', R_d: 'bench.dummyLoad' },
    source: 'closed form: P = Vpp²/(8R)',
  },
  outputLevel: {
    says: 'The power against one milliwatt, in decibels.',
    formula: '10 * log10(P_read / P_ref)',
    where: {
      P_read: 'bench.outputRead',
      P_ref: { value: 1e-3, unit: 'W', says: 'one milliwatt' },
    },
    source: 'ITU-R V.574',
  },
  scopeShows,
  scopeLoss: {
    says: 'The same ratio of voltages in decibels, as a loss.',
    formula: '-20 * log10(s_osc)',
    where: { s_osc: 'bench.scopeShows' },
    source: 'definition',
  },
  cautions: {
    says: 'Said always; the first sentence only where the oscilloscope loses over half a decibel.',
    rule: 'By what oscilloscope and probe lose.',
    where: {},
    source: practice,
  },
};

function scopeShows(look: Look): Working {
  const one = look('bench.probe') === 'one';
  return {
    says: 'Each bandwidth is a pole: at its own frequency it leaves 71 % of the voltage.',
    formula: `1 / sqrt(1 + (f_0 / f_osc)^2)${one ? ' * (1 / sqrt(1 + (f_0 / f_probe)^2))' : ''}`,
    where: {
      f_0: 'plan.nominal',
      f_osc: 'bench.scopeBandwidth',
      ...(one
        ? {
            f_probe: {
              value: TIMES_ONE_BANDWIDTH,
              unit: 'Hz',
              says: 'bandwidth of a ×1 probe',
              source: practice,
            } as const,
          }
        : {}),
    },
    source: 'closed form of a single pole',
    assumes: 'A mis-trimmed ×10 probe can read high instead.',
  };
}
