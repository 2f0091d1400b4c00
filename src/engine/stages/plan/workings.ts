import type { StageWorkings } from '../../fields/workings.ts';
import type { planFields } from './fields.ts';
import { ruleWorkings } from './ruleWorkings.ts';

export const planWorkings: StageWorkings<typeof planFields> = {
  nominal: (look) =>
    look('plan.frequency') === null
      ? {
          says: 'No operating frequency is given, so the marking of the crystals stands for it.',
          formula: 'f_mark',
          where: { f_mark: 'plan.marking' },
          source: 'as typed',
        }
      : {
          says: 'The operating frequency as given.',
          formula: 'f_op',
          where: { f_op: 'plan.frequency' },
          source: 'as typed',
        },
  filterFrequency: (look) =>
    look('plan.scheme') === 'conversion'
      ? {
          says: 'The filter works where its crystals are.',
          formula: 'f_mark',
          where: { f_mark: 'plan.marking' },
          source: 'as typed',
        }
      : {
          says: 'Without conversion the filter works at the operating frequency.',
          formula: 'f_0',
          where: { f_0: 'plan.nominal' },
          source: 'as typed',
        },
  filterSideband: {
    says: 'Subtracting the filter’s signal from the conversion oscillator turns the sideband round; adding them, or subtracting the oscillator, does not.',
    rule: 'With the conversion oscillator at the sum of the two frequencies, the other sideband than the one wanted; else the one wanted.',
    where: { side: 'plan.side', sideband: 'plan.sideband', scheme: 'plan.scheme' },
    source: 'arithmetic: f_LO − (f_IF + f) = (f_LO − f_IF) − f',
  },
  band: {
    says: 'The amateur allocation whose edges hold the frequency.',
    rule: 'Looked up in the table of allocations, by the widest edges of the three ITU regions.',
    where: { f_0: 'plan.nominal' },
    source: 'ITU Radio Regulations, Article 5 (from memory)',
    assumes: 'National rules are often narrower: the licence decides.',
  },
  wavelength: {
    says: 'A wave travels one wavelength in one period.',
    formula: 'c / f_0',
    where: {
      c: { value: 299_792_458, unit: 'm/s', says: 'speed of light, exact', source: 'SI brochure' },
      f_0: 'plan.nominal',
    },
    source: 'SI brochure, 9th edition',
  },
  pepLevel: {
    says: 'The power against one milliwatt, in decibels.',
    formula: '10 * log10(P_PEP / P_ref)',
    where: { P_PEP: 'plan.pep', P_ref: { value: 1e-3, unit: 'W', says: 'one milliwatt' } },
    source: 'ITU-R V.574',
  },
  antennaVpp: {
    says: 'A sine of power P in R swings √2 times its rms value each way.',
    formula: 'sqrt(8 * P_PEP * R_ant)',
    where: { P_PEP: 'plan.pep', R_ant: 'plan.antenna' },
    source: 'closed form: P = Vpp²/(8R)',
    assumes: 'A sine at the crest of the envelope into a pure resistance.',
  },
  antennaCurrent: {
    says: 'The rms current that makes this power in the antenna resistance.',
    formula: 'sqrt(P_PEP / R_ant)',
    where: { P_PEP: 'plan.pep', R_ant: 'plan.antenna' },
    source: "Joule's law: P = I²R",
  },
  ...ruleWorkings,
};
