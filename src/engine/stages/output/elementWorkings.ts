import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { chainFormula, partsOf, rowAfter } from './chainFormula.ts';
import { RATINGS } from './elementRows.ts';
import type { outputFields } from './fields.ts';
import type { Share } from './network.ts';

type ElementKeys = `elements.${keyof (typeof outputFields)['results']['elements']['columns']}`;
type CoilKeys = `coils.${keyof (typeof outputFields)['results']['coils']['columns']}`;

export const elementWorkings: Pick<
  StageWorkings<typeof outputFields>,
  Extract<keyof StageWorkings<typeof outputFields>, ElementKeys | CoilKeys>
> = {
  'elements.label': named('Capacitors and coils are counted from the collector on.'),
  'elements.part': named('Capacitors stand to ground, coils in the path.'),
  'elements.exactC': (look, index) => exact(look, index),
  'elements.fittedC': (look, index) => {
    const part = partsOf(look)[index];
    const series = look('output.fitted') as string;
    if (series === 'exact') {
      return {
        says: 'The exact value, as asked for.',
        formula: 'C_x',
        where: { C_x: 'row.exactC' },
        source: 'closed form',
      };
    }
    return {
      says: `The value of ${series.toUpperCase()} nearest by ratio.`,
      formula: 'C_f',
      where: {
        C_f: {
          value: part?.fitted ?? 0,
          unit: 'F',
          says: `nearest of ${series.toUpperCase()} to the exact value`,
          source: 'IEC 60063',
        },
      },
      source: 'IEC 60063',
    };
  },
  'elements.l': (look, index) => exact(look, index),
  'elements.volts': (look, index) => {
    const chain = chainFormula(look, 'f_0');
    const coil = chain.parts[index]?.kind === 'coil';
    const ratio = coil
      ? `(${chain.branch(index)}) * ${rowAfter(chain, index + 1, 'current')}`
      : rowAfter(chain, index + 1, 'voltage');
    return {
      says: coil
        ? 'The current that flows on behind the coil, times the coil’s impedance.'
        : 'From the antenna back: what the parts behind make of its voltage.',
      formula: `sqrt(2 * P_ant * R_ant) * abs(${ratio})`,
      where: { ...chain.where, P_ant: 'output.pepAntenna' },
      source: 'chain matrices of the network, any text on two-ports',
    };
  },
  'elements.amps': (look, index) => {
    const coil = partsOf(look)[index]?.kind === 'coil';
    const where: Record<string, Bound> = { V_x: 'row.volts', f_0: 'plan.nominal' };
    if (coil) Object.assign(where, { L_x: 'row.l', Q_L: 'output.coilQ' });
    else Object.assign(where, { C_f: 'row.fittedC', Q_C: 'output.capacitorQ' });
    return {
      says: 'Voltage over the part’s own impedance, peak to rms.',
      formula: coil
        ? 'V_x / sqrt(2) / (2 * pi * f_0 * L_x * sqrt(1 + 1 / Q_L^2))'
        : 'V_x / sqrt(2) * 2 * pi * f_0 * C_f * sqrt(1 + 1 / Q_C^2)',
      where,
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
  'elements.heat': (look, index) => {
    const coil = partsOf(look)[index]?.kind === 'coil';
    const where: Record<string, Bound> = { V_x: 'row.volts', f_0: 'plan.nominal' };
    if (coil) Object.assign(where, { L_x: 'row.l', Q_L: 'output.coilQ' });
    else Object.assign(where, { C_f: 'row.fittedC', Q_C: 'output.capacitorQ' });
    return {
      says: 'Half the squared peak voltage times the part’s conductance.',
      formula: coil
        ? 'V_x^2 / 2 / (2 * pi * f_0 * L_x) / (Q_L + 1 / Q_L)'
        : 'V_x^2 / 2 * 2 * pi * f_0 * C_f / Q_C',
      where,
      source: 'closed form: power in a conductance',
      assumes: 'A steady tone; on speech a fifth of it.',
    };
  },
  'coils.label': named('The coils among the parts.'),
  'coils.l': (look, index) => exact(look, coilAt(look, index)),
  'coils.current': (look, index) => fromElement(look, index, 'amps', 'Arms'),
  'coils.voltage': (look, index) => fromElement(look, index, 'volts', 'Vpk'),
};

function named(says: string): Working {
  return { says, rule: says, where: {}, source: 'this program’s own naming' };
}

/** Place among the parts of the n-th coil. */
function coilAt(look: Look, n: number): number {
  const places = partsOf(look).flatMap(({ kind }, k) => (kind === 'coil' ? [k] : []));
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

/** The sum of the shares that make a part's exact value. */
function exact(look: Look, index: number): Working {
  const part = partsOf(look)[index];
  const where: Record<string, Bound> = {};
  const terms = (part?.shares ?? []).map((share, k) => term(look, share, part?.kind, k, where));
  const both = terms.length > 1;
  return {
    says: both
      ? 'Two capacitors that meet at one point are one: their values add.'
      : saysOf(part?.shares[0]),
    formula: terms.join(' + '),
    where,
    source: sourceOf(part?.shares ?? []),
  };
}

function term(
  look: Look,
  share: Share,
  kind: 'capacitor' | 'coil' | undefined,
  k: number,
  where: Record<string, Bound>,
): string {
  where.R_ant = 'plan.antenna';
  if (share.of === 'prototype') {
    const g = `g_${k + 1}`;
    where[g] = { value: share.g, unit: '1', says: 'value of the prototype' };
    where.f_c = 'output.cutoff';
    return kind === 'coil' ? `${g} * R_ant / (2 * pi * f_c)` : `${g} / (2 * pi * f_c * R_ant)`;
  }
  where.f_0 = 'plan.nominal';
  if (share.of === 'halfCoil') return 'R_ant / (2 * pi * f_0)';
  if (share.of === 'halfCapacitor') return '1 / (2 * pi * f_0 * R_ant)';
  where.R_c = 'transmit.collectorLoad';
  where.Q_pi = 'output.loadedQ';
  const sourceIsHigh =
    (look('transmit.collectorLoad') as number) >= (look('plan.antenna') as number);
  const [high, low] = sourceIsHigh ? ['R_c', 'R_ant'] : ['R_ant', 'R_c'];
  where.R_v = {
    formula: `${high} / (Q_pi^2 + 1)`,
    unit: 'Ω',
    says: 'virtual resistance in which both ends meet',
  };
  where.Q_low = {
    formula: `sqrt(max(0, ${low} / R_v - 1))`,
    unit: '1',
    says: 'loaded Q of the lower end',
  };
  if (share.of === 'piCoil') return 'R_v * (Q_pi + Q_low) / (2 * pi * f_0)';
  const isHigh = (share.of === 'piSource') === sourceIsHigh;
  const own = share.of === 'piSource' ? 'R_c' : 'R_ant';
  return `${isHigh ? 'Q_pi' : 'Q_low'} / (2 * pi * f_0 * ${own})`;
}

function saysOf(share: Share | undefined): string {
  if (share?.of === 'prototype')
    return 'The prototype’s value, brought to the antenna’s resistance and the cutoff.';
  if (share?.of === 'halfCoil' || share?.of === 'halfCapacitor') {
    return 'In a half-wave section every reactance equals the antenna’s resistance.';
  }
  return 'Two L matches back to back: both ends meet in a virtual resistance.';
}

function sourceOf(shares: readonly Share[]): string {
  return shares.some(({ of }) => of === 'prototype')
    ? 'Matthaei, Young, Jones, Microwave Filters, 1964, section 4.04'
    : 'closed form';
}

function ratingChain(): string {
  const steps = RATINGS.map((rating) => `2 * V_x / U <= ${rating} ? ${rating} : `).join('');
  return `${steps}2 * V_x / U`;
}
