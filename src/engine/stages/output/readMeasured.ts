import { parse } from '../../quantity/parse.ts';
import { tidy } from '../../quantity/tidy.ts';

/** What was measured of the parts as built, and lines that were not understood. */
export interface Measured {
  /** F or H by the part's name. */
  readonly values: ReadonlyMap<string, number>;
  readonly notes: readonly string[];
}

/** Lines that are read. */
const MOST = 40;

/** Reads lines such as `L2 1.73u` or `C1 = 268 pF`: several may stand in one line. */
export function readMeasured(text: string | null): Measured {
  const values = new Map<string, number>();
  const notes: string[] = [];
  const pieces = (text ?? '')
    .split(/\r\n|\n|\r|;|,(?=\s*[LC]\d)/i)
    .map((piece) => tidy(piece).trim())
    .filter((piece) => piece !== '' && !/^[!#%]/.test(piece))
    .slice(0, MOST);
  for (const piece of pieces) {
    const found = /^([LC]\d{1,2})\s*[:=]?\s*(\S.*)$/i.exec(piece);
    const label = found?.[1]?.toUpperCase() ?? '';
    const read = found ? parse(found[2] ?? '', label.startsWith('L') ? 'H' : 'F') : null;
    const value = read?.kind === 'value' ? read.value : Number.NaN;
    const [low, high] = label.startsWith('L') ? [1e-9, 1e-3] : [1e-13, 1e-6];
    if (value >= low && value <= high) values.set(label, value);
    else notes.push(piece.slice(0, 24));
  }
  return { values, notes };
}
