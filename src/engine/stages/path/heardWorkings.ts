import type { StageWorkings } from '../../fields/workings.ts';
import { graded } from './arrivalWorkings.ts';
import { constants } from './constants.ts';
import type { pathFields } from './fields.ts';

/** Workings of what is heard here of the other station. */
export const heardWorkings = {
  heardReceived: {
    says: 'The same sum from the other end: their power, both lines, both antennas, the same path.',
    formula: '10 * log10(P_f / P_ref) - A_r + G_r - A + G_h - A_t',
    where: {
      P_f: 'path.farPower',
      P_ref: constants.milliwatt,
      A_r: 'path.lineThere',
      G_r: 'path.gainThere',
      A: 'path.loss',
      G_h: 'path.gainHere',
      A_t: 'path.lineHere',
    },
    source: 'link budget, definition; the way is the same both ways',
  },
  heardReport: {
    says: 'As it is spoken.',
    rule: 'The nearest whole S-unit; above S9 the nearest five decibels over it.',
    where: { L_h: 'path.heardReceived', L_S9: constants.s9, a_S: constants.sUnit },
    source: 'IARU Region 1 Technical Recommendation R.1',
  },
  heardSnr: {
    says: 'Their signal less the noise here.',
    formula: 'L_h - L_nh',
    where: { L_h: 'path.heardReceived', L_nh: 'path.heardNoise' },
    source: 'definition',
  },
  heardSpeech: (look) => {
    const working = graded(look, 'The best grade whose need is met here.', 'C_N0');
    return {
      ...working,
      where: {
        SNR_h: 'path.heardSnr',
        B: 'filter.noiseBandwidth',
        B_ref: constants.hertz,
        ...working.where,
        C_N0: {
          formula: 'SNR_h + 10 * log10(B / B_ref)',
          unit: 'dB',
          says: 'signal over noise in 1 Hz',
        },
      },
    };
  },
  balance: {
    says: 'How far this station stands over the noise there, less how far they do here.',
    formula: 'SNR - SNR_h',
    where: { SNR: 'path.snr', SNR_h: 'path.heardSnr' },
    source: 'definition',
  },
  balanceWords: {
    says: 'In a sentence.',
    rule: 'Within 3 dB, half an S-unit, both hear one another alike.',
    where: { Delta_SNR: 'path.balance' },
    source: 'own scale, no source',
  },
} satisfies Partial<StageWorkings<typeof pathFields>>;
