import type { Ladder } from './ladder.ts';
import { type LadderTerm, ladderBranches } from './ladderFormulas.ts';
import { type TerminalFormulas, terminalFormulas } from './terminalFormulas.ts';

/** One figure of a ladder as a formula, with its symbols in the order of their working. */
export interface FigureFormula {
  readonly formula: string;
  readonly where: Readonly<Record<string, LadderTerm>>;
}

/**
 * Return loss at the source's end as a formula, dB: voltage and current there for one ampere in the
 * load, the source's impedance added and taken off. Where most comes back, the logarithm of their
 * ratio is written as an inverse hyperbolic tangent, which keeps its digits next to 0 dB.
 *
 * @param f symbol of the frequency
 */
export function returnLossFormula(ladder: Ladder, f: string): FigureFormula {
  const { where, source, voltage, current, drive } = terminals(ladder, f);
  const step = (formula: string, says: string): LadderTerm => ({ formula, unit: '1', says });
  return {
    formula:
      '2 * s_off < s_on ? 10 * log10(s_on / s_off) : 20 * atanh(4 * R_S / R_1 * p_in / (s_on + s_off)) / log(10)',
    where: {
      ...where,
      p_in: step(`re(${voltage} * conj(${current}))`, 'power that goes in'),
      s_on: step(`abs(${drive})^2`, 'with the source’s impedance added'),
      s_off: step(`abs(${voltage} - conj(${source} / R_1) * ${current})^2`, 'with it taken off'),
    },
  };
}

/**
 * Group delay as a formula, s: the imaginary part of the derivative of the source voltage (for one
 * ampere in the load) over itself. Each arm's matrix carries its own derivative beside it, so that
 * the product brings out the derivative of the whole.
 *
 * @param f symbol of the frequency
 */
export function delayFormula(ladder: Ladder, f: string): FigureFormula {
  const { where, drive, driveSlope, divisor, divisorSlope } = terminals(ladder, f);
  const past = divisor === '1' ? '' : ` - ${divisorSlope} / ${divisor}`;
  return { formula: `im(${driveSlope} / ${drive}${past}) / (2 * pi * ${f})`, where };
}

type Terminals = TerminalFormulas & Pick<FigureFormula, 'where'> & { readonly source: string };

function terminals(ladder: Ladder, f: string): Terminals {
  const { where, chains } = ladderBranches(ladder, [f]);
  const { branches = [], source = 'R_S', load = 'R_L', leak = null } = chains[0] ?? {};
  return { where, source, ...terminalFormulas(branches, source, load, leak) };
}
