import { type Core, cores } from '../../data/cores.ts';
import type { Problem, Seen, Work } from '../../fields/stage.ts';
import { format, formatTrimmed } from '../../quantity/format.ts';
import type { planFields } from '../plan/fields.ts';
import { APART, doubt, offsetOf } from './doubt.ts';
import type { coresFields } from './fields.ts';
import { type BoxLine, permeabilityOf, readBox } from './readBox.ts';
import type { coresReads } from './reads.ts';
import { servesAt, shelfOf } from './shelf.ts';

type CoresSeen = Seen<typeof planFields | typeof coresFields, typeof coresReads>;

/** Which cores and wire there are, and what the unknown one is. */
export function workCores(seen: CoresSeen): Work<typeof coresFields> {
  const lines = readBox(seen.box);
  const boxed = together(lines);
  const blocks = lines.flatMap(({ block }) => block?.key ?? []);
  const listed = lines.map(({ line, title, pieces, core, block }) => ({
    line,
    title,
    pieces: core || block ? pieces : null,
    al: core?.al ?? block?.al ?? null,
    serves: block ? ('windings' as const) : serves(core, seen.nominal),
  }));
  const trial = trialsOf(seen);
  const mu =
    trial.al !== null &&
    seen.outer !== null &&
    seen.inner !== null &&
    seen.height !== null &&
    seen.outer > seen.inner
      ? permeabilityOf(trial.al, seen.outer, seen.inner, seen.height)
      : null;
  return {
    results: {
      listed,
      pieces: listed.reduce((sum, { pieces }) => sum + (pieces ?? 0), 0),
      ...trial,
      offset: offsetOf(seen),
      doubt: doubt(seen, trial.apart),
      permeability: mu,
      likely: likely(trial.al, mu, seen),
      line: mu === null || trial.al === null ? null : lineOf(seen, trial.al),
      shelf: shelfOf(seen, seen.nominal, boxed, blocks, {
        former: seen.former,
        wire: seen.airWire,
        spacing: seen.airPitch,
      }),
    },
    problems: problems(seen, boxed, trial.apart, listed),
  };
}

/** Each core once, with all its pieces. */
function together(lines: readonly BoxLine[]): { readonly core: Core; readonly pieces: number }[] {
  const sums = new Map<string, { core: Core; pieces: number }>();
  for (const { core, pieces } of lines) {
    if (core === null) continue;
    const before = sums.get(core.title)?.pieces ?? 0;
    sums.set(core.title, { core, pieces: before + pieces });
  }
  return [...sums.values()];
}

const serves = (core: Core | null, frequency: number) => {
  if (core === null) return 'nothing' as const;
  if (core.mix.kind === 'ferrite') return 'windings' as const;
  return servesAt(core, frequency) ? ('coils' as const) : ('other' as const);
};

function trialsOf({ turns1, trial1, turns2, trial2 }: CoresSeen) {
  const al1 = turns1 === null || trial1 === null ? null : trial1 / turns1 ** 2;
  const al2 = turns2 === null || trial2 === null ? null : trial2 / turns2 ** 2;
  const both = al1 !== null && al2 !== null;
  const apart = both ? Math.abs(al1 - al2) / Math.min(al1, al2) : null;
  return {
    al1,
    al2,
    apart,
    agreement: apart === null ? null : apart > APART ? ('fails' as const) : ('holds' as const),
    al: both ? (al1 + al2) / 2 : (al1 ?? al2),
  };
}

/** Permeabilities that mixes are told apart by. Makers' figures, from memory. */
const kinds: readonly (readonly [number, string])[] = [
  [20, 'Powdered iron for tuned coils: red is mix 2, yellow mix 6'],
  [60, 'Powdered iron for chokes (mix 26 and its kind), no good for tuned coils'],
  [220, 'Nickel–zinc ferrite of low permeability, like mix 61'],
  [1300, 'Nickel–zinc ferrite of middle permeability, like mix 43'],
  [4000, 'Manganese–zinc ferrite, like mix 77'],
  [Number.POSITIVE_INFINITY, 'Ferrite of high permeability, for mains filters'],
];

/** Within so much of its factor a core of the table may be meant. */
const NEAR = 0.2;

function likely(al: number | null, mu: number | null, seen: CoresSeen): string | null {
  if (al === null || mu === null) return null;
  const kind = kinds.find(([below]) => mu < below)?.[1] ?? '';
  const outer = seen.outer ?? 0;
  const near = cores
    .filter((core) => Math.abs(core.size.outer / outer - 1) < 0.06)
    .filter((core) => Math.abs(core.al / al - 1) < NEAR)
    .map(({ title }) => title);
  return near.length === 0
    ? `${kind}. None of the cores known here has this size and factor.`
    : `${kind}. Its size and factor are those of ${near.join(', ')}.`;
}

function lineOf({ outer, inner, height }: CoresSeen, al: number): string {
  const mm = (m: number | null) => Number(((m ?? 0) * 1e3).toPrecision(4)).toString();
  const factor = formatTrimmed(al, 'H', 3).replace(/\s/g, '').replace('H', '').replace('µ', 'u');
  return `ring OD ${mm(outer)} ID ${mm(inner)} h ${mm(height)} AL ${factor}`;
}

function problems(
  seen: CoresSeen,
  boxed: ReturnType<typeof together>,
  apart: number | null,
  listed: readonly { readonly serves: string; readonly title: string | null }[],
): Problem[] {
  const out: Problem[] = [];
  const lost = listed.filter((row) => row.serves === 'nothing');
  if (lost.length > 0) {
    out.push({
      field: 'cores.box',
      weight: 'warns',
      says: `“${(lost[0]?.title ?? '').slice(0, 24)}”${lost.length > 1 ? ` and ${lost.length - 1} more` : ''} is no core known here.`,
      try: 'A name as in T50-2 or FT37-43, or dimensions and factor: ring OD 12.7 ID 7.7 h 4.8 AL 4.9n.',
    });
  }
  if (seen.coilCore === 'box' && !boxed.some(({ core }) => servesAt(core, seen.nominal))) {
    out.push({
      field: 'cores.coilCore',
      weight: 'warns',
      says: `Nothing in the box serves for tuned coils at ${format(seen.nominal, 'Hz', 3)}; the smallest that can be bought is taken.`,
      try: 'Powdered iron: T50-2 up to 10 MHz, T50-6 above, is what most builders keep.',
    });
  }
  if (apart !== null && apart > APART) {
    out.push({
      field: 'cores.trial2',
      weight: 'warns',
      says: `The two trials disagree by ${format(apart, '%', 2)}: inductance over the square of the turns should be the same.`,
      try: 'Count passes through the hole, spread both windings alike, and measure near the frequency of use.',
    });
  }
  if (seen.outer !== null && seen.inner !== null && seen.outer <= seen.inner) {
    out.push({
      field: 'cores.inner',
      weight: 'warns',
      says: 'The hole is as wide as the core.',
      try: 'Outer diameter and hole may be exchanged.',
    });
  }
  return out;
}
