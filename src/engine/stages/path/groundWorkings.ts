import { grounds } from '../../data/grounds.ts';
import type { Look, StageWorkings, Working } from '../../fields/workings.ts';
import { groundWave } from '../../waves/groundWave.ts';
import { constants } from './constants.ts';
import type { pathFields } from './fields.ts';

const source =
  'Norton’s surface wave, Proc. IRE 24 and 25; beyond, creeping modes (Fock; Bremmer): the method of ITU-R P.368';

/** How much the ground lets through over a distance, as a bound number. */
function letThrough(look: Look, distance: number) {
  const ground = grounds[look('antenna.ground') as keyof typeof grounds];
  const wave = groundWave(look('plan.nominal') as number, ground);
  return {
    value: 10 ** (-wave(distance) / 20),
    unit: '1',
    says: 'field over that on perfect flat ground, a sum of some ten to a hundred terms',
    source,
  } as const;
}

/** Workings of the way along the ground. */
export const groundWorkings = {
  surface: (look) => ({
    says: 'Real ground lets a part of the field through; the Earth’s bend takes more.',
    formula: '-20 * log10(F_g)',
    where: { F_g: letThrough(look, look('path.distance') as number) },
    source,
    assumes: 'The same smooth ground all the way, air that bends rays as usual (4/3 of the Earth).',
  }),
} satisfies Partial<StageWorkings<typeof pathFields>>;

/** Loss at one point of the curve. */
export function groundLossOver(look: Look): Working {
  return {
    says: 'Free-space loss, what the ground takes, and the doubling that both antennas have in their gains.',
    formula: '20 * log10(4 * pi * D * f_0 / c) + 20 * log10(2) - 20 * log10(F_g)',
    where: {
      D: 'point.distance',
      f_0: 'plan.nominal',
      c: constants.light,
      F_g: letThrough(look, look('point.distance') as number),
    },
    source: `ITU-R P.525; ${source}`,
  };
}
