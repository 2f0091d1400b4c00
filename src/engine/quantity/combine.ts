import { literal } from './literal.ts';
import { type Reading, valueOr, wrong } from './reading.ts';
import { type Unit, unitRow } from './units.ts';

/** How parts of one kind go together in parallel. */
export const parallelLaw: Readonly<
  Partial<Record<Unit, { readonly adds: boolean; readonly says: string }>>
> = {
  F: { adds: true, says: 'capacitors in parallel add' },
  S: { adds: true, says: 'conductances in parallel add' },
  Ω: { adds: false, says: 'resistors in parallel: 1/R = 1/R₁ + 1/R₂' },
  H: { adds: false, says: 'coils in parallel, not coupled: 1/L = 1/L₁ + 1/L₂' },
};

/** What to say where things of a kind can't go in parallel. */
export const noParallel =
  'Only capacitors, resistors, coils and conductances can be put in parallel here.';

/**
 * Reads sums and parallels of plain engineering literals: 100p+47p, 100p||47p, 1k+2k2//10k.
 * Parallel binds before plus.
 *
 * @param text tidied
 * @return null if the text has another shape
 */
export function combine(text: string, unit: Unit): Reading | null {
  if (!/\+|\|\||\/\//.test(text.slice(1))) return null;
  let total = 0;
  let note: string | undefined;
  for (const term of text.split('+')) {
    const values: number[] = [];
    for (const part of term.split(/\|\||\/\//)) {
      const read = literal(part.trim(), unit);
      if (read === null) return null;
      if (read.kind === 'wrong') return read;
      values.push(read.value);
    }
    if (values.length > 1) {
      const law = parallelLaw[unit];
      if (!law) return wrong(noParallel);
      total += parallel(values, law.adds);
      note = law.says;
    } else {
      total += values[0] ?? 0;
    }
  }
  if (text.includes('+') && unitRow(unit).figures === 'decimals' && unit !== 'dB' && unit !== '°') {
    return wrong(`Values in ${unitRow(unit).shown} don't add up like this.`);
  }
  return valueOr(total, text, note);
}

/** Values of one kind in parallel: capacitors and conductances add, the others as reciprocals. */
export function parallel(values: readonly number[], adds: boolean): number {
  if (adds) return values.reduce((sum, value) => sum + value, 0);
  if (values.includes(0)) return 0;
  return 1 / values.reduce((sum, value) => sum + 1 / value, 0);
}
