import type { StageWorkings } from '../../fields/workings.ts';
import type { hearFields } from './fields.ts';
import { TOLD_BY } from './work.ts';

export const hearWorkings: StageWorkings<typeof hearFields> = {
  ratioUsed: (look) =>
    look('hear.ratio') === null
      ? {
          says: 'What Path says of the signal at the other end.',
          formula: 'SNR',
          where: { SNR: 'path.snr' },
          source: 'as worked on Path',
        }
      : {
          says: 'As typed.',
          formula: 'SNR_0',
          where: { SNR_0: 'hear.ratio' },
          source: 'as typed',
        },
  meanRatio: {
    says: 'The noise is always there, the peak of speech is not.',
    formula: 'SNR_h + 10 * log10(d_sp)',
    where: { SNR_h: 'hear.ratioUsed', d_sp: 'transmit.speechMean' },
    source: 'definition',
    assumes: 'The share of the peak that speech has on the mean: Transmit.',
  },
  fadingUsed: {
    says: 'As chosen. A path by way of the ionosphere fades; others are taken as steady.',
    rule: 'Sky wave: middling. Line of sight, two rays, ground wave: none.',
    where: {},
    source: 'ITU-R F.1487, middle latitudes',
  },
  toneAs: (look) => ({
    says: 'The tone lies so far from the sender’s carrier; the receiver counts from its own.',
    formula: look('plan.filterSideband') === 'lower' ? 'f_1 + f_off' : 'f_1 - f_off',
    where: {
      f_1: { value: TOLD_BY, unit: 'Hz', says: 'the tone that is sent' },
      f_off: 'hear.offTune',
    },
    source: 'arithmetic of the product detector',
    assumes: 'Counted where the filter works.',
  }),
};
