import type { Formula, StageWorkings } from '../../fields/workings.ts';
import type { yieldFields } from './fields.ts';
import { ONE_IN_TWENTY } from './work.ts';

const twentieth = {
  value: ONE_IN_TWENTY,
  unit: '1',
  says: 'standard deviations beyond which one in twenty lies',
} as const;

/** How the figures that stand before any build come about. */
export const yieldWorkings: StageWorkings<typeof yieldFields> = {
  usualLeast: usual('B * (1 - 5 / 100)', 'less'),
  usualMost: usual('B * (1 + 5 / 100)', 'more'),
  basis: {
    says: 'Chosen, where the crystals of the ladder differ in frequency from place to place.',
    rule: 'Bought alike while all positions have the same crystal.',
    where: {},
    source: 'definition',
  },
  spreadUsed: (look) =>
    look('yield.basis') === 'chosen'
      ? {
          says: 'Each place has its own measured crystal: only the error of measuring is left.',
          formula: 'sigma_m',
          where: { sigma_m: 'yield.measuring' },
          source: 'definition',
        }
      : {
          says: 'The spread of what is bought.',
          formula: 'sigma_x',
          where: { sigma_x: 'yield.spread' },
          source: 'definition',
        },
  window: (look) =>
    look('yield.frequencyShape') === 'even'
      ? {
          says: 'An even distribution is √12 standard deviations wide.',
          formula: 'sqrt(12) * sigma_f',
          where: { sigma_f: 'yield.spreadUsed' },
          source: 'closed form',
        }
      : {
          says: 'Nineteen of twenty lie this near to the middle, to both sides.',
          formula: '2 * z * sigma_f',
          where: { sigma_f: 'yield.spreadUsed', z: twentieth },
          source: 'normal distribution',
        },
  windowShare: {
    says: 'What counts is the window against the width of the filter.',
    formula: 'W_x / B_3',
    where: { W_x: 'yield.window', B_3: 'filter.width3' },
    source: 'definition',
  },
  sureness: {
    says: 'A share found by trying is the surer the oftener it is tried; least sure is one half.',
    formula: 'z * sqrt(1 / 2 * (1 - 1 / 2) / N)',
    where: { N: 'yield.builds', z: twentieth },
    source: 'binomial distribution',
  },
};

function usual(formula: string, way: string): Formula {
  return {
    says: `A twentieth ${way} than the width that was asked for.`,
    formula,
    where: { B: 'filter.bandwidth' },
    source: 'common practice, no source',
  };
}
