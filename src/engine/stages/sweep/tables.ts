import type { RowOf } from '../../fields/kinds.ts';
import type { Sweep } from './chooseSweep.ts';
import type { sweepFields } from './fields.ts';
import type { Understood } from './understand.ts';

type Results = (typeof sweepFields)['results'];

const whats: Record<string, string> = {
  nothing: 'zero throughout: not measured',
  other: 'not used',
};

/** The columns of the text, and what each is taken for. */
export function columnRows({ text, sweep }: Understood): RowOf<Results['columns']['columns']>[] {
  return text.columns.map((column, i) => {
    const finite = (x: number | undefined) => (x !== undefined && Number.isFinite(x) ? x : null);
    return {
      column: i + 1,
      name: column.name === '' ? `Column ${i + 1}` : column.name,
      first: finite(column.values[0]),
      last: finite(column.values.at(-1)),
      taken: takenFor(sweep, i + 1) ?? whats[column.holds] ?? 'not used',
    };
  });
}

function takenFor(sweep: Sweep | null, column: number): string | null {
  if (sweep === null) return null;
  const { taken, reads, unit, reflection } = sweep;
  if (column === taken.frequency) return `frequency in ${unit}`;
  const from = reflection ? ', of a reflection' : '';
  if (column === taken.level) {
    const what = { dB: 'level in dB', dBAngle: 'level in dB', parts: 'real part' };
    return `${what[reads as 'dB'] ?? 'voltage or ratio'}${from}`;
  }
  if (column !== taken.second) return null;
  return `${reads === 'parts' ? 'imaginary part' : 'angle'}${from}`;
}

/** What was odd about the text. */
export function noticeRows(
  { text, sweep, loose }: Understood,
  thinned: number,
  discounted: number,
): RowOf<Results['notices']['columns']>[] {
  const rows = text.notes.map(({ lines, says }) => ({ lines, says }));
  const add = (lines: number, says: string) => {
    if (lines > 0) rows.push({ lines, says });
  };
  if (sweep !== null) {
    add(sweep.unsorted, 'Rows are out of order; they were sorted by frequency.');
    add(sweep.dropped, 'Rows without a usable level are left out.');
    if (sweep.reflection) {
      add(
        1,
        'One port: half of one minus the reflection is what a fixture of half the resistance passes.',
      );
    }
  }
  if (loose) add(1, 'Volts without those of a wire: the level is left free.');
  add(thinned, 'Rows far from the peak are left out: there are more than are needed.');
  add(discounted, 'Rows lie far off the fitted curve and count less.');
  return rows;
}
