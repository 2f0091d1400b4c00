import { type NoiseClassKey, noiseClasses } from '../../data/noiseClasses.ts';
import { noiseFormula } from '../../data/noiseFormula.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { pathFields } from './fields.ts';

const sum = 'sum of powers';
const isMade = (look: Look) => typeof look('antenna.efficiency') === 'number';

/** Is it as noisy there as here? */
const isSame = (look: Look) =>
  look('path.farPlace') === 'same' && typeof look('path.farAtmospheric') !== 'number';

const placeThere = (look: Look) =>
  look(look('path.farPlace') === 'same' ? 'receive.place' : 'path.farPlace') as NoiseClassKey;

/** What the antenna loses of the noise, where it is known. */
const eta: Readonly<Record<string, Bound>> = { eta: 'antenna.efficiency' };

/** Noise at both ends. */
export const noiseWorkings = {
  farExternal: (look) => {
    const storms = ['path.farAtmospheric', 'receive.atmospheric'].find(
      (path) => typeof look(path) === 'number',
    );
    const row = noiseClasses[placeThere(look)];
    if (isSame(look) || !row) {
      return {
        says: 'The same as here.',
        formula: 'F_am',
        where: { F_am: 'receive.external' },
        source: 'as chosen',
      };
    }
    const { says, formula, where, source } = noiseFormula(
      placeThere(look),
      storms !== undefined,
      look('plan.nominal') as number,
    );
    return {
      says,
      formula,
      where: { ...(storms ? { F_at: storms } : {}), ...where, f_0: 'plan.nominal' },
      source,
    };
  },
  farBand: (look) =>
    isSame(look)
      ? {
          says: 'The same as here.',
          formula: 'L_b',
          where: { L_b: 'receive.bandNoise' },
          source: 'as chosen',
        }
      : {
          says: 'The band noise here, with the noise figure of that place in the stead of this one’s.',
          formula: 'L_b - F_am + F_f',
          where: {
            L_b: 'receive.bandNoise',
            F_am: 'receive.external',
            F_f: 'path.farExternal',
          },
          source: 'ITU-R P.372',
        },
  noise: (look) => {
    const same = look('antenna.far') === 'same' && isMade(look);
    return {
      says: 'Band noise behind antenna and feed line, and the receiver’s own noise, add as powers.',
      formula: `10 * log10(10^((L_b - A_r) / 10)${same ? ' * eta' : ''} + 10^(L_f / 10))`,
      where: {
        L_b: 'path.farBand',
        A_r: 'path.lineThere',
        ...(same ? eta : {}),
        L_f: 'receive.floor',
      },
      source: sum,
      assumes: 'The other station has this receiver.',
    };
  },
  heardNoise: (look) => ({
    says: 'Band noise here behind antenna and feed line, and the receiver’s own, add as powers.',
    formula: `10 * log10(10^((L_b - A_t) / 10)${isMade(look) ? ' * eta' : ''} + 10^(L_f / 10))`,
    where: {
      L_b: 'receive.bandNoise',
      A_t: 'path.lineHere',
      ...(isMade(look) ? eta : {}),
      L_f: 'receive.floor',
    },
    source: sum,
  }),
} satisfies Partial<StageWorkings<typeof pathFields>> & Record<string, unknown>;

/** Loss of a line, as the Feed line leaf has it. */
export const lineUsed = (path: string): Working => ({
  says: 'As the Feed line leaf has it.',
  formula: 'A_l',
  where: { A_l: path },
  source: 'the line’s kind, length and SWR, or as typed there',
});
