import type { Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { speechFields } from './fields.ts';
import { GRADES } from './work.ts';

const standard = 'ANSI S3.5-1997, one-third octave procedure';

interface Band {
  readonly middle: number;
  readonly brings: number;
}

const bands = (look: Look) => (look('speech.bands') ?? []) as readonly Band[];

/** The sum over the bands, each with its figure. */
function sum(look: Look): Working {
  const rows = bands(look);
  return {
    says: 'What each band brings, added up.',
    formula: rows.map(({ middle }) => `S_${middle}`).join(' + '),
    where: Object.fromEntries(
      rows.map(({ middle, brings }) => [
        `S_${middle}`,
        { value: brings, unit: '1', says: `what the band at ${middle} Hz brings` } as const,
      ]),
    ),
    source: standard,
    assumes: 'Bands don’t cover each other, the ear’s own noise is no limit: volume is turned up.',
  };
}

/** A sum over every step of frequency, that the stage itself has found. */
const integral =
  (path: string, says: string) =>
  (look: Look, index: number): Working => ({
    says: 'Over all frequencies: worth of each step times (speech over noise + 15 dB)/30 dB, from 0 to 1.',
    formula: 'S_sum',
    where: {
      S_sum: { value: foundAt(look, path, index), unit: '1', says },
    },
    source: standard,
    assumes: 'Importance is spread evenly over each band.',
  });

/** A cell or a point as it was found. */
function foundAt(look: Look, path: string, index: number): number {
  const [stage = '', of = '', key = ''] = path.split('.');
  const whole = look(`${stage}.${of}`);
  if (typeof whole === 'number') return whole;
  if (Array.isArray(whole)) return (whole[index] as Record<string, number>)[key] ?? 0;
  return (whole as Record<string, Float64Array>)[key]?.[index] ?? 0;
}

export const speechWorkings: StageWorkings<typeof speechFields> = {
  index: sum,
  best: integral('speech.best', 'the sum with 40 dB over the noise'),
  share: {
    says: 'What the noise leaves.',
    formula: 'SII / SII_0',
    where: { SII: 'speech.index', SII_0: 'speech.best' },
    source: 'definition',
  },
  grade: {
    says: 'By the index.',
    formula: `SII > S_good ? "good" : (SII < S_poor ? "poor" : "fair")`,
    where: {
      SII: 'speech.index',
      S_good: { value: GRADES.good, unit: '1', says: 'good above this' },
      S_poor: { value: GRADES.poor, unit: '1', says: 'poor below this' },
    },
    source: 'ANSI S3.5-1997, thresholds from memory',
  },
  'edges.filter': {
    says: 'Which edge is moved.',
    rule: 'As it is; the lower skirt nearer to the carrier; the upper one farther from it.',
    where: {},
    source: 'as typed',
  },
  'edges.index': integral('speech.edges.index', 'the sum with this filter'),
  'edges.gain': {
    says: 'Against the filter as it is.',
    formula: 'SII_i - SII',
    where: { SII_i: 'row.index', SII: 'speech.index' },
    source: 'definition',
  },
  'edges.best': integral('speech.edges.best', 'the sum with this filter, 40 dB over the noise'),
  'bands.middle': constant('middle', 'Hz', 'The standard’s name for the band.'),
  'bands.importance': constant('importance', '1', 'From the standard’s table.'),
  'bands.width': (look, index) => ({
    says: 'A tenth of a decade: a twentieth to either side of the exact middle.',
    formula: 'f_m * (10^0.05 - 10^(-0.05))',
    where: {
      f_m: {
        value: 10 ** (Math.round(10 * Math.log10(bands(look)[index]?.middle ?? 1)) / 10),
        unit: 'Hz',
        says: 'exact middle of the band',
      },
    },
    source: 'IEC 61260-1',
  }),
  'bands.heard': constant(
    'heard',
    'Hz',
    'Over the band: (speech over noise + 15 dB)/30 dB from 0 to 1, summed over steps of 31 Hz.',
  ),
  'bands.audible': {
    says: 'Part of the band that is heard.',
    formula: 'B_h / B_i',
    where: { B_h: 'row.heard', B_i: 'row.width' },
    source: standard,
  },
  'bands.brings': {
    says: 'Worth times what is audible.',
    formula: 'I_i * A_i',
    where: { I_i: 'row.importance', A_i: 'row.audible' },
    source: standard,
  },
  'overNoise.asIs': integral('speech.overNoise.asIs', 'the sum at this ratio'),
  'overNoise.lower': integral('speech.overNoise.lower', 'the sum at this ratio'),
  'overNoise.higher': integral('speech.overNoise.higher', 'the sum at this ratio'),
};

function constant(key: 'middle' | 'importance' | 'heard', unit: 'Hz' | '1', says: string) {
  return (look: Look, index: number): Working => ({
    says,
    formula: 'x_i',
    where: { x_i: { value: foundAt(look, `speech.bands.${key}`, index), unit, says: 'this band' } },
    source: standard,
  });
}
