import { format, formatSame } from '../../engine/quantity/format.ts';
import type { Unit } from '../../engine/quantity/units.ts';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import type { Point } from '../../engine/stages/bench/point.ts';
import type { PointRow } from '../../engine/stages/bench/pointRow.ts';

/** What stands in a row of test points, ready to read; null where there is nothing. */
export interface PointText {
  readonly expected: string | null;
  /** What holds: `6.3 to 9.1 mA`, `at most −43.0 dBc`. */
  readonly range: string | null;
  readonly measured: string | null;
  readonly off: string | null;
  /** The rule's limit, with its side. */
  readonly limit: string | null;
}

const sides = { atMost: 'at most', atLeast: 'at least' } as const;

/** A row's figures in its own unit, with the digits that its meter gives. */
export function pointText(point: Point, row: PointRow): PointText {
  const { unit, digits } = writing(point);
  const say = (value: number | null) => (value === null ? null : format(value, unit, digits));
  const limit = say(row.limit);
  return {
    expected: say(row.expected),
    range: range(row, unit, digits),
    measured: say(row.measured),
    off:
      row.off === null
        ? null
        : `${row.off > 0 ? '+' : ''}${format(row.off, unit === 'dBc' ? 'dB' : unit, unit.startsWith('dB') ? 3 : 2)}`,
    limit: limit === null || !point.limit ? null : `${sides[point.limit.sides]} ${limit}`,
  };
}

/** Unit of the table that a point is in, and the digits that its reading is given with. */
function writing({ group, read }: Point): { unit: Unit; digits: number } {
  const table = fieldAt(`bench.${group}`);
  const column = table?.kind === 'table' ? table.columns.expected : undefined;
  const reading = fieldAt(`bench.${read}`);
  if (column?.kind !== 'quantity' || reading?.kind !== 'quantity') {
    throw new Error(`no reading ${read}`);
  }
  return { unit: column.unit, digits: reading.digits ?? 3 };
}

function range({ low, high }: PointRow, unit: Unit, digits: number): string | null {
  if (low !== null && high !== null) {
    // So narrow that both ends differ in their last digits only: what is allowed says more.
    if (digits > 5) return `±${format((high - low) / 2, unit, 2)}`;
    const same = formatSame([low, high], unit, digits);
    return `${same.numbers.join(' to ')}\u00a0${same.unit}`;
  }
  if (high !== null) return `at most ${format(high, unit, digits)}`;
  return low === null ? null : `at least ${format(low, unit, digits)}`;
}
