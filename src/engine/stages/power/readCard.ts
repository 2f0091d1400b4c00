import { formatTrimmed } from '../../quantity/format.ts';
import { type CardKey, cardParameters, leftOut } from './cardParameters.ts';

/** What a pasted model card says. */
export interface ReadCard {
  /** Name on the card; blank where there is none. */
  readonly name: string;
  /** A whole card, which has the published value for what it leaves out; else bare parameters. */
  readonly whole: boolean;
  /** Parameters understood, SI units; Infinity for one without limit. */
  readonly values: Readonly<Partial<Record<CardKey, number>>>;
  /** Parameters that the equations here leave out. */
  readonly leftOut: readonly string[];
  /** Names that no card of a bipolar transistor has. */
  readonly unknown: readonly string[];
  /** What else isn't used, each a sentence. */
  readonly says: readonly string[];
}

const byName = new Map(
  Object.entries(cardParameters).flatMap(([key, { names }]) =>
    names.map((name) => [name, key as CardKey] as const),
  ),
);

/** Factors that stand behind a number on a card; letters after them are units and mean nothing. */
const factors: readonly (readonly [string, number])[] = [
  ['MEG', 1e6],
  ['MIL', 25.4e-6],
  ['T', 1e12],
  ['G', 1e9],
  ['K', 1e3],
  ['M', 1e-3],
  ['U', 1e-6],
  ['µ', 1e-6],
  ['Μ', 1e-6],
  ['N', 1e-9],
  ['P', 1e-12],
  ['F', 1e-15],
];

/**
 * Understands a model card in the open notation of circuit simulators: a `.model` line with its
 * continuation lines, or bare `NAME=value` pairs. The first NPN card counts.
 */
export function readCard(text: string): ReadCard {
  const says: string[] = [];
  const { name, whole, body } = chosen(logicalLines(text), says);
  const values: Partial<Record<CardKey, number>> = {};
  const out: string[] = [];
  const unknown: string[] = [];
  for (const [, key = '', written = ''] of body.matchAll(/([^\s=(),]+)\s*=\s*([^\s=(),]*)/g)) {
    const parameter = key.toUpperCase();
    const known = byName.get(parameter);
    if (known === undefined) {
      (leftOut.has(parameter) ? out : unknown).push(shortened(parameter));
      continue;
    }
    const value = numberOf(written);
    if (value === null) says.push(`“${shortened(`${key}=${written}`)}” is not a number.`);
    else if (known in values) says.push(`${parameter} stands there twice; the first one counts.`);
    else take(known, value, values, says);
  }
  const junk = body.replace(/([^\s=(),]+)\s*=\s*([^\s=(),]*)/g, ' ').replace(/[\s(),+]+/g, ' ');
  if (junk.trim() !== '') says.push(`“${shortened(junk.trim())}” is not understood.`);
  return { name, whole, values, leftOut: [...new Set(out)], unknown: [...new Set(unknown)], says };
}

function take(
  key: CardKey,
  value: number,
  values: Partial<Record<CardKey, number>>,
  says: string[],
): void {
  const { names, range, unit, noneIsZero } = cardParameters[key];
  const [least, most] = range;
  if (noneIsZero && (value === 0 || value > most)) values[key] = Number.POSITIVE_INFINITY;
  else if (value >= least && value <= most) values[key] = value;
  else {
    const side = value < least ? 'small' : 'great';
    const bounds = `${formatTrimmed(least, unit)} to ${formatTrimmed(most, unit)}`;
    says.push(`${names[0]} is too ${side} to be meant: ${bounds} is taken.`);
  }
}

/** Lines without remarks, continuation lines joined. */
function logicalLines(text: string): string[] {
  const lines: string[] = [];
  for (const raw of text.split(/\r\n|\r|\n/)) {
    const line = (raw.split(/;|\s\$|^\$|\/\//)[0] ?? '').trim();
    if (line === '' || line.startsWith('*')) continue;
    if (line.startsWith('+') && lines.length > 0) lines[lines.length - 1] += ` ${line.slice(1)}`;
    else lines.push(line);
  }
  return lines;
}

/** The first card of an NPN, or all that is written where no line begins with `.model`. */
function chosen(lines: readonly string[], says: string[]) {
  const cards = lines.filter((line) => /^\.model\b/i.test(line));
  if (cards.length === 0) return { name: '', whole: false, body: lines.join(' ') };
  const parted = cards.map((line) =>
    /^\.model\s+(\S+)\s+\(?\s*(?:ako:\S+\s+)?([a-z]+)\b(.*)$/i.exec(line),
  );
  const npn = parted.find((parts) => parts?.[2]?.toUpperCase() === 'NPN');
  if (!npn) {
    says.push('There is no card of an NPN transistor; nothing is used.');
    return { name: '', whole: false, body: '' };
  }
  if (cards.length > 1) says.push('Of several cards the first one of an NPN transistor counts.');
  if (lines.length > cards.length) says.push('Lines that belong to no card are not used.');
  return { name: shortened(npn[1] ?? ''), whole: true, body: npn[3] ?? '' };
}

/** A number with its factor, or null. */
function numberOf(text: string): number | null {
  const parts = /^([-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?)([a-zµμΩ]*)$/i.exec(text);
  if (!parts) return null;
  const rest = (parts[2] ?? '').toUpperCase();
  const factor = factors.find(([letters]) => rest.startsWith(letters))?.[1] ?? 1;
  const value = Number(parts[1]) * factor;
  return Number.isFinite(value) ? value : null;
}

const shortened = (text: string) => (text.length > 24 ? `${text.slice(0, 23)}…` : text);
