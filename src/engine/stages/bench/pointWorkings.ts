import type { StageWorkings, Working, WorkingOf } from '../../fields/workings.ts';
import type { benchFields } from './fields.ts';
import type { Group, Instrument, Point } from './point.ts';
import { pointsOf } from './points.ts';

const practice = 'common practice, no source';
const column = 'the table of test points';

type Column = keyof (typeof benchFields)['results']['volts']['columns'] & string;
type TableWorkings<G extends Group> = Pick<
  StageWorkings<typeof benchFields>,
  `${G}.${Column}` & keyof StageWorkings<typeof benchFields>
>;

/** Workings of all columns of one table of test points. */
export function pointWorkings<G extends Group>(group: G): TableWorkings<G> {
  const rows = pointsOf(group);
  const each = (of: (point: Point) => WorkingOf): WorkingOf => {
    return (look, index) => {
      const point = rows[index];
      if (!point) throw new Error(`${group} has no row ${index}`);
      const working = of(point);
      return typeof working === 'function' ? working(look, index) : working;
    };
  };
  const word = (says: string): WorkingOf => ({ says, rule: says, where: {}, source: column });
  const columns: Record<Column, WorkingOf> = {
    step: each(({ step }) => ({
      says: 'Place in the order of work.',
      formula: 'n_step',
      where: { n_step: { value: step, unit: '1', says: 'place in the list' } },
      source: practice,
    })),
    point: word('Named in the list of test points.'),
    instrument: word('What suits this point.'),
    expected: each(({ working }) => working),
    tolerance: each(toleranceWorking),
    low: {
      says: 'Expected less the tolerance.',
      formula: 'E - T',
      where: { E: 'row.expected', T: 'row.tolerance' },
      source: practice,
    },
    high: {
      says: 'Expected plus the tolerance.',
      formula: 'E + T',
      where: { E: 'row.expected', T: 'row.tolerance' },
      source: practice,
    },
    measured: each(measuredWorking),
    off: {
      says: 'Measured less expected.',
      formula: 'x - E',
      where: { x: 'row.measured', E: 'row.expected' },
      source: 'definition',
    },
    verdict: each(verdictWorking),
    limit: each((point) => point.limit?.working ?? { ...noLimit }),
    rule: each(ruleWorking),
    from: word('Said for each point.'),
    means: word('By the side on which the reading misses.'),
  };
  return Object.fromEntries(
    Object.entries(columns).map(([key, working]) => [`${group}.${key}`, working]),
  ) as TableWorkings<G>;
}

const noLimit: Working = { says: 'No rule.', rule: 'No rule.', where: {}, source: practice };

/** Where each instrument's error stands, and how it enters. */
const errors: Readonly<Record<Instrument, { path: string; symbol: string; term: string }>> = {
  meter: { path: 'bench.meterError', symbol: 'p_dmm', term: '(p_dmm * E)^2' },
  scope: { path: 'bench.scopeError', symbol: 'p_osc', term: '(p_osc * E)^2' },
  power: { path: 'bench.scopeError', symbol: 'p_osc', term: '(2 * p_osc * E)^2' },
  counter: { path: 'bench.counterError', symbol: 'p_cnt', term: '(p_cnt * E)^2' },
  analyser: { path: 'bench.analyserError', symbol: 't_ana', term: 't_ana^2' },
};

function toleranceWorking({ spread, by, group }: Point): Working {
  const { share, fixed, from } = spread;
  const { path, symbol, term } = errors[by];
  const unit = {
    supplies: 'V',
    currents: 'A',
    frequencies: 'Hz',
    widths: 'Hz',
    volts: 'Vpp',
    powers: 'W',
  } as const;
  const own = group === 'levels' || group === 'harmonics' ? 'dB' : unit[group];
  const terms = [
    ...(share === undefined ? [] : ['(p_x * E)^2']),
    ...(fixed === undefined ? [] : ['T_x^2']),
    term,
  ];
  return {
    says: `Parts and instrument err independently: their squares add. ${from}`,
    formula: `sqrt(${terms.join(' + ')})`,
    where: {
      ...(share === undefined && by === 'analyser' ? {} : { E: 'row.expected' }),
      ...(share === undefined ? {} : { p_x: { value: share, unit: '%', says: 'spread of parts' } }),
      ...(fixed === undefined ? {} : { T_x: { value: fixed, unit: own, says: 'spread of parts' } }),
      [symbol]: path,
    },
    source: practice,
  };
}

function measuredWorking({ read, negative, asVolts }: Point): Working {
  const path = `bench.${read}`;
  if (negative) {
    return {
      says: 'As read, with the minus sign that may be left out.',
      formula: '-abs(x)',
      where: { x: path },
      source: 'as measured',
    };
  }
  if (asVolts) {
    return {
      says: 'The power read, as a voltage across the dummy load.',
      formula: 'sqrt(8 * P_read * R_d)',
      where: { P_read: path, R_d: 'bench.dummyLoad' },
      source: 'closed form: P = Vpp²/(8R)',
    };
  }
  return { says: 'As read.', formula: 'x', where: { x: path }, source: 'as measured' };
}

function verdictWorking({ sides }: Point): Working {
  const off = { both: 'abs(d_x)', atMost: 'd_x', atLeast: '-d_x' }[sides];
  return {
    says: 'Within the tolerance it holds, within twice the tolerance it is close.',
    formula: `${off} <= T ? "holds" : (${off} <= 2 * T ? "close" : "fails")`,
    where: { d_x: 'row.off', T: 'row.tolerance' },
    source: practice,
    ...(sides === 'both' ? {} : { assumes: 'Better than expected is no fault.' }),
  };
}

function ruleWorking({ limit, group }: Point): Working {
  if (!limit) return noLimit;
  const margin = limit.sides === 'atMost' ? 'L_rule - x' : 'x - L_rule';
  const where = { x: 'row.measured', L_rule: 'row.limit' };
  if (limit.spare === 0) {
    return {
      says: 'On the right side of the limit it holds.',
      formula: `${margin} >= 0 * L_rule ? "holds" : "fails"`,
      where,
      source: practice,
    };
  }
  const spare =
    limit.spare === undefined
      ? 'output.marginWanted'
      : ({ value: limit.spare, unit: 'dB', says: 'wanted inside the limit' } as const);
  return {
    says: 'With so much to spare it holds; with less it is close.',
    formula: `${margin} >= m_rule ? "holds" : (${margin} >= 0 ? "close" : "fails")`,
    where: { ...where, m_rule: spare },
    source: practice,
    assumes: group === 'harmonics' ? 'A planning figure: the operator answers for it.' : practice,
  };
}
