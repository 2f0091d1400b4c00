import type { Bound, Look, StageWorkings } from '../../fields/workings.ts';
import { airWorkings } from './airWorkings.ts';
import { chokeWorkings } from './chokeWorkings.ts';
import { coilWorkings } from './coilWorkings.ts';
import type { windingsFields } from './fields.ts';
import { transformerWorkings } from './transformerWorkings.ts';

export const windingsWorkings: StageWorkings<typeof windingsFields> = {
  ...coilWorkings,
  ...airWorkings,
  ...transformerWorkings,
  ...chokeWorkings,
  leastQ: (look) => ({
    says: 'The least of all coils.',
    ...over(look, 'q', 'Q', (names) => `min(${names.join(', ')})`),
    source: 'the table of coils',
  }),
  wireTotal: (look) => ({
    says: 'All lengths added.',
    ...over(look, 'length', 'l', (names) => names.join(' + ')),
    source: 'the table of coils',
  }),
};

/** A formula over one column of the table of coils. */
function over(
  look: Look,
  column: 'q' | 'length',
  symbol: string,
  join: (names: readonly string[]) => string,
): { formula: string; where: Record<string, Bound> } {
  const onAir = (look('windings.coils') as readonly unknown[]).length === 0;
  const table = onAir ? 'windings.airCoils' : 'windings.coils';
  const key = onAir && column === 'length' ? 'wire' : column;
  const rows = look(table) as readonly Record<string, number>[];
  const where: Record<string, Bound> = {};
  rows.forEach((row, i) => {
    where[`${symbol}_${i + 1}`] = {
      value: row[key] ?? 0,
      unit: column === 'q' ? '1' : 'm',
      says: `coil ${i + 1} of the table`,
    };
  });
  return { formula: join(Object.keys(where)), where };
}
