import { memo } from 'react';
import { Table } from '../../design/Table.tsx';
import type { CompareAnswer, ComparedFigures } from '../../engine/errands/compare/compareAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import type { Unit } from '../../engine/quantity/units.ts';
import { foundIn } from './filterInks.ts';

type Line = readonly [
  key: keyof ComparedFigures,
  label: string,
  unit: Unit | 'count',
  digits: number,
];

const lines: readonly Line[] = [
  ['width3', 'Width at −3 dB', 'Hz', 4],
  ['width6', 'Width at −6 dB', 'Hz', 4],
  ['width60', 'Width at −60 dB', 'Hz', 4],
  ['shape', 'Shape, 60 to 6 dB', '1', 3],
  ['loss', 'Loss', 'dB', 3],
  ['ripple', 'Ripple', 'dB', 4],
  ['ends', 'End resistance', 'Ω', 3],
  ['carrier', 'Carrier', 'Hz', 7],
  ['carrierDown', 'Carrier down', 'dB', 3],
  ['audioLow6', 'Lowest tone at −6 dB', 'Hz', 3],
  ['audioHigh6', 'Highest tone at −6 dB', 'Hz', 4],
  ['suppression300', 'Other sideband at 300 Hz', 'dB', 3],
  ['suppression1k', 'Other sideband at 1 kHz', 'dB', 3],
  ['suppressionWorst', 'Other sideband at worst', 'dB', 3],
  ['delayVariation', 'Delay varies by', 's', 2],
  ['rise', 'Rise of a step', 's', 2],
  ['overshoot', 'Overshoot', '%', 2],
  ['settled', 'Settled after', 's', 2],
  ['crystals', 'Crystals', 'count', 0],
  ['capacitors', 'Capacitors', 'count', 0],
  ['values', 'of different values', 'count', 0],
];

/** All figures, a filter a column. */
export const ComparedTable = memo(function ComparedTable({ answer }: { answer: CompareAnswer }) {
  const filters = foundIn(answer);
  if (filters.length === 0) return null;
  return (
    <Table
      caption="Figures of each filter"
      narrow="scroll"
      columns={[
        { key: 'figure', label: 'Figure', as: 'words' },
        ...filters.map(({ name }) => ({ key: name, label: name })),
      ]}
      rows={lines.map(([key, label, unit, digits]) => ({
        key,
        cells: {
          figure: label,
          ...Object.fromEntries(
            filters.map(({ name, found }) => [name, written(found.figures[key], unit, digits)]),
          ),
        },
      }))}
    />
  );
});

function written(value: number | null, unit: Unit | 'count', digits: number): string {
  if (value === null) return '–';
  return unit === 'count' ? String(value) : format(value, unit, digits);
}
