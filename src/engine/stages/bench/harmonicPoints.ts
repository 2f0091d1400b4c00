import { type RuleSet, ruleSets } from '../../data/ruleSets.ts';
import type { Bound, Look, Working } from '../../fields/workings.ts';
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
  const { frequency, rules, ownLimit } = seen;
  const power = rulingPower(seen);
  if (frequency === null || rules === null || ownLimit === null || power === null) return null;
  const emission = { frequency: order * frequency, fundamental: frequency, power, own: ownLimit };
  const set: RuleSet = ruleSets[rules];
  return -set.limit(emission);
}

function ruleWorking(look: Look, order: number): Working {
  const rules = look('plan.rules') as keyof typeof ruleSets;
  const { source } = ruleSets[rules];
  const said = {
    says: 'The limit of the rule set chosen in Plan, for the power read or expected.',
    source,
    assumes: 'A planning figure: the text in force, a measurement and the operator decide.',
  };
  const P: Bound = rulingPowerPath(look);
  const dB = (value: number, says: string): Bound => ({ value, unit: 'dB', says, source });
  if (rules === 'own') return { ...said, formula: '-A_own', where: { A_own: 'plan.ownLimit' } };
  const nominal = look('plan.nominal') as number;
  if (rules === 'us' && nominal < 30e6) {
    return { ...said, formula: '-A_us', where: { A_us: dB(43, 'below mean power') } };
  }
  if (rules === 'itu') {
    return {
      ...said,
      formula: '-min(A_1 + 10 * log10(P / P_1), A_cap)',
      where: {
        A_1: dB(43, 'at one watt'),
        P,
        P_1: { value: 1, unit: 'W', says: 'one watt' },
        A_cap: dB(nominal < 30e6 ? 50 : 70, 'never more'),
      },
    };
  }
  if (rules === 'cept') {
    const rising = order * nominal > 35e6 && order * nominal < 50e6;
    return {
      ...said,
      formula: `-min(${rising ? 'A_tab + A_dec * log10(n * f_0 / f_35)' : 'A_tab'}, 10 * log10(P / P_mW) - L_abs)`,
      where: {
        A_tab: dB(order * nominal >= 50e6 ? 60 : 40, 'by the table'),
        ...(rising
          ? {
              A_dec: dB(129.1, 'more for each decade from there'),
              n: { value: order, unit: '1', says: 'order of the harmonic' } as const,
              f_0: 'plan.nominal',
              f_35: { value: 35e6, unit: 'Hz', says: 'where the table begins to rise' } as const,
            }
          : {}),
        P,
        P_mW: { value: 1e-3, unit: 'W', says: 'one milliwatt' },
        L_abs: { value: -36, unit: 'dBm', says: 'level that is always allowed' },
      },
    };
  }
  const emission = {
    frequency: order * nominal,
    fundamental: nominal,
    power: look(rulingPowerPath(look)) as number,
    own: look('plan.ownLimit') as number,
  };
  return {
    ...said,
    formula: '-A_rule',
    where: { A_rule: dB(ruleSets[rules].limit(emission), `for harmonic ${order} at this power`) },
  };
}
