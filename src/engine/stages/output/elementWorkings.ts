import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { bestPair } from '../../quantity/preferred.ts';
import { chainFormula, elementsOf, placeOf, rowAfter } from './chainFormula.ts';
import { COOL, HOT, RATINGS } from './elementRows.ts';
import { exactWorking } from './exactWorking.ts';
import type { outputFields } from './fields.ts';
import { seriesOf } from './fitParts.ts';
import { readMeasured } from './readMeasured.ts';

type ElementKeys = `elements.${keyof (typeof outputFields)['results']['elements']['columns']}`;
type CoilKeys = `coils.${keyof (typeof outputFields)['results']['coils']['columns']}`;

export const elementWorkings: Pick<
  StageWorkings<typeof outputFields>,
  Extract<keyof StageWorkings<typeof outputFields>, ElementKeys | CoilKeys>
> = {
  'elements.label': named('Capacitors and coils are counted from the collector on.'),
  'elements.part': named(
    'Capacitors stand to ground or across a coil, which makes a trap of it; coils in the path.',
  ),
  'elements.exactC': (look, index) => exactWorking(look, index),
  'elements.exactL': (look, index) => exactWorking(look, index),
  'elements.fittedC': (look, index) => fittedC(look, index),
  'elements.l': (look, index) => fittedL(look, index),
  'elements.made': named('The two values of the series whose sum comes nearest.'),
  'elements.volts': (look, index) => {
    const chain = chainFormula(look, 'f_0');
    const place = placeOf(look, index);
    const series = chain.branches[place]?.place === 'series';
    const ratio = series
      ? `(${chain.branch(place)}) * ${rowAfter(chain, place + 1, 'current')}`
      : rowAfter(chain, place + 1, 'voltage');
    return {
      says: series
        ? 'The current that flows on behind the coil, times the impedance of the coil and what lies across it.'
        : 'From the antenna back: what the parts behind make of its voltage.',
      formula: `sqrt(2 * P_ant * R_ant) * abs(${ratio})`,
      where: { ...chain.where, P_ant: 'output.pepAntenna' },
      source: 'chain matrices of the network, any text on two-ports',
    };
  },
  'elements.amps': (look, index) => {
    const coil = isCoil(look, index);
    return {
      says: 'Voltage over the part’s own impedance, peak to rms.',
      formula: coil
        ? 'V_x / sqrt(2) / (2 * pi * f_0 * L_x * sqrt(1 + 1 / Q_L^2))'
        : 'V_x / sqrt(2) * 2 * pi * f_0 * C_f * sqrt(1 + 1 / Q_C^2)',
      where: ofPart(look, index),
      source: 'Ohm’s law',
    };
  },
  'elements.rating': {
    says: 'The next usual rating above twice the peak voltage.',
    formula: `(${ratingChain()}) * U`,
    where: { V_x: 'row.volts', U: { value: 1, unit: 'V', says: 'one volt' } },
    source: 'common practice, no source',
    assumes: 'A mismatched antenna at most doubles the voltage.',
  },
  'elements.heat': (look, index) => ({
    says: 'Half the squared peak voltage times the part’s conductance.',
    formula: isCoil(look, index)
      ? 'V_x^2 / 2 / (2 * pi * f_0 * L_x) / (Q_L + 1 / Q_L)'
      : 'V_x^2 / 2 * 2 * pi * f_0 * C_f / Q_C',
    where: ofPart(look, index),
    source: 'closed form: power in a conductance',
    assumes: 'A steady tone; on speech a fifth of it.',
  }),
  'elements.warmth': {
    says: `Up to ${COOL} W cool, beyond ${HOT} W hot.`,
    formula: 'P_x > P_hot ? "hot" : P_x > P_cool ? "warm" : "cool"',
    where: {
      P_x: 'row.heat',
      P_hot: { value: HOT, unit: 'W', says: 'from here on hot' },
      P_cool: { value: COOL, unit: 'W', says: 'up to here cool' },
    },
    source: 'common practice, no source',
  },
  'coils.label': named('The coils among the parts.'),
  'coils.l': (look, index) => exactWorking(look, coilAt(look, index)),
  'coils.current': (look, index) => fromElement(look, index, 'amps', 'Arms'),
  'coils.voltage': (look, index) => fromElement(look, index, 'volts', 'Vpk'),
  'coils.own': (look, index) => {
    const rows = (look('output.coils') ?? []) as readonly { readonly label: string }[];
    return measured('L_m', measuredOf(look, rows[index]?.label) ?? 0, 'H');
  },
};

function named(says: string): Working {
  return { says, rule: says, where: {}, source: 'this program’s own naming' };
}

