import type { Bound, Look, StageWorkings, Working, WorkingOf } from '../../fields/workings.ts';
import type { Unit } from '../../quantity/units.ts';
import type { carrierFields } from './fields.ts';
import { type Named, ownCrystal } from './ownCrystal.ts';

type Workings = StageWorkings<typeof carrierFields>;

/** Which crystal the oscillator has: named from the bag, or like those of the filter. */
export const crystalWorkings: Pick<
  Workings,
  'together' | 'crystalFs' | 'crystalLm' | 'crystalRm' | 'crystalC0'
> = {
  together: (look) => {
    const { length } = named(look);
    return length === 0
      ? {
          says: 'As given.',
          formula: 'n',
          where: { n: 'carrier.crystals' },
          source: 'as typed',
        }
      : {
          says: 'As many as are named.',
          formula: 'n',
          where: { n: { value: length, unit: '1', says: 'crystals named from the bag' } },
          source: 'counted',
        };
  },
  crystalFs: (look) => {
    const all = named(look);
    if (all.length === 0) {
      return {
        says: 'Like those of the filter, and so much off.',
        formula: 'f_fil + f_dev',
        where: { f_fil: 'filter.crystalFs', f_dev: 'carrier.crystalOffset' },
        source: 'definition',
      };
    }
    const weights = all.map((_, i) => `1 / L_${i + 1}`).join(' + ');
    return {
      says:
        all.length === 1
          ? 'As measured.'
          : 'Side by side: the mean, each weighted by the reciprocal of its Lm.',
      formula:
        all.length === 1
          ? 'f_1'
          : `(${all.map((_, i) => `f_${i + 1} / L_${i + 1}`).join(' + ')}) / (${weights})`,
      where: {
        ...each(all, 'fs', 'f', 'Hz'),
        ...(all.length > 1 ? each(all, 'lm', 'L', 'H') : {}),
      },
      source: 'motional arms in parallel; holds while they differ little against the pull',
    };
  },
  crystalLm: parallelOf('lm', 'L', 'H', 'filter.crystalLm'),
  crystalRm: parallelOf('rm', 'R', 'Ω', 'filter.crystalRm'),
  crystalC0: (look) => {
    const all = named(look);
    if (all.length === 0) return like('C_fil', 'filter.crystalC0');
    return {
      says: all.length === 1 ? 'As measured, or that of the filter’s crystals.' : 'The mean.',
      formula: `(${all.map((_, i) => `C_${i + 1}`).join(' + ')}) / ${all.length}`,
      where: each(all, 'c0', 'C', 'F'),
      source: 'definition',
    };
  },
};

/** Of n unlike ones in parallel: n over the sum of the reciprocals. */
function parallelOf(key: 'lm' | 'rm', letter: string, unit: Unit, path: string): WorkingOf {
  return (look) => {
    const all = named(look);
    if (all.length === 0) return like(`${letter}_fil`, path);
    return {
      says:
        all.length === 1
          ? 'As measured, or that of the filter’s crystals.'
          : 'Of as many alike that make the same in parallel.',
      formula:
        all.length === 1
          ? `${letter}_1`
          : `${all.length} / (${all.map((_, i) => `1 / ${letter}_${i + 1}`).join(' + ')})`,
      where: each(all, key, letter, unit),
      source: 'motional arms in parallel; holds while they differ little against the pull',
    };
  };
}

const like = (symbol: string, path: string): Working => ({
  says: 'Like those of the filter.',
  formula: symbol,
  where: { [symbol]: path },
  source: 'as in the filter',
});

const each = (
  all: readonly Named[],
  key: 'fs' | 'lm' | 'rm' | 'c0',
  letter: string,
  unit: Unit,
): Record<string, Bound> =>
  Object.fromEntries(
    all.map((one, i) => [
      `${letter}_${i + 1}`,
      { value: one[key], unit, says: `of crystal ${one.label}` },
    ]),
  );

function named(look: Look): readonly Named[] {
  const at = <T>(path: string) => look(path) as T;
  return ownCrystal({
    fs: at('filter.crystalFs'),
    lm: at('filter.crystalLm'),
    rm: at('filter.crystalRm'),
    c0: at('filter.crystalC0'),
    crystals: at('carrier.crystals'),
    crystalOffset: at('carrier.crystalOffset'),
    chosen: at('carrier.chosen'),
    bag: at('bag.rows'),
    inFilter: at('filter.places'),
  }).named;
}
