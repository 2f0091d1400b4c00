import { useDeferredValue, useMemo } from 'react';
import { StackChart } from '../../design/chart/StackChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Row {
  readonly stage: string;
  readonly receiving: number;
  readonly listening: number;
  readonly silent: number;
  readonly speech: number;
  readonly tone: number;
}

const states = [
  ['receiving', 'Receive, volume down'],
  ['listening', 'Listening'],
  ['silent', 'Transmit, silent'],
  ['speech', 'Speaking'],
  ['tone', 'Steady tone'],
] as const;

/** Which stages stand together in the picture; the table has each by itself. */
const groups: readonly (readonly [string, readonly string[]])[] = [
  ['Final', ['Final']],
  ['Driver', ['Driver']],
  ['Two-way amplifiers', ['Two-way amplifiers']],
  ['Oscillators', ['Carrier oscillator', 'Conversion oscillator']],
  ['Audio, both ways', ['Microphone amplifier', 'Follower', 'Audio preamplifier', 'Audio chip']],
  ['Relays and the rest', ['Relays', 'Everything else']],
];

const parts = groups.map(([name]) => name);

/** What the rig draws in each of its states, stage by stage. */
export function BudgetPicture() {
  const rows = useDeferredValue(useValue<readonly Row[]>('supply.budget'));
  const props = useMemo(() => {
    if (rows === null) return null;
    const bars = states.map(([key, label]) => ({
      key,
      label,
      figure: format(
        rows.reduce((sum, row) => sum + row[key], 0),
        'A',
        3,
      ),
      values: groups.map(([, names]) =>
        rows.filter(({ stage }) => names.includes(stage)).reduce((sum, row) => sum + row[key], 0),
      ),
    }));
    const last = bars.at(-1);
    return {
      bars,
      summary: `From ${bars[0]?.figure} with the volume down to ${last?.figure} on a steady tone, the final’s part of that ${format(last?.values[0] ?? 0, 'A', 3)}.`,
      table: {
        columns: [
          { key: 'state', label: 'State', as: 'words' as const },
          ...parts.map((part) => ({ key: part, label: part })),
        ],
        rows: bars.map(({ key, label, values }) => ({
          key,
          cells: {
            state: label,
            ...Object.fromEntries(values.map((v, i) => [parts[i] ?? '', format(v, 'A', 3)])),
          },
        })),
      },
    };
  }, [rows]);
  return props === null ? null : (
    <StackChart title="Who takes how much, and when" parts={parts} {...props} />
  );
}
