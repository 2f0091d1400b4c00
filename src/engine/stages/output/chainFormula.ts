import type { OutputLadder } from '../../circuit/outputLadder.ts';
import type { Bound, Look } from '../../fields/workings.ts';
import { branchOf } from './ladderOf.ts';

/** A row of the table of parts, so far as a formula needs it. */
export interface ElementRow {
  readonly label: string;
  readonly part: 'capacitor' | 'coil' | 'across';
  readonly exactC: number | null;
  readonly exactL: number | null;
  readonly fittedC: number | null;
  readonly l: number | null;
}

/** A ladder as a product of matrices, for a formula: voltage and current over the antenna's. */
export interface ChainFormula {
  /** Product of the matrices of the branches from `first` on, ready to stand before `[1, 1]`. */
  readonly after: (first: number) => string;
  /** The impedance of a branch in the path, or the admittance of one to ground, over or times R_ant. */
  readonly branch: (k: number) => string;
  readonly where: Readonly<Record<string, Bound>>;
  readonly branches: OutputLadder['branches'];
  /** Ratio of the transformer as a symbol, or 1. */
  readonly ratio: string;
}

/**
 * The network as built, as a formula. Each branch is a matrix that takes voltage and current behind
 * it to voltage and current before it; R_ant makes both plain numbers.
 *
 * @param look reads values of the worked rig
 * @param f symbol of the frequency, bound by the caller or `f_0`
 */
export function chainFormula(look: Look, f: string): ChainFormula {
  const { branches } = look('output.ladder') as OutputLadder;
  const labels = labelsOf(look);
  const where: Record<string, Bound> = { R_ant: 'plan.antenna', f_0: 'plan.nominal' };
  const transformed = look('output.match') === 'transformer';
  if (transformed) where.n_t = 'output.transformerRatio';
  const formulas = branches.map(({ place, l, c, ql, qc }, k) => {
    const label = labels[k] ?? '';
    const x = symbolOf(label);
    if (place === 'shunt') {
      where[x] = { value: c, unit: 'F', says: `${label} as fitted` };
      where.Q_C = 'output.capacitorQ';
      return `2 * pi * ${f} * ${x} * R_ant * (i + 1 / Q_C)`;
    }
    const n = label.slice(1);
    where[x] = { value: l, unit: 'H', says: `${label} as fitted` };
    where[`Q_L${n}`] =
      look('output.coilQ') === null
        ? { value: ql, unit: '1', says: `Q of ${label}, in the table of coils as wound` }
        : 'output.coilQ';
    const skin = f === 'f_0' ? '' : ` * sqrt(${f} / f_0)`;
    const plain = `2 * pi * ${x} / R_ant * (i * ${f} + f_0 / Q_L${n}${skin})`;
    if (c === 0) return plain;
    const trap = Number.isFinite(qc);
    const says = trap ? `across ${label}: fitted and its own` : `own capacitance of ${label}`;
    where[`C_s${n}`] = { value: c, unit: 'F', says };
    if (trap) where[`Q_s${n}`] = { value: qc, unit: '1', says: `Q of what lies across ${label}` };
    return `1 / (1 / (${plain}) + 2 * pi * ${f} * C_s${n} * R_ant * ${trap ? `(i + 1 / Q_s${n})` : 'i'})`;
  });
  const branch = (k: number): string => formulas[k] ?? '0';
  const matrices = branches.map(({ place }, k) =>
    place === 'series' ? `[1, ${branch(k)}; 0, 1]` : `[1, 0; ${branch(k)}, 1]`,
  );
  const after = (first: number): string => matrices.slice(first).join(' * ');
  return { after, branch, where, branches, ratio: transformed ? 'n_t' : '1' };
}

/** Voltage (row 1) or current (row 2) behind branch `first` − 1, over the antenna's. */
export function rowAfter(chain: ChainFormula, first: number, row: 'voltage' | 'current'): string {
  const pick = row === 'voltage' ? '[1, 0]' : '[0, 1]';
  const product = chain.after(first);
  return product === '' ? '1' : `(${pick} * (${product} * [1, 1]))`;
}

/** Transimpedance as a formula, and what its symbols stand for. */
export function transimpedanceFormula(look: Look, f: string) {
  const chain = chainFormula(look, f);
  const { ratio } = chain;
  const own = look('transmit.outputImpedance') !== null;
  const n = ratio === '1' ? '' : ` / ${ratio}`;
  const row = `[${own ? `R_ant / R_o${n}` : '0'}, ${ratio}]`;
  const product = chain.after(0);
  const whole = product === '' ? `(${row} * [1, 1])` : `((${row} * ${product}) * [1, 1])`;
  const where: Record<string, Bound> = { ...chain.where };
  if (own) where.R_o = 'transmit.outputImpedance';
  return { formula: `R_ant / abs${whole}`, where };
}

/** The table of parts. */
export const elementsOf = (look: Look): readonly ElementRow[] =>
  (look('output.elements') ?? []) as readonly ElementRow[];

/** Place among the ladder's branches of a row of the table of parts. */
export const placeOf = (look: Look, index: number): number =>
  branchOf(elementsOf(look).map(({ part }) => part))[index] ?? -1;

/** Names of the branches: a trap goes by its coil. */
function labelsOf(look: Look): string[] {
  return elementsOf(look).flatMap(({ part, label }) => (part === 'across' ? [] : [label]));
}

/** `C1` → `C_1`. */
export const symbolOf = (label: string): string => `${label.charAt(0)}_${label.slice(1)}`;
