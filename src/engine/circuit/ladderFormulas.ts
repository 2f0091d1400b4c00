import type { Unit } from '../quantity/units.ts';
import type { Ladder } from './ladder.ts';
import { type Branch, terminalFormulas } from './terminalFormulas.ts';

/** A number that stands in the formula, or a step on the way. */
export type LadderTerm =
  | { readonly value: number; readonly unit: Unit; readonly says: string }
  | { readonly formula: string; readonly unit: Unit; readonly says: string };

export interface LadderFormulas {
  /** Transducer gain in dB at each of the frequencies. */
  readonly formulas: readonly string[];
  /** Their symbols, in the order in which they are to be worked; frequencies are the caller's. */
  readonly where: Readonly<Record<string, LadderTerm>>;
}

/**
 * The transducer gain of a ladder as formulas that a reader can follow, at one or more frequencies:
 * the two-by-two chain matrices of crystals and capacitors, one after the other, between source and
 * load. Made from the ladder's own parts, it is worked by other code than `gainAt`.
 *
 * @param symbols the symbols of the frequencies; the formulas come back in their order
 */
export function ladderFormulas(ladder: Ladder, symbols: readonly string[]): LadderFormulas {
  const { where, chains } = ladderBranches(ladder, symbols);
  const formulas = chains.map(({ branches, source, load, leak }) => {
    const { drive, divisor } = terminalFormulas(branches, source, load, leak);
    const volts = divisor === '1' ? drive : `${drive} / ${divisor}`;
    return `10 * log10(4 * R_S * R_L / R_1^2 / abs(${volts})^2)`;
  });
  return { formulas, where };
}

export interface LadderBranches {
  readonly where: Readonly<Record<string, LadderTerm>>;
  /** For each frequency, from source to load. */
  readonly chains: readonly {
    readonly branches: readonly Branch[];
    readonly source: string;
    readonly load: string;
    /** Admittance past the whole filter by one siemens; null where nothing leaks. */
    readonly leak: string | null;
  }[];
}

/** The arms of a ladder as formulas, for whatever is to be made of them. */
export function ladderBranches(ladder: Ladder, symbols: readonly string[]): LadderBranches {
  const where: Record<string, LadderTerm> = {};
  const put = (name: string, value: number, unit: Unit, says: string): string => {
    where[name] = { value, unit, says };
    return name;
  };
  put('R_1', 1, 'Ω', 'one ohm, which makes plain numbers of the matrices');
  const source = endOf(ladder.source, 'S', 'source', put);
  const load = endOf(ladder.load, 'L', 'load', put);
  const leaks = ladder.leakage > 0;
  if (leaks) put('C_past', ladder.leakage, 'F', 'capacitance past the filter');
  const lossy = Number.isFinite(ladder.capacitorQ);
  if (lossy) put('Q_c', ladder.capacitorQ, '1', 'quality factor of the capacitors');
  const kinds = kindsOf(ladder);
  const toGround = ladder.form === 'shunt';
  for (const kind of new Set(kinds)) putCrystal(ladder, kinds, kind, put);
  const seen = new Map<string, string>();
  const part = (prefix: string, value: number, says: string): string => {
    const known = seen.get(`${prefix} ${value}`);
    if (known) return known;
    const before = [...seen.keys()].filter((key) => key.startsWith(`${prefix} `)).length;
    const name = `${prefix}${before + 1}`;
    seen.set(`${prefix} ${value}`, name);
    return put(name, value, 'F', says);
  };

  const chains = symbols.map((f) => {
    const tag = symbols.length > 1 ? `_${f.replaceAll('_', '')}` : '';
    const w = `2 * pi * ${f}`;
    for (const kind of new Set(kinds)) {
      Object.assign(where, toGround ? armStep(kind, tag, f) : crystalSteps(kind, tag, f));
    }
    const shunt = (c: number, stray: number, says: string): Branch[] => {
      const terms: string[] = [];
      if (c !== 0) terms.push(`${part('C_k', c, says)} * ${lossy ? '(1 / Q_c + i)' : 'i'}`);
      if (stray > 0) terms.push(`${part('C_y', stray, 'stray to ground')} * i`);
      if (terms.length === 0) return [];
      const value = `${w} * R_1 * (${terms.join(' + ')})`;
      return [{ place: 'shunt', value, slope: value }];
    };
    const series = (k: number): Branch => {
      const kind = kinds[k] ?? '';
      const c = ladder.series[k] ?? 0;
      const crystal = `R_x${kind}${tag} + i * X_x${kind}${tag}`;
      const crystalSlope = slopeOf(kind, tag, w);
      if (!(c > 0)) {
        return { place: 'series', value: `(${crystal}) / R_1`, slope: crystalSlope };
      }
      const capacitor = `${lossy ? '(1 / Q_c - i)' : '-i'} / (${w} * ${part('C_s', c, 'series capacitor')})`;
      return {
        place: 'series',
        value: `(${crystal} + ${capacitor}) / R_1`,
        slope: `(${crystalSlope} - (${capacitor}) / R_1)`,
      };
    };
    /** The crystal to ground and all that lies across it. */
    const node = (k: number): Branch[] => {
      const kind = kinds[k] ?? '';
      const arm = `R_1 / (R_m${kind} + i * X_m${kind}${tag})`;
      const armSlope = `-i * (${w} * L_m${kind} + 1 / (${w} * C_m${kind})) * R_1 / (R_m${kind} + i * X_m${kind}${tag})^2`;
      const holder = `i * ${w} * R_1 * C_0${kind}`;
      return [
        { place: 'shunt', value: `${arm} + ${holder}`, slope: `${armSlope} + ${holder}` },
        ...across(ladder.series[k] ?? 0, ladder.stray[k] ?? 0),
      ];
    };
    const across = (c: number, stray: number): Branch[] => {
      const terms: string[] = [];
      if (c > 0) {
        const name = part('C_s', c, 'capacitor across a crystal');
        terms.push(`${name} * ${lossy ? '(1 / Q_c + i)' : 'i'}`);
      }
      if (stray > 0) terms.push(`${part('C_y', stray, 'stray to ground')} * i`);
      if (terms.length === 0) return [];
      const value = `${w} * R_1 * (${terms.join(' + ')})`;
      return [{ place: 'shunt', value, slope: value }];
    };
    /** The coupling capacitor from one node to the next. */
    const link = (c: number): Branch => {
      const name = part('C_k', c, 'coupling capacitor');
      const value = `${lossy ? '(1 / Q_c - i)' : '-i'} / (${w} * R_1 * ${name})`;
      return { place: 'series', value, slope: `-(${value})` };
    };
    const branches = [...shunt(ladder.endC[0], 0, 'capacitor at the source')];
    for (let k = 0; k < ladder.lm.length; k += 1) {
      if (toGround) {
        branches.push(...node(k));
        if (k < ladder.coupling.length) branches.push(link(ladder.coupling[k] ?? 0));
        continue;
      }
      branches.push(series(k));
      if (k < ladder.coupling.length) {
        branches.push(
          ...shunt(ladder.coupling[k] ?? 0, ladder.stray[k] ?? 0, 'coupling capacitor'),
        );
      }
    }
    branches.push(...shunt(ladder.endC[1], 0, 'capacitor at the load'));
    const leak = leaks ? `(i * ${w} * R_1 * C_past)` : null;
    return { branches, source, load, leak };
  });
  return { where, chains };
}

