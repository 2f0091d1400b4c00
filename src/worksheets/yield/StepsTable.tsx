import { Table } from '../../design/Table.tsx';
import type { Steps } from '../../engine/errands/yield/yieldAnswer.ts';
import { betweenText, chanceText } from './chanceText.ts';

interface StepsTableProps {
  caption: string;
  heading: string;
  of: Steps;
  written: (value: number) => string;
}

/** Yield at several tolerances. */
export function StepsTable({ caption, heading, of, written }: StepsTableProps) {
  return (
    <Table
      caption={caption}
      columns={[
        { key: 'value', label: heading, as: 'words' },
        { key: 'yield', label: 'Yield' },
        { key: 'between', label: 'between' },
      ]}
      rows={of.at.map(({ value, chance }) => ({
        key: String(value),
        cells: {
          value: written(value),
          yield: chanceText(chance.share),
          between: betweenText(chance),
        },
      }))}
    />
  );
}
