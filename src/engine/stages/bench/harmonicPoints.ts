import type { OwnLine } from '../../data/emission.ts';
import { limitFormula } from '../../data/limitFormula.ts';
import { type RuleSet, type RuleSetKey, ruleSets } from '../../data/ruleSets.ts';
import type { Look, Working } from '../../fields/workings.ts';
import { rulingPower, rulingPowerPath } from './expectedPower.ts';
import type { Point } from './point.ts';
import type { BenchSeen } from './seen.ts';

interface HarmonicRow {
  readonly order: number | null;
  readonly level: number | null;
}

const levelOf = (rows: readonly HarmonicRow[] | null, order: number): number | null =>
  rows?.find((row) => row.order === order)?.level ?? null;

/** The harmonics that are read, each with the entry that holds it. */
const read = [
  [2, 'harmonic2'],
  [3, 'harmonic3'],
  [4, 'harmonic4'],
  [5, 'harmonic5'],
] as const;

/** Points read with an analyser: harmonics two to five. */
export const harmonicPoints: readonly Point[] = read.map(([order, entry]) => ({
  group: 'harmonics',
  step: 18 + order,
  point: `${order}${ending(order)} harmonic`,
  instrument: 'Analyser behind 30–50 dB; ten more must change nothing',
  by: 'analyser',
  needs: 'Output',
  expected: (seen) => {
    const level = levelOf(seen.harmonicRows, order);
    return level === null ? null : Math.max(level, -seen.dynamicRange);
  },
  absent: (seen) =>
    seen.harmonicRows === null
      ? null
      : 'The planned current pulse has none of it: only the rule counts.',
  working: (look) => ({
    says: 'As Output works it out, through the network as designed; no deeper than analyser and layout can show.',
    formula: 'max(H_out, -D_max)',
    where: {
      H_out: {
        value: levelOf(look('output.harmonics') as readonly HarmonicRow[] | null, order) ?? 0,
        unit: 'dBc',
        says: `level of harmonic ${order} in Output’s table`,
      },
      D_max: 'bench.dynamicRange',
    },
    source: 'the sheet named there',
  }),
  spread: {
    fixed: 6,
    from: 'Near saturation a harmonic swings with bias and drive, and coils and layout leak.',
  },
  sides: 'atMost',
  read: entry,
  negative: true,
  limit: {
    sides: 'atMost',
    value: (seen) => ruleLevel(seen, order),
    working: (look) => ruleWorking(look, order),
  },
  below: '',
  above:
    'The network as built: wrong core mix or turns, coils side by side, leads round it, high-K capacitors. If ten more decibels before the analyser change the reading, the analyser made it.',
}));

function ending(order: number): string {
  return order === 2 ? 'nd' : order === 3 ? 'rd' : 'th';
}

/** The limit as a level, dBc (negative); null where power or frequency is not known. */
function ruleLevel(seen: BenchSeen, order: number): number | null {
  const { frequency, rules, ownLimit, ownRows } = seen;
  const power = rulingPower(seen);
  if (frequency === null || rules === null || ownLimit === null || power === null) return null;
  const set: RuleSet = ruleSets[rules];
  return -set.limit({
    frequency: order * frequency,
    fundamental: frequency,
    power,
    own: ownLimit,
    ownLines: ownRows,
  });
}

function ruleWorking(look: Look, order: number): Working {
  const nominal = look('plan.nominal') as number;
  const power = rulingPowerPath(look);
  const { needs, where, ...told } = limitFormula(look('plan.rules') as RuleSetKey, {
    frequency: order * nominal,
    fundamental: nominal,
    power: look(power) as number,
    own: look('plan.ownLimit') as number,
    ownLines: look('plan.ownRows') as readonly OwnLine[] | null,
  });
  return {
    ...told,
    where: {
      ...(needs.power ? { P: power } : {}),
      ...(needs.frequency
        ? {
            n: { value: order, unit: '1', says: 'order of the harmonic' },
            f_0: 'plan.nominal',
            f_n: { formula: 'n * f_0', unit: 'Hz', says: 'its frequency' },
          }
        : {}),
      ...(needs.own ? { A_own: 'plan.ownLimit' } : {}),
      ...where,
    },
  };
}
