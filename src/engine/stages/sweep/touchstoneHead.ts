import { type FrequencyUnit, linesOf } from './sweepText.ts';

/** What a Touchstone file says before its numbers, and the lines that may hold them. */
export interface TouchstoneHead {
  readonly version: 1 | 2;
  readonly unit: FrequencyUnit;
  readonly unitSupposed: boolean;
  readonly format: 'MA' | 'DB' | 'RI';
  /** Ω */
  readonly reference: number;
  readonly ports: number | null;
  readonly order: '21_12' | '12_21';
  readonly data: readonly string[];
}

interface Option {
  unit: FrequencyUnit | null;
  parameter: string;
  format: TouchstoneHead['format'];
  reference: number | null;
}

const unitsOf: Record<string, FrequencyUnit> = { HZ: 'Hz', KHZ: 'kHz', MHZ: 'MHz', GHZ: 'GHz' };

/** An option line in its parts; null where the line is none. */
export function touchstoneOption(line: string): Option | null {
  const body = /^\s*#([^!]*)/.exec(line)?.[1];
  if (body === undefined) return null;
  const option: Option = { unit: null, parameter: 'S', format: 'MA', reference: null };
  let known = 0;
  const words = body
    .toUpperCase()
    .replace(/\bR\s*([\d.]+)/g, ' R $1 ')
    .trim()
    .split(/[\s,;]+/);
  for (let i = 0; i < words.length; i += 1) {
    const word = words[i] ?? '';
    const unit = unitsOf[word];
    const ohms = Number(words[i + 1]);
    if (unit !== undefined) option.unit = unit;
    else if (/^[SYZGH]$/.test(word)) option.parameter = word;
    else if (word === 'MA' || word === 'DB' || word === 'RI') option.format = word;
    else if (word === 'R' && ohms > 0) {
      option.reference = ohms;
      i += 1;
    } else return known > 1 ? option : null;
    known += 1;
  }
  return known > 0 ? option : null;
}

/** Reads option line and keywords; what is odd about them goes to `say`. */
export function touchstoneHead(
  text: string,
  say: (lines: number, says: string) => void,
): TouchstoneHead {
  let option: Option | null = null;
  let repeated = 0;
  let version: 1 | 2 = 1;
  let ports: number | null = null;
  let order: TouchstoneHead['order'] = '21_12';
  let reference: number | null = null;
  let aside = false;
  const data: string[] = [];
  for (const line of linesOf(text)) {
    const found = touchstoneOption(line);
    if (found !== null) {
      if (option === null) option = found;
      else repeated += 1;
      continue;
    }
    const keyword = /^\s*\[([^\]]*)\]([^!]*)/.exec(line);
    if (keyword === null) {
      if (!aside) data.push(line);
      continue;
    }
    const name = (keyword[1] ?? '').trim().toLowerCase();
    const value = (keyword[2] ?? '').trim();
    if (name === 'version') version = value.startsWith('1') ? 1 : 2;
    else if (name === 'number of ports') ports = Number.parseInt(value, 10) || null;
    else if (name === 'two-port data order') order = value.startsWith('12') ? '12_21' : '21_12';
    else if (name === 'reference') reference = Number.parseFloat(value) || null;
    else if (name === 'begin information') aside = true;
    else if (name === 'end information') aside = false;
    else if (name === 'noise data' || name === 'end') break;
  }
  if (repeated > 0) say(repeated, 'The option line is repeated; the first one counts.');
  if (option === null) say(1, 'There is no option line: GHz, S, MA and 50 Ω are the standard’s.');
  else if (option.unit === null)
    say(1, 'The option line names no unit: by the standard it is GHz.');
  if (option !== null && option.parameter !== 'S') {
    say(1, `The rows hold ${option.parameter} parameters; only S can be fitted.`);
  }
  if (ports !== null && ports > 2) say(1, `${ports} ports: only one or two are read.`);
  return {
    version,
    unit: option?.unit ?? 'GHz',
    unitSupposed: (option?.unit ?? null) === null,
    format: option?.format ?? 'MA',
    reference: reference ?? option?.reference ?? 50,
    ports,
    order,
    data,
  };
}
