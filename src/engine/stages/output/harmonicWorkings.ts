import type { OwnLine } from '../../data/emission.ts';
import { limitFormula } from '../../data/limitFormula.ts';
import type { RuleSetKey } from '../../data/ruleSets.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { transimpedanceFormula } from './chainFormula.ts';
import type { outputFields } from './fields.ts';

type HarmonicKeys = `harmonics.${keyof (typeof outputFields)['results']['harmonics']['columns']}`;

export const harmonicWorkings: Pick<
  StageWorkings<typeof outputFields>,
  Extract<keyof StageWorkings<typeof outputFields>, HarmonicKeys>
> = {
  'harmonics.order': {
    says: 'From the second on.',
    formula: 'index + 2',
    where: { index: 'index' },
    source: 'counting',
  },
  'harmonics.frequency': {
    says: 'A multiple of the operating frequency.',
    formula: 'n * f_0',
    where: { n: 'row.order', f_0: 'plan.nominal' },
    source: 'definition of a harmonic',
  },
  'harmonics.current': (look, index) => ({
    says: 'From the pulse of collector current worked out in Transmit, without its sign.',
    formula: 'abs(I_n)',
    where: {
      I_n: {
        value: (look('transmit.harmonicCurrents') as readonly number[])[index + 2] ?? 0,
        unit: 'Apk',
        says: 'this harmonic of the collector current',
      },
    },
    source: 'Fourier coefficients of the clipped cosine: see Transmit',
    assumes: 'Near saturation a real final’s second harmonic swings by 20 dB with bias and drive.',
  }),
  'harmonics.transimpedance': (look) => ({
    says: 'One volt at the antenna is followed back through the parts to the current that makes it.',
    ...withFrequency(transimpedanceFormula(look, 'f'), 'row.frequency'),
    source: 'chain matrices of the network, any text on two-ports',
  }),
  'harmonics.level': {
    says: 'Voltage of this harmonic at the antenna over that of the fundamental.',
    formula: '20 * log10(I_n * Z_n / (I_1 * Z_T))',
    where: {
      I_n: 'row.current',
      Z_n: 'row.transimpedance',
      I_1: 'transmit.fundamental',
      Z_T: 'output.transimpedance',
    },
    source: 'definition of dBc',
  },
  'harmonics.limit': (look, index) => limit(look, index),
  'harmonics.margin': {
    says: 'From the level up to the limit.',
    formula: 'L_lim - L_n',
    where: { L_lim: 'row.limit', L_n: 'row.level' },
    source: 'definition',
  },
  'harmonics.outcome': (look, index) => {
    const rows = look('output.harmonics') as readonly { readonly margin: number | null }[];
    return rows[index]?.margin == null
      ? {
          says: 'The pulse has none of this harmonic.',
          rule: 'Without a level the harmonic is taken to hold.',
          where: {},
          source: 'the table’s own rule',
        }
      : outcome({ M_n: 'row.margin' }, 'M_n');
  },
};

/** Holds, close or fails, as a formula. */
export function outcome(where: Record<string, Bound>, margin: string): Working {
  return {
    says: 'Holds with the margin wanted; close without it; fails above the limit.',
    formula: `${margin} < 0 ? "fails" : ${margin} < M_want ? "close" : "holds"`,
    where: { ...where, M_want: 'output.marginWanted' },
    source: 'this program’s own scale',
  };
}

/** Binds the frequency of a row or point in front of the other symbols. */
export function withFrequency(
  made: { readonly formula: string; readonly where: Record<string, Bound> },
  path: string,
): { readonly formula: string; readonly where: Record<string, Bound> } {
  return { formula: made.formula, where: { f: path, ...made.where } };
}

function limit(look: Look, index: number): Working {
  const rows = look('output.harmonics') as readonly { readonly frequency: number }[];
  const { needs, where, ...told } = limitFormula(look('plan.rules') as RuleSetKey, {
    frequency: rows[index]?.frequency ?? 0,
    fundamental: look('plan.nominal') as number,
    power: look('output.pepAntenna') as number,
    own: look('plan.ownLimit') as number,
    ownLines: look('plan.ownRows') as readonly OwnLine[] | null,
  });
  return {
    ...told,
    where: {
      ...(needs.power ? { P: 'output.pepAntenna' } : {}),
      ...(needs.frequency ? { f_n: 'row.frequency' } : {}),
      ...(needs.own ? { A_own: 'plan.ownLimit' } : {}),
      ...where,
    },
  };
}
