import type { Unit } from '../quantity/units.ts';
import type { Emission } from './emission.ts';
import { askedBy, holds } from './ownLimit.ts';
import { type RuleSetKey, ruleSets } from './ruleSets.ts';

interface Given {
  readonly value: number;
  readonly unit: Unit;
  readonly says: string;
}

/** A limit as a formula, and what its symbols stand for. */
export interface LimitFormula {
  readonly says: string;
  /** Level of the limit against the wanted signal, negative. */
  readonly formula: string;
  readonly where: Readonly<Record<string, Given>>;
  /** Whether the formula has the wanted power `P`, the emission's frequency `f_n`, the figure `A_own`. */
  readonly needs: {
    readonly power: boolean;
    readonly frequency: boolean;
    readonly own: boolean;
  };
  readonly source: string;
  readonly assumes: string;
}

/** The formula by which a rule set's limit for one emission comes about. */
export function limitFormula(key: RuleSetKey, emission: Emission): LimitFormula {
  const told = forms[key](emission);
  const has = (symbol: string) => new RegExp(`\\b${symbol}\\b`).test(told.formula);
  return {
    ...told,
    needs: { power: has('P'), frequency: has('f_n'), own: has('A_own') },
    source: ruleSets[key].source,
    assumes: `One steady tone at full drive: mean power and PEP are then equal. ${figure}`,
  };
}

const figure = 'A planning figure: the text in force, a measurement and the operator decide.';

type Form = (emission: Emission) => Pick<LimitFormula, 'says' | 'formula' | 'where'>;

const dB = (value: number, says: string): Given => ({ value, unit: 'dB', says });
const P_1: Given = { value: 1, unit: 'W', says: 'one watt' };
const P_mW: Given = { value: 1e-3, unit: 'W', says: 'one milliwatt' };

const usFrom30: Form = ({ fundamental }) =>
  fundamental > 225e6
    ? {
        says: 'Above 225 MHz the text gives no figure.',
        formula: '-A',
        where: { A: dB(0, 'no figure') },
      }
    : {
        says: '60 dB; up to 25 W at most 25 µW and 40 dB, never needing less than 10 µW.',
        formula:
          '-(P / P_1 > 25 ? 60 : min(max(40, 10 * log10(P / P_1 / 25e-6)), 10 * log10(P / P_1 / 10e-6)))',
        where: { P_1 },
      };

const forms: Readonly<Record<RuleSetKey, Form>> = {
  us: (emission) =>
    emission.fundamental < 30e6
      ? {
          says: 'At least 43 dB below the mean power, at any frequency.',
          formula: '-A',
          where: { A: dB(43, 'attenuation asked for') },
        }
      : usFrom30(emission),
  usBefore2003: (emission) =>
    emission.fundamental < 30e6
      ? {
          says: 'At most 50 mW and at least 40 dB down; under 5 W 30 dB is enough.',
          formula: '-(P / P_1 < 5 ? 30 : max(40, 10 * log10(P / P_1 / 50e-3)))',
          where: { P_1 },
        }
      : usFrom30(emission),
  itu: ({ fundamental }) => ({
    says: '43 dB and ten times the logarithm of the power in watts, but no more than a cap.',
    formula: '-min(A_1 + 10 * log10(P / P_1), A_cap)',
    where: { A_1: dB(43, 'at one watt'), P_1, A_cap: dB(fundamental < 30e6 ? 50 : 70, 'cap') },
  }),
  cept: ({ frequency }) => {
    const { asked, where } = enTable(frequency);
    const L_abs: Given = {
      value: frequency <= 1e9 ? -36 : -30,
      unit: 'dBm',
      says: 'absolute level that is always allowed',
    };
    return {
      says: 'By the table, or down to the absolute level, whichever asks less.',
      formula: `-min(${asked}, 10 * log10(P / P_mW) - L_abs)`,
      where: { ...where, P_mW, L_abs },
    };
  },
  own: (emission) => {
    const lines = (emission.ownLines ?? []).filter((line) => holds(line, emission.frequency));
    const asked = lines.map((line) => askedBy(line, emission.power));
    const line = lines[asked.indexOf(Math.max(...asked))];
    if (line === undefined) {
      return {
        says: 'Your own figure; none of your lines holds this.',
        formula: '-A_own',
        where: {},
      };
    }
    const { below, absolute, whichever } = line;
    const level = '10 * log10(P / P_mW) - L_abs';
    const says = `Your own line for ${mega(line.from)} to ${mega(line.to)} MHz.`;
    const A: Given = dB(below ?? 0, 'below the wanted signal');
    const L_abs: Given = { value: absolute ?? 0, unit: 'dBm', says: 'as a level' };
    if (absolute === null) return { says, formula: '-A', where: { A } };
    if (below === null) return { says, formula: `-(${level})`, where: { P_mW, L_abs } };
    const pick = whichever === 'more' ? 'max' : 'min';
    return { says, formula: `-${pick}(A, ${level})`, where: { A, P_mW, L_abs } };
  },
};

const mega = (hertz: number | null) => Number(((hertz ?? 0) / 1e6).toPrecision(6));

function enTable(frequency: number): { asked: string; where: Record<string, Given> } {
  if (frequency > 35e6 && frequency < 50e6) {
    return {
      asked: 'A_35 + A_dec * log10(f_n / f_35)',
      where: {
        A_35: dB(40, 'up to 35 MHz'),
        A_dec: dB(129.1, 'more for each decade from there'),
        f_35: { value: 35e6, unit: 'Hz', says: 'where the table begins to rise' },
      },
    };
  }
  const asked = frequency < 0.15e6 ? 0 : frequency >= 50e6 || frequency < 1.7e6 ? 60 : 40;
  return { asked: 'A_tab', where: { A_tab: dB(asked, 'by the table') } };
}
