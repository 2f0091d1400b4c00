import type { Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { transmitFields } from './fields.ts';

interface Leftover {
  readonly frequency: number;
  readonly left: number;
}

const rows = (look: Look) => (look('front.leftovers') ?? []) as readonly Leftover[];

type UnwantedKey = Extract<keyof StageWorkings<typeof transmitFields>, `unwanted.${string}`>;

/** As the band-pass leaves it. */
const taken =
  (key: keyof Leftover, symbol: string, unit: 'Hz' | 'dB', says: string) =>
  (look: Look, index: number): Working => ({
    says,
    formula: symbol,
    where: {
      [symbol]: {
        value: rows(look)[index]?.[key] ?? 0,
        unit,
        says: 'from the leaf Band-pass, the same row',
      },
    },
    source: 'as worked on Band-pass',
  });

export const unwantedWorkings: Pick<StageWorkings<typeof transmitFields>, UnwantedKey> = {
  'unwanted.what': {
    says: 'What is looked at on the leaf Band-pass.',
    rule: 'Image, conversion oscillator with its second harmonic, and the intermediate frequency.',
    where: {},
    source: 'definition',
  },
  'unwanted.frequency': taken('frequency', 'f_x', 'Hz', 'Where it lies.'),
  'unwanted.below': taken(
    'left',
    'A_x',
    'dB',
    'Driver and final amplify it as they do the signal: the ratio stays.',
  ),
  'unwanted.power': {
    says: 'So many decibels below the peak envelope power.',
    formula: 'P_PEP * 10^(A_left / 10)',
    where: { P_PEP: 'plan.pep', A_left: 'row.below' },
    source: 'definition of the decibel, ITU-R V.574',
    assumes: 'Nothing more taken off by the output network.',
  },
};
