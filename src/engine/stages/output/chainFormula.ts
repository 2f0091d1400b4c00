import type { Bound, Look } from '../../fields/workings.ts';
import { type NetworkAsked, network, type Part } from './network.ts';

/** A ladder as a product of matrices, for a formula: voltage and current over the antenna's. */
export interface ChainFormula {
  /** Product of the matrices of the parts from `first` on, ready to stand before `[1, 1]`. */
  readonly after: (first: number) => string;
  /** The impedance of one coil, or the admittance of one capacitor, over or times R_ant. */
  readonly branch: (k: number) => string;
  readonly where: Readonly<Record<string, Bound>>;
  readonly parts: readonly Part[];
  /** Ratio of the transformer as a symbol, or 1. */
  readonly ratio: string;
}

/**
 * The network as a formula. Each part is a matrix that takes voltage and current behind it to
 * voltage and current before it; R_ant makes both plain numbers.
 *
 * @param look reads values of the worked rig
 * @param f symbol of the frequency, bound by the caller or `f_0`
 */
export function chainFormula(look: Look, f: string): ChainFormula {
  const parts = partsOf(look);
  const stray = (look('output.selfCapacitance') as number) > 0;
  const hasCoil = parts.some(({ kind }) => kind === 'coil');
  const hasCapacitor = parts.some(({ kind }) => kind === 'capacitor');
  const where: Record<string, Bound> = { R_ant: 'plan.antenna', f_0: 'plan.nominal' };
  const transformed = look('output.match') === 'transformer';
  if (transformed) where.n_t = 'output.transformerRatio';
  if (hasCoil) where.Q_L = 'output.coilQ';
  if (hasCapacitor) where.Q_C = 'output.capacitorQ';
  if (hasCoil && stray) where.C_s = 'output.selfCapacitance';
  for (const { label, kind, fitted } of parts) {
    const value = { value: fitted, says: `${label} as fitted` } as const;
    where[symbolOf(label)] = { ...value, unit: kind === 'coil' ? 'H' : 'F' };
  }
  const branch = (k: number): string => {
    const part = parts[k];
    if (part === undefined) return '0';
    const x = symbolOf(part.label);
    if (part.kind === 'capacitor') return `2 * pi * ${f} * ${x} * R_ant * (i + 1 / Q_C)`;
    const skin = f === 'f_0' ? '' : ` * sqrt(${f} / f_0)`;
    const plain = `2 * pi * ${x} / R_ant * (i * ${f} + f_0 / Q_L${skin})`;
    return stray ? `1 / (1 / (${plain}) + i * 2 * pi * ${f} * C_s * R_ant)` : plain;
  };
  const matrix = (k: number): string =>
    parts[k]?.kind === 'coil' ? `[1, ${branch(k)}; 0, 1]` : `[1, 0; ${branch(k)}, 1]`;
  const after = (first: number): string =>
    parts
      .map((_, k) => matrix(k))
      .slice(first)
      .join(' * ');
  return { after, branch, where, parts, ratio: transformed ? 'n_t' : '1' };
}

/** Voltage (row 1) or current (row 2) behind part `first` − 1, over the antenna's. */
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

/** The parts, worked again from what the rig says. */
export function partsOf(look: Look): readonly Part[] {
  const made = network(askedOf(look));
  return 'refusal' in made ? [] : made.parts;
}

function askedOf(look: Look): NetworkAsked {
  return {
    nominal: look('plan.nominal') as number,
    antenna: look('plan.antenna') as number,
    collectorLoad: look('transmit.collectorLoad') as number,
    match: look('output.match') as NetworkAsked['match'],
    loadedQ: look('output.loadedQ') as number,
    lowpass: look('output.lowpass') as NetworkAsked['lowpass'],
    order: look('output.order') as number,
    cutoffRatio: look('output.cutoffRatio') as number,
    ripple: look('output.ripple') as number,
    fitted: look('output.fitted') as NetworkAsked['fitted'],
  };
}

/** `C1` → `C_1`. */
const symbolOf = (label: string): string => `${label.charAt(0)}_${label.slice(1)}`;