const isCoil = (look: Look, index: number): boolean => elementsOf(look)[index]?.part === 'coil';

/** Voltage, frequency, value and Q of a part. */
function ofPart(look: Look, index: number): Record<string, Bound> {
  const row = elementsOf(look)[index];
  const where: Record<string, Bound> = { V_x: 'row.volts', f_0: 'plan.nominal' };
  if (row?.part !== 'coil') return { ...where, C_f: 'row.fittedC', Q_C: 'output.capacitorQ' };
  const rows = (look('output.asWound') ?? []) as readonly { label: string; q: number }[];
  return {
    ...where,
    L_x: 'row.l',
    Q_L:
      look('output.coilQ') === null
        ? {
            value: rows.find(({ label }) => label === row.label)?.q ?? 0,
            unit: '1',
            says: `Q of ${row.label}, in the table of coils as wound`,
          }
        : 'output.coilQ',
  };
}

function fittedC(look: Look, index: number): Working {
  const row = elementsOf(look)[index];
  const known = measuredOf(look, row?.label);
  if (known !== undefined) return measured('C_m', known, 'F');
  const fitted = look('output.fitted') as string;
  if (fitted === 'exact') {
    return {
      says: 'The exact value, as asked for.',
      formula: 'C_x',
      where: { C_x: 'row.exactC' },
      source: 'closed form',
    };
  }
  const series = seriesOf(fitted);
  if (!fitted.endsWith('pair')) {
    return {
      says: `The value of ${series} nearest to it.`,
      formula: 'C_f',
      where: {
        C_f: {
          value: row?.fittedC ?? 0,
          unit: 'F',
          says: `nearest of ${series} to the exact value`,
          source: 'IEC 60063',
        },
      },
      source: 'IEC 60063',
    };
  }
  const { parts } = bestPair(row?.exactC ?? 0, series, 1e-12);
  const where = Object.fromEntries(
    parts.map((value, k) => [
      `C_${'ab'.charAt(k)}`,
      { value, unit: 'F', says: `of ${series}`, source: 'IEC 60063' } as const,
    ]),
  );
  return {
    says:
      parts.length > 1
        ? `Two of ${series} side by side: of all pairs the one whose sum comes nearest.`
        : `One of ${series}: no pair comes nearer.`,
    formula: Object.keys(where).join(' + '),
    where,
    source: 'IEC 60063',
  };
}

function fittedL(look: Look, index: number): Working {
  const row = elementsOf(look)[index];
  const known = measuredOf(look, row?.label);
  if (known !== undefined) return measured('L_m', known, 'H');
  if (look('output.coilsFitted') === 'trimmed') {
    return {
      says: 'Turns are spread or squeezed until the coil has it.',
      formula: 'L_w',
      where: { L_w: 'row.exactL' },
      source: 'as asked for',
    };
  }
  const rows = (look('output.asWound') ?? []) as readonly { label: string; lWound: number }[];
  return {
    says: 'As whole turns come, spread evenly.',
    formula: 'L_N',
    where: {
      L_N: {
        value: rows.find(({ label }) => label === row?.label)?.lWound ?? 0,
        unit: 'H',
        says: `${row?.label} in the table of coils as wound`,
      },
    },
    source: 'the table of coils as wound',
  };
}

function measuredOf(look: Look, label: string | undefined): number | undefined {
  return readMeasured((look('output.measured') ?? null) as string | null).values.get(label ?? '');
}

const measured = (symbol: string, value: number, unit: 'F' | 'H'): Working => ({
  says: 'As measured.',
  formula: symbol,
  where: { [symbol]: { value, unit, says: 'typed among the measured parts' } },
  source: 'as typed',
});

/** Place among the parts of the n-th coil. */
function coilAt(look: Look, n: number): number {
  const places = elementsOf(look).flatMap(({ part }, k) => (part === 'coil' ? [k] : []));
  return places[n] ?? -1;
}

function fromElement(
  look: Look,
  index: number,
  column: 'amps' | 'volts',
  unit: 'Arms' | 'Vpk',
): Working {
  const rows = look('output.elements') as readonly Record<string, number>[];
  const value = rows[coilAt(look, index)]?.[column] ?? 0;
  return {
    says: 'As in the table of parts.',
    formula: 'X',
    where: { X: { value, unit, says: 'this coil in the table of parts' } },
    source: 'the table of parts',
  };
}

function ratingChain(): string {
  const steps = RATINGS.map((rating) => `2 * V_x / U <= ${rating} ? ${rating} : `).join('');
  return `${steps}2 * V_x / U`;
}