/** Z = Zm/D with D = 1 + jωC0·Zm, so ωZ′ = (ωZm′ − jωC0·Zm²)/D². */
function slopeOf(kind: string, tag: string, w: string): string {
  const arm = `(R_m${kind} / R_1 + i * X_m${kind}${tag} / R_1)`;
  const armSlope = `(${w} * L_m${kind} + 1 / (${w} * C_m${kind})) / R_1`;
  return `i * (${armSlope} - ${w} * C_0${kind} * R_1 * ${arm}^2) / (a_x${kind}${tag} + i * b_x${kind}${tag})^2`;
}

type Put = (name: string, value: number, unit: Unit, says: string) => string;

function endOf([r, x]: readonly [number, number], mark: string, says: string, put: Put): string {
  put(`R_${mark}`, r, 'Ω', `resistance of the ${says}`);
  if (x === 0) return `R_${mark}`;
  put(`X_${mark}`, x, 'Ω', `reactance of the ${says}`);
  return `(R_${mark} + i * X_${mark})`;
}

/** A mark for the crystal of each position: none where all are alike, else its number. */
function kindsOf({ lm, cm, rm, c0 }: Ladder): string[] {
  const kinds: string[] = [];
  for (let k = 0; k < lm.length; k += 1) {
    let same = 0;
    while (lm[same] !== lm[k] || cm[same] !== cm[k] || rm[same] !== rm[k] || c0[same] !== c0[k]) {
      same += 1;
    }
    kinds.push(String(same + 1));
  }
  return new Set(kinds).size === 1 ? kinds.map(() => '') : kinds;
}

function putCrystal({ lm, cm, rm, c0 }: Ladder, kinds: string[], kind: string, put: Put): void {
  const k = kinds.indexOf(kind);
  const which = kind === '' ? '' : ` of crystal ${kind}`;
  put(`L_m${kind}`, lm[k] ?? 0, 'H', `motional inductance${which}`);
  put(`C_m${kind}`, cm[k] ?? 0, 'F', `motional capacitance${which}`);
  put(`R_m${kind}`, rm[k] ?? 0, 'Ω', `motional resistance${which}`);
  put(`C_0${kind}`, c0[k] ?? 0, 'F', `holder capacitance${which}`);
}

/** The reactance of the motional arm, of which a crystal to ground needs no more. */
const armStep = (kind: string, tag: string, f: string): Record<string, LadderTerm> => ({
  [`X_m${kind}${tag}`]: {
    formula: `2 * pi * ${f} * L_m${kind} - 1 / (2 * pi * ${f} * C_m${kind})`,
    unit: 'Ω',
    says: 'reactance of the motional arm',
  },
});

/** The crystal's resistance and reactance at a frequency, C0 in it. */
function crystalSteps(kind: string, tag: string, f: string): Record<string, LadderTerm> {
  const w = `2 * pi * ${f}`;
  const [xm, a, b] = [`X_m${kind}${tag}`, `a_x${kind}${tag}`, `b_x${kind}${tag}`];
  return {
    [xm]: {
      formula: `${w} * L_m${kind} - 1 / (${w} * C_m${kind})`,
      unit: 'Ω',
      says: 'reactance of the motional arm',
    },
    [a]: {
      formula: `1 - ${w} * C_0${kind} * ${xm}`,
      unit: '1',
      says: 'how C0 changes the reactance',
    },
    [b]: {
      formula: `${w} * C_0${kind} * R_m${kind}`,
      unit: '1',
      says: 'how C0 changes the loss',
    },
    [`R_x${kind}${tag}`]: {
      formula: `R_m${kind} / (${a}^2 + ${b}^2)`,
      unit: 'Ω',
      says: 'resistance of the crystal with C0',
    },
    [`X_x${kind}${tag}`]: {
      formula: `(${xm} * ${a} - R_m${kind} * ${b}) / (${a}^2 + ${b}^2)`,
      unit: 'Ω',
      says: 'reactance of the crystal with C0',
    },
  };
}
