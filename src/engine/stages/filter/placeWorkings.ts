import { couplings, type Family } from '../../circuit/couplings.ts';
import { seriesResonance } from '../../circuit/crystal.ts';
import { sideBySide } from '../../circuit/sideBySide.ts';
import type { Bound, Look, StageWorkings, Working, WorkingOf } from '../../fields/workings.ts';
import { found, reactanceMethod, step, susceptanceMethod, toGround } from './bounds.ts';
import type { filterFields } from './fields.ts';
import { byPosition, type PlaceRow } from './inPlace.ts';

type Workings = StageWorkings<typeof filterFields>;
type Key = 'fs' | 'lm' | 'rm' | 'c0';

const units = { fs: 'Hz', lm: 'H', rm: 'Ω', c0: 'F' } as const;

/** The crystals at a position: two where ends are doubled. */
function placed(look: Look, index: number): { label: string; fs: number; lm: number; c0: number } {
  const chain = couplings(
    look('filter.family') as Family,
    look('filter.crystals') as number,
    look('filter.ripple') as number,
  );
  const here = byPosition(placesOf(look) ?? [], chain)[index] ?? [];
  const [first] = here;
  const label = here.map((row) => row.label).join(' and ');
  if (here.length < 2) {
    return { label, fs: first?.fs ?? 0, lm: first?.lm ?? 0, c0: first?.c0 ?? 0 };
  }
  const one = sideBySide(
    here.map(({ fs, lm, rm, c0 }) => ({
      lm: lm ?? 0,
      cm: 1 / ((2 * Math.PI * (fs ?? 0)) ** 2 * (lm ?? 0)),
      rm: rm ?? 0,
      c0: c0 ?? 0,
    })),
  );
  return { label, fs: seriesResonance(one), lm: one.lm, c0: one.c0 };
}

const placesOf = (look: Look) => look('filter.places') as readonly PlaceRow[] | null;

/** What the design is made for: Quartz's, or the mean of those in place. */
const mean =
  (key: Key): WorkingOf =>
  (look) => {
    const places = placesOf(look);
    if (!places) {
      return {
        says: 'All crystals alike, as Quartz has them.',
        formula: 'p',
        where: { p: `quartz.${key}` },
        source: 'as on the Quartz sheet',
      };
    }
    const where: Record<string, Bound> = { n: found(places.length, '1', 'crystals in place') };
    places.forEach((row, i) => {
      where[`p_${i + 1}`] = found(row[key] ?? 0, units[key], `of crystal ${row.label}`);
    });
    const terms = Object.keys(where).slice(1);
    return {
      says: 'The mean of the crystals in place.',
      formula: `(${terms.join(' + ')}) / n`,
      where,
      source: 'definition',
    };
  };

interface BagRow {
  readonly label: string | null;
  readonly lm: number | null;
  readonly rm: number | null;
  readonly c0: number | null;
  readonly fs: number | null;
}

/** One figure of one crystal: measured, or Quartz's. */
const measured =
  (key: Key): WorkingOf =>
  (look) => {
    const label = look('row.label');
    const bag = (look('bag.rows') as readonly BagRow[] | null) ?? [];
    const value = bag.find((row) => row.label === label)?.[key] ?? null;
    return {
      says: value === null ? 'Not measured of this one: as Quartz has it.' : 'As measured.',
      formula: 'p',
      where: { p: value === null ? `quartz.${key}` : found(value, units[key], `of ${label}`) },
      source: value === null ? 'as on the Quartz sheet' : 'from the bag',
    };
  };

export const placeWorkings: Pick<
  Workings,
  | 'crystalFs'
  | 'crystalLm'
  | 'crystalRm'
  | 'crystalC0'
  | 'places.position'
  | 'places.label'
  | 'places.fs'
  | 'places.off'
  | 'places.lm'
  | 'places.rm'
  | 'places.c0'
  | 'alignedAt'
> = {
  crystalFs: mean('fs'),
  crystalLm: mean('lm'),
  crystalRm: mean('rm'),
  crystalC0: mean('c0'),
  'places.position': (_, index) => ({
    says: 'Places are counted from the source.',
    formula: 'i',
    where: { i: found(index + 1, '1', 'its place') },
    source: 'definition',
  }),
  'places.label': {
    says: 'As written in the bag.',
    rule: 'The label that was named for this place.',
    where: {},
    source: 'from the bag',
  },
  'places.fs': measured('fs'),
  'places.off': {
    says: 'Its series resonance against the mean of those in place.',
    formula: 'f_i - f_s',
    where: { f_i: 'row.fs', f_s: 'filter.crystalFs' },
    source: 'definition',
  },
  'places.lm': measured('lm'),
  'places.rm': measured('rm'),
  'places.c0': measured('c0'),
  alignedAt: (look) => alignedAt(look),
};

