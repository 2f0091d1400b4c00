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

const watt = { value: 1, unit: 'W', says: 'one watt' } as const;

function limit(look: Look, index: number): Working {
  const nominal = look('plan.nominal') as number;
  const rows = look('output.harmonics') as readonly { readonly frequency: number }[];
  const frequency = rows[index]?.frequency ?? 0;
  const assumes = 'One steady tone at full drive: mean power and PEP are then equal.';
  switch (look('plan.rules')) {
    case 'us':
      return nominal < 30e6
        ? {
            says: 'At least 43 dB below the mean power, at any frequency.',
            formula: '-A',
            where: { A: { value: 43, unit: 'dB', says: 'attenuation asked for' } },
            source: 'US 47 CFR 97.307(d)',
            assumes,
          }
        : {
            says: '60 dB; up to 25 W at most 25 µW and 40 dB, never needing less than 10 µW.',
            formula:
              '-(P_ant / P_1 > 25 ? 60 : min(max(40, 10 * log10(P_ant / P_1 / 25e-6)), 10 * log10(P_ant / P_1 / 10e-6)))',
            where: { P_ant: 'output.pepAntenna', P_1: watt },
            source: 'US 47 CFR 97.307(e)',
            assumes,
          };
    case 'own':
      return {
        says: 'Your own figure.',
        formula: '-A_own',
        where: { A_own: 'plan.ownLimit' },
        source: 'as typed',
      };
    case 'cept': {
      const { asked, where } = ceptTable(frequency);
      return {
        says: 'By the table, or down to the absolute level, whichever asks less.',
        formula: `-min(${asked}, 10 * log10(P_ant / P_mW) - L_abs)`,
        where: {
          ...where,
          P_ant: 'output.pepAntenna',
          P_mW: { value: 1e-3, unit: 'W', says: 'one milliwatt' },
          L_abs: {
            value: frequency <= 1e9 ? -36 : -30,
            unit: 'dBm',
            says: 'absolute level that is always allowed',
          },
        },
        source: 'EN 301 783 as enacted in Austria, 2008',
        assumes,
      };
    }
    default:
      return {
        says: '43 dB and ten times the logarithm of the power in watts, but no more than a cap.',
        formula: '-min(43 + 10 * log10(P_ant / P_1), A_cap)',
        where: {
          P_ant: 'output.pepAntenna',
          P_1: watt,
          A_cap: { value: nominal < 30e6 ? 50 : 70, unit: 'dB', says: 'cap' },
        },
        source: 'ITU Radio Regulations, Appendix 3 (from memory)',
        assumes,
      };
  }
}

function ceptTable(frequency: number): { asked: string; where: Record<string, Bound> } {
  if (frequency > 35e6 && frequency < 50e6) {
    return {
      asked: '40 + 129.1 * log10(f_n / f_35)',
      where: {
        f_n: 'row.frequency',
        f_35: { value: 35e6, unit: 'Hz', says: 'where the table begins to rise' },
      },
    };
  }
  const value = frequency >= 50e6 || frequency < 1.7e6 ? 60 : 40;
  return { asked: 'A_tab', where: { A_tab: { value, unit: 'dB', says: 'by the table' } } };
}
