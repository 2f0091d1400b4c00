import { StackBars } from '../../design/StackBars.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Row {
  readonly stage: string;
  readonly listening: number;
  readonly quiet: number;
  readonly speech: number;
  readonly tone: number;
}

const states = [
  ['listening', 'Listening'],
  ['quiet', 'Transmit, silent'],
  ['speech', 'Speaking'],
  ['tone', 'Steady tone'],
] as const;

/** Which stages stand together in the picture; the table has each by itself. */
const groups: readonly (readonly [string, readonly string[]])[] = [
  ['Final', ['Final']],
  ['Driver', ['Driver']],
  ['Two-way amplifiers', ['Two-way amplifiers']],
  ['Oscillators', ['Carrier oscillator', 'Conversion oscillator']],
  ['Microphone side', ['Microphone amplifier', 'Follower']],
  ['Audio and the rest', ['Audio preamplifier', 'Audio chip', 'Relays', 'Everything else']],
];

/** What the rig draws in each of its states, stage by stage. */
export function BudgetPicture() {
  const rows = useValue<readonly Row[]>('supply.budget');
  if (rows === null) return null;
  return (
    <StackBars
      label="Current by stage in each state"
      parts={groups.map(([name]) => name)}
      of={states.map(([key, label]) => ({
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
      }))}
    />
  );
}
