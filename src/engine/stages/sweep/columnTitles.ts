import type { Holds, SweepColumn } from './sweepText.ts';

export interface Title {
  readonly name: string;
  readonly unit: string;
}

/** Columns with a name, a unit and a guess at what they hold. */
export function named(
  titles: readonly Title[] | null,
  units: readonly string[],
  values: readonly Float64Array[],
): { columns: SweepColumn[]; unitSupposed: boolean } {
  const given = values.map((_, i) => ({
    name: titles?.[i]?.name ?? `Column ${i + 1}`,
    unit: titles?.[i]?.unit || units[i] || '',
  }));
  const frequency = frequencyColumn(given, values);
  const along = values[frequency];
  const supposed = given[frequency]?.unit === '';
  const rest = values.map((_, i) => i).filter((i) => i !== frequency);
  const guesses = guessed(
    rest.map((i) => given[i] ?? { name: '', unit: '' }),
    rest.map((i) => values[i] ?? new Float64Array()),
  );
  const columns = values.map((column, i): SweepColumn => {
    const { name = '', unit = '' } = given[i] ?? {};
    if (i === frequency) {
      const plausible = supposed && along ? plausibleUnit(along) : unit;
      return { name, unit: plausible, holds: 'frequency', values: column };
    }
    const holds = guesses[rest.indexOf(i)] ?? 'other';
    // A loss is written as a positive figure.
    const turned = holds === 'level' && /loss|atten/i.test(name) && mostlyAbove(column);
    return {
      name: turned ? `${name}, sign turned` : name,
      unit: unit || (holds === 'level' ? 'dB' : ''),
      holds,
      values: turned ? column.map((x) => -x) : column,
    };
  });
  return { columns, unitSupposed: supposed };
}

const mostlyAbove = (column: Float64Array): boolean =>
  column.filter((x) => x > 0).length > column.length / 2;

/** By name or unit; else the column that rises or falls throughout and is largest. */
function frequencyColumn(given: readonly Title[], values: readonly Float64Array[]): number {
  const byUnit = given.findIndex(({ unit }) => /hz$/i.test(unit));
  if (byUnit >= 0) return byUnit;
  const byName = given.findIndex(({ name }) => /freq|^f$|^f[ _(]|hz$/i.test(name));
  if (byName >= 0) return byName;
  let best = 0;
  let largest = 0;
  values.forEach((column, i) => {
    const size = Math.abs(column[0] ?? 0);
    if (size > 1.5 * largest && monotonic(column)) [best, largest] = [i, size];
  });
  return best;
}

function monotonic(column: Float64Array): boolean {
  let ups = 0;
  for (let i = 1; i < column.length; i += 1) {
    if ((column[i] ?? 0) >= (column[i - 1] ?? 0)) ups += 1;
  }
  return ups > 0.8 * (column.length - 1) || ups < 0.2 * (column.length - 1);
}

/** The unit in which the frequencies would be those of a crystal. */
export function plausibleUnit(frequency: Float64Array): 'Hz' | 'kHz' | 'MHz' | 'GHz' {
  const middle = Math.abs(frequency[frequency.length >> 1] ?? 0);
  if (middle >= 3e5) return 'Hz';
  if (middle >= 300) return 'kHz';
  return middle >= 0.3 ? 'MHz' : 'GHz';
}

/** What the columns beside the frequency hold. */
function guessed(given: readonly Title[], values: readonly Float64Array[]): Holds[] {
  const holds = given.map(({ name, unit }): Holds => {
    if (/^re\b|^re[(\s_]|real/i.test(name)) return 'real';
    if (/^im\b|^im[(\s_]|imag/i.test(name)) return 'imaginary';
    if (/^db/i.test(unit) || /\bdb\b|loss|gain|level|atten/i.test(name)) return 'level';
    if (/deg|°|rad/i.test(unit) || /phase|angle|arg|deg/i.test(name)) return 'angle';
    if (/^[mµuk]?v/i.test(unit) || /volt|mag|abs|amplitude|lin/i.test(name)) return 'voltage';
    return 'other';
  });
  if (holds.includes('level') || holds.includes('voltage')) return holds;
  if (holds.includes('real') && holds.includes('imaginary')) return holds;
  // Nothing is said: the numbers must tell.
  const [first, second] = values;
  if (first === undefined) return holds;
  const wide = (column: Float64Array, limit: number) => column.some((x) => Math.abs(x) > limit);
  const negative = (column: Float64Array) => column.some((x) => x < 0);
  if (
    second !== undefined &&
    negative(first) &&
    negative(second) &&
    !wide(first, 1.5) &&
    !wide(second, 1.5)
  ) {
    return ['real', 'imaginary', ...holds.slice(2)];
  }
  const one: Holds = negative(first) ? 'level' : 'voltage';
  const two: Holds[] =
    second !== undefined && negative(second) && wide(second, 3.2) && !wide(second, 361)
      ? ['angle']
      : [];
  return [one, ...two, ...holds.slice(1 + two.length)];
}
