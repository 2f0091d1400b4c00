import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { constants } from './constants.ts';
import type { pathFields } from './fields.ts';
import type { PathSeen } from './seen.ts';
import { itemsBack, itemsOf, type SumItem } from './sumRows.ts';

type Where = Record<string, Bound>;

/** What a line of the sum adds, and the symbols in it. */
function lineOf(look: Look, item: Line): { formula: string; where: Where } {
  const one = (formula: string, symbol: string, path: string) => ({
    formula,
    where: { [symbol]: path },
  });
  switch (item) {
    case 'power':
      return {
        formula: '10 * log10(P / P_ref)',
        where: {
          P: look('output.pepAntenna') === null ? 'plan.pep' : 'output.pepAntenna',
          P_ref: constants.milliwatt,
        },
      };
    case 'farPower':
      return {
        formula: '10 * log10(P_f / P_ref)',
        where: { P_f: 'path.farPower', P_ref: constants.milliwatt },
      };
    case 'lineHere':
      return one('-A_t', 'A_t', 'path.lineHere');
    case 'antennaHere':
      return one('+G_h', 'G_h', 'path.gainHere');
    case 'spreading':
      return one('-A_0', 'A_0', 'path.spreading');
    case 'absorption':
      return one('-A_D', 'A_D', 'path.absorption');
    case 'touching':
      return one('-A_g', 'A_g', 'path.groundLoss');
    case 'groundRay':
      return one('+A_2', 'A_2', 'path.groundRay');
    case 'doubling':
      return { formula: '-20 * log10(2)', where: {} };
    case 'surface':
      return one('-A_s', 'A_s', 'path.surface');
    case 'antennaThere':
      return one('+G_r', 'G_r', 'path.gainThere');
    case 'lineThere':
      return one('-A_r', 'A_r', 'path.lineThere');
    case 'noise':
      return one('L_n', 'L_n', 'path.noise');
    case 'heardNoise':
      return one('L_nh', 'L_nh', 'path.heardNoise');
  }
}

/** A line with a level of its own. */
type Line = Exclude<SumItem, 'snr'>;

const itemAt = (look: Look) => look('row.item') as SumItem;
const routeAt = (look: Look) => look('path.route') as PathSeen['route'];
const budget = 'link budget, definition';

/** Workings of a sum: its lines in order, and what stands at its end. */
function workingsOf(
  items: (route: PathSeen['route']) => readonly SumItem[],
  noise: 'noise' | 'heardNoise',
  received: string,
  place: string,
) {
  const adds = (look: Look): Working => {
    const item = itemAt(look);
    const { formula, where } =
      item === 'snr'
        ? { formula: 'L_r - L_n', where: { L_r: received, L_n: `path.${noise}` } }
        : lineOf(look, item);
    return {
      says: 'What this line adds; what it takes is negative.',
      formula: formula.replace(/^\+/, ''),
      where,
      source: budget,
    };
  };
  const level = (look: Look): Working => {
    const item = itemAt(look);
    if (item === noise) {
      return {
        says: `The noise at the receiver ${place}.`,
        ...lineOf(look, noise),
        source: 'sum of powers',
      };
    }
    const all = items(routeAt(look));
    const above = all.slice(0, all.indexOf(item) + 1).map((line) => lineOf(look, line as Line));
    return {
      says: 'All lines down to this one together.',
      formula: above
        .map((line) => line.formula)
        .join(' ')
        .replace(/ ([+-])(?=\S)/g, ' $1 '),
      where: Object.assign({}, ...above.map((line) => line.where)) as Where,
      source: budget,
    };
  };
  return { adds, level };
}

const item: Working = {
  says: 'What the signal meets, in that order.',
  rule: 'By the way it goes.',
  where: {},
  source: budget,
};

const there = workingsOf(itemsOf, 'noise', 'path.received', 'there');
const here = workingsOf(itemsBack, 'heardNoise', 'path.heardReceived', 'here');

/** Workings of the sum, out and back. */
export const sumWorkings = {
  'sum.item': item,
  'sum.adds': there.adds,
  'sum.level': there.level,
  'back.item': item,
  'back.adds': here.adds,
  'back.level': here.level,
} satisfies Partial<StageWorkings<typeof pathFields>>;
