import { stretchAt } from '../../circuit/ferritePermeability.ts';
import { wires } from '../../data/wires.ts';
import type { Bound, Look, Working } from '../../fields/workings.ts';
import { type Former, formers, formerTitled } from './former.ts';

/** Tables whose rows are windings on ferrite. */
export type FerriteTable = 'transformers' | 'transformerMixes' | 'chokes';

/** The former named in a row. */
export function rowFormer(look: Look, table: string, index: number): Former {
  const rows = look(`windings.${table}`) as readonly { readonly core: string }[];
  return formerTitled(rows[index]?.core ?? '') ?? (formers[0] as Former);
}

/** The frequency of a row: that of the rig, or the row's own. */
export const nominal: Bound = 'plan.nominal';

/** One part of the permeability, between two rows of the ferrite's curve. */
export function permeabilityOf(former: Former, frequency: number, f0: Bound, part: 1 | 2): Working {
  const { ferrite } = former;
  const { from, to } = stretchAt(ferrite.curve, frequency);
  const name = part === 1 ? 'μ′' : 'μ″';
  const point = (row: typeof from, which: 0 | 1 | 2): Bound => ({
    value: row[which],
    unit: which === 0 ? 'Hz' : '1',
    says: `${ferrite.title}: ${which === 0 ? 'frequency' : name} of a row of its curve`,
    source: ferrite.source,
  });
  return {
    says: 'Between two rows of the ferrite’s curve, on a straight line over logarithmic axes.',
    formula: 'mu_a * (mu_b / mu_a)^(log(f_0 / f_a) / log(f_b / f_a))',
    where: {
      f_0: f0,
      f_a: point(from, 0),
      f_b: point(to, 0),
      mu_a: point(from, part),
      mu_b: point(to, part),
    },
    source: ferrite.source,
    assumes: 'Small signals, 25 °C. A curve of the lot in the hand is better.',
  };
}

export function initial({ ferrite }: Former): Bound {
  return { value: ferrite.permeability, unit: '1', says: `${ferrite.title}: initial permeability` };
}

/** Cross section, path or surface of a former. */
export function sizeOf(former: Former, which: 'area' | 'path' | 'surface'): Bound {
  const says = {
    area: 'cross section',
    path: 'length of the magnetic path',
    surface: 'surface, by its dimensions',
  }[which];
  return {
    value: former[which],
    unit: which === 'path' ? 'm' : 'm²',
    says: `${former.title}: ${says}`,
    source: 'maker’s nominal dimensions, from memory',
  };
}

/** Inductance factor as the list has it. */
export function factorOf(former: Former): Working {
  return {
    says: former.key.startsWith('2x') ? 'Twice that of a single core.' : 'From the list of cores.',
    formula: 'A_L',
    where: {
      A_L: { value: former.al, unit: 'H/t²', says: former.title, source: former.source },
    },
    source: former.source,
    assumes: `Within ±${Math.round(100 * former.tolerance)} %.`,
  };
}

/** The makers' guideline as a step. */
export const guideStep: Record<string, Bound> = {
  B_1: { value: 15e-3, unit: 'T', says: '150 G, the guideline at 1 MHz' },
  f_1: { value: 1e6, unit: 'Hz', says: 'one megahertz' },
  B_lim: { formula: 'B_1 / sqrt(f_0 / f_1)', unit: 'T', says: 'guideline for the flux' },
};

const wireSource = 'IEC 60317-0-1 or ASTM B258, from memory';

/** A diameter of the wire named in a row. */
export function wireOf(
  look: Look,
  table: FerriteTable,
  index: number,
  which: 'bare' | 'overall',
): Bound {
  const rows = look(`windings.${table}`) as readonly { readonly wire: string }[];
  const wire = wires.find(({ title }) => title === rows[index]?.wire);
  const says = which === 'bare' ? 'copper of this wire' : 'this wire over its enamel';
  return { value: wire?.[which] ?? 0, unit: 'm', says, source: wireSource };
}

/** Copper diameter as the table of wires has it. */
export function copperOf(look: Look, table: FerriteTable, index: number): Working {
  return {
    says: 'From the table of wires.',
    formula: 'd_w',
    where: { d_w: wireOf(look, table, index, 'bare') },
    source: wireSource,
  };
}

/** Once round the former without the wire's own thickness, with what it needs. */
export function roundStep(former: Former): Record<string, Bound> {
  const size = (value: number, says: string): Bound => ({
    value,
    unit: 'm',
    says: `${former.title}: ${says}`,
    source: 'maker’s nominal dimensions, from memory',
  });
  const says = 'once round, the wire without thickness';
  return former.shape === 'ring'
    ? {
        h: size(former.height, 'height'),
        D_a: size(former.outer, 'outer diameter'),
        D: size(former.inner, 'diameter of the hole'),
        l_r: { formula: '2 * h + D_a - D', unit: 'm', says },
      }
    : {
        h: size(former.height, 'length'),
        s_h: size(former.apart, 'between the middles of its holes'),
        l_r: { formula: '2 * (h + s_h)', unit: 'm', says },
      };
}

/** Wire of a winding, tails included; `layer` counts half wires between its middle and the core. */
export function cutOf(former: Former, overall: Bound, layer: 1 | 3, turns: string): Working {
  return {
    says:
      layer === 1
        ? 'Each turn goes once round the section; a tail at each end.'
        : 'It lies on the first winding, one and a half wires off the core; a tail at each end.',
    formula: `N * (l_r + ${layer === 1 ? '' : '3 * '}pi * d_o) + 2 * l_t`,
    where: { ...roundStep(former), d_o: overall, N: turns, l_t: 'cores.tail' },
    source: 'geometry',
  };
}

/** Warming of a core by its heat. */
export function warming(former: Former): Working {
  return {
    says: 'A core warms with its heat over its surface, in still air.',
    formula: '(P_h / S_c / s_1)^0.833 * T_1',
    where: {
      P_h: 'row.taken',
      S_c: sizeOf(former, 'surface'),
      s_1: { value: 10, unit: 'W/m²', says: 'one milliwatt by square centimetre' },
      T_1: { value: 1, unit: 'K', says: 'warming at one milliwatt by square centimetre' },
    },
    source: 'common practice of core makers, from memory',
    assumes: 'Still air, no help from wire and board: within a third.',
  };
}