/** Steps to what a mesh in place lacks at `f_all`: its crystal's reactance, its couplings'. */
export function meshSteps(look: Look, index: number): Record<string, Bound> {
  const couplings = look('filter.couplings') as readonly { readonly exact: number }[];
  const sides: Record<string, Bound> = {};
  for (const junction of [index, index + 1]) {
    const side = couplings[junction - 1];
    if (side) {
      sides[`C_k${junction}`] = found(side.exact, 'F', `coupling at junction ${junction}`);
    }
  }
  const sum = Object.keys(sides)
    .map((c) => `1 / (2 * pi * f_all * (${c} + C_st))`)
    .join(' + ');
  return {
    ...placeSteps(look, index),
    C_st: 'filter.stray',
    ...sides,
    X_k: step(sum, 'Ω', 'of the coupling capacitors on its sides'),
  };
}

/** Steps to the reactance, at `f_all`, of the crystal at a place. */
function placeSteps(look: Look, index: number): Record<string, Bound> {
  const { label, fs, lm, c0 } = placed(look, index);
  return {
    f_s: found(fs, 'Hz', `series resonance of ${label}`),
    L_m: found(lm, 'H', `motional inductance of ${label}`),
    C_0: found(c0, 'F', `holder capacitance of ${label}`),
    C_m: step('1 / ((2 * pi * f_s)^2 * L_m)', 'F', 'its motional capacitance'),
    X_m: step('2 * pi * f_all * L_m - 1 / (2 * pi * f_all * C_m)', 'Ω', 'of its motional arm'),
    X_i: step('X_m / (1 - 2 * pi * f_all * C_0 * X_m)', 'Ω', 'of the crystal with its holder'),
  };
}

/** Steps to what a node with its own crystal to ground lacks at `f_all`. */
export function nodeSteps(look: Look, index: number): Record<string, Bound> {
  const couplings = look('filter.couplings') as readonly { readonly exact: number }[];
  const where: Record<string, Bound> = {
    ...placeSteps(look, index),
    C_st: 'filter.stray',
  };
  const terms = ['C_st'];
  for (const side of [index - 1, index]) {
    const coupling = couplings[side];
    if (!coupling) continue;
    terms.push(`C_k${side + 1}`);
    where[`C_k${side + 1}`] = found(coupling.exact, 'F', `coupling capacitor ${side + 1}`);
  }
  where.C_n = step(terms.join(' + '), 'F', 'stray and coupling capacitors of the node');
  return where;
}

function alignedAt(look: Look): Working {
  if (toGround(look)) return alignedNode(look);
  const meshes = look('filter.meshes') as readonly { readonly exact: number | null }[];
  const first = meshes.findIndex(({ exact }) => exact === null);
  return {
    says: `Mesh ${first + 1} resonates highest by itself, here: its crystal’s reactance cancels that of its couplings. It needs no capacitor.`,
    left: 'X_i',
    right: 'X_k',
    root: 'f_all',
    where: { f_all: 'filter.alignedAt', ...meshSteps(look, Math.max(first, 0)) },
    source: reactanceMethod,
    assumes: 'Loss left out; it moves nothing.',
  };
}

function alignedNode(look: Look): Working {
  const nodes = look('filter.meshes') as readonly { readonly exact: number | null }[];
  const least = look('filter.acrossFitted') as number;
  const first = nodes.findIndex(({ exact }) => exact === null || exact === least);
  return {
    says: `Node ${first + 1} resonates lowest by itself, here: its crystal’s susceptance cancels that of the capacitors there. It needs no more than all have.`,
    left: '1 / (2 * pi * f_all * X_i)',
    right: 'C_n + C_ac',
    root: 'f_all',
    where: {
      f_all: 'filter.alignedAt',
      C_ac: 'filter.acrossFitted',
      ...nodeSteps(look, Math.max(first, 0)),
    },
    source: susceptanceMethod,
    assumes: 'Loss left out; it moves nothing.',
  };
}
