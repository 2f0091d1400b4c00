import '@fontsource/stix-two-math/latin.css';
import { toMathML, toMathMLWithNumbers } from '../../design/formula/toMathML.ts';
import { format } from '../../engine/quantity/format.ts';
import { shown } from '../../engine/rig/moved.ts';
import { type Reckoned, reckon } from '../../engine/rig/reckon.ts';
import type { Term, Unfolded } from '../../engine/rig/unfold.ts';
import { factored } from './factored.ts';

/** A working ready for the page. */
export interface Typeset {
  readonly label: string;
  /** MathML: symbol = formula; null where a rule in words takes its place. */
  readonly formula: string | null;
  /** The same with this rig's numbers. */
  readonly numbers: string | undefined;
  readonly value: string;
  /** For an equation that was solved: both sides with the root put in. */
  readonly residual: string | undefined;
  /** Steps that the formula leans on, each as MathML with its value. */
  readonly steps: readonly {
    readonly symbol: string;
    readonly says: string;
    readonly formula: string;
    readonly value: string;
  }[];
  readonly where: readonly {
    readonly symbol: string;
    readonly says: string;
    readonly value: string;
    readonly path: string | null;
  }[];
}

/** Longest formula that is also set with its numbers: beyond it nobody reads them. */
const LONGEST = 260;

/** Sets a working as MathML with this rig's numbers. Brings in mathjs: reach it by a lazy import. */
export function typeset(unfolded: Unfolded): Typeset {
  const { working, symbols, field } = unfolded;
  const reckoned = reckon(unfolded);
  const values = Object.fromEntries(symbols.map((term) => [term.name, figure(term, reckoned)]));
  const left = 'left' in working ? factored(working.left) : null;
  const right =
    'rule' in working ? null : factored('left' in working ? working.right : working.formula);
  const first = left ? left.formula : (field.symbol ?? '');
  const sides = right === null ? null : [first, right.formula].filter((side) => side !== '');
  const inNumbers = right === null ? null : left ? [left.formula, right.formula] : [right.formula];
  const matrices = [...(left?.matrices ?? []), ...(right?.matrices ?? [])];
  const used = (inNumbers ?? []).join(' ');
  return {
    label: field.label,
    formula: sides === null ? null : toMathML(sides).mathml,
    numbers:
      inNumbers === null || used.length > LONGEST || symbols.length === 0 || matrices.length > 0
        ? undefined
        : toMathMLWithNumbers(inNumbers, values).mathml,
    value: ownValue(unfolded),
    residual: residualOf(reckoned, unfolded),
    steps: [
      ...symbols
        .filter((term) => term.formula !== null)
        .map((term) => ({
          symbol: term.name,
          says: term.label,
          formula: toMathML([term.name, term.formula ?? '']).mathml,
          value: values[term.name] ?? '',
        })),
      ...matrices.map(({ symbol, formula }) => ({
        symbol,
        says: 'one part of the chain',
        formula: toMathML([symbol, formula]).mathml,
        value: '',
      })),
    ],
    where: symbols
      .filter((term) => term.formula === null)
      .map((term) => ({
        symbol: term.name,
        says: term.label,
        value: values[term.name] ?? '',
        path: term.path,
      })),
  };
}

function figure(term: Term, reckoned: Reckoned | null): string {
  const value = term.formula === null ? term.value : (reckoned?.steps[term.name] ?? null);
  if (typeof value === 'number') return format(value, term.unit, term.digits ?? 4);
  return value ?? '';
}

function ownValue({ field, value }: Unfolded): string {
  if (field.kind === 'list' && typeof value === 'number') {
    return format(value, field.unit, field.digits);
  }
  return shown(field, value);
}

function residualOf(reckoned: Reckoned | null, { working }: Unfolded): string | undefined {
  if (!('left' in working) || reckoned?.right === null || reckoned === null) return undefined;
  const left = Number(reckoned.value);
  const scale = Math.max(Math.abs(left), Math.abs(reckoned.right)) || 1;
  const off = Math.abs(left - reckoned.right) / scale;
  return `Root put back: the two sides differ by ${off === 0 ? 'nothing' : `${format(off, '1', 1)} of themselves`}.`;
}
