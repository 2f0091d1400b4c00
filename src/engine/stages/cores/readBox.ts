import { type Core, cores, mixes } from '../../data/cores.ts';
import { parse } from '../../quantity/parse.ts';

/** One line of the box. */
export interface BoxLine {
  readonly line: number;
  readonly title: string;
  readonly pieces: number;
  /** Null where the line was not understood. */
  readonly core: Core | null;
}

/** Lines that are read, and pieces that one line may hold. */
const MOST = 60;
const PIECES = 999;

const MU0_OVER_2PI = 2e-7;

/** Permeability above which a ring is taken for ferrite. */
export const FERRITE_FROM = 30;

/** Takes the list of cores apart; a line that is not understood stays a line. */
export function readBox(text: string | null): readonly BoxLine[] {
  return (text ?? '')
    .split(/\r\n|\n|\r/)
    .map((line, i) => [line.trim(), i + 1] as const)
    .filter(([line]) => line !== '' && !/^[!#%]/.test(line))
    .slice(0, MOST)
    .map(([line, number]) => known(line, number) ?? unknown(line, number));
}

function known(line: string, number: number): BoxLine | null {
  const plain = (name: string) => name.toLowerCase().replace(/[\s_]/g, '');
  const start = plain(line);
  const core = [...cores]
    .sort((a, b) => b.title.length - a.title.length)
    .find(({ title, key }) => start.startsWith(plain(title)) || start.startsWith(plain(key)));
  if (!core) return null;
  const rest = start.startsWith(plain(core.title))
    ? start.slice(plain(core.title).length)
    : start.slice(plain(core.key).length);
  // T50-2 must not be read out of T50-26.
  if (/^\d/.test(rest) && !/\s/.test(line)) return null;
  return { line: number, title: core.title, pieces: piecesIn(rest), core };
}

function piecesIn(rest: string): number {
  const found = /(\d{1,3})/.exec(rest);
  return Math.max(1, Math.min(PIECES, Number(found?.[1] ?? 1)));
}

/** A ring by its dimensions in millimetres and its inductance factor. */
function unknown(line: string, number: number): BoxLine {
  const figure = (name: string) => {
    const found = new RegExp(`\\b${name}\\s*[:=]?\\s*(\\d+(?:[.,]\\d+)?)`, 'i').exec(line);
    return found ? Number((found[1] ?? '').replace(',', '.')) * 1e-3 : null;
  };
  const outer = figure('OD');
  const inner = figure('ID');
  const height = figure('h');
  const factor = /\bAL\s*[:=]?\s*(\S+)/i.exec(line)?.[1] ?? '';
  const read = parse(factor, 'H');
  const al = read.kind === 'value' ? read.value : Number.NaN;
  const title = line.replace(/[,;]?\s*\b(OD|ID|h|AL)\b.*$/i, '').trim() || 'unmarked ring';
  const sound =
    outer !== null &&
    inner !== null &&
    height !== null &&
    outer > inner &&
    outer < 0.2 &&
    inner > 0.5e-3 &&
    height > 0.2e-3 &&
    height < 0.2 &&
    al > 1e-11 &&
    al < 1e-3;
  if (!sound) return { line: number, title: line.slice(0, 40), pieces: 1, core: null };
  const mu = permeabilityOf(al, outer, inner, height);
  return {
    line: number,
    title: title.slice(0, 40),
    pieces: 1,
    core: {
      key: `box${number}`,
      title: title.slice(0, 40),
      size: {
        outer,
        inner,
        height,
        path: (Math.PI * (outer + inner)) / 2,
        area: ((outer - inner) / 2) * height,
      },
      mix: { ...(mu < FERRITE_FROM ? mixes[2] : mixes[43]), title: 'unmarked', permeability: mu },
      al,
      generation: null,
      source: 'measured by the user',
      year: null,
    },
  };
}

/**
 * Permeability of a toroid of rectangular section: A_L·2π/(μ₀·h·ln(OD/ID)).
 *
 * @param al H, @param outer, inner, height m
 */
export const permeabilityOf = (al: number, outer: number, inner: number, height: number): number =>
  al / (MU0_OVER_2PI * height * Math.log(outer / inner));
