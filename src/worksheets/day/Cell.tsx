import { Button } from '../../design/Button.tsx';
import type { MapPlace } from '../../design/chart/MapChart.tsx';
import { Table } from '../../design/Table.tsx';
import { cellSum } from '../../engine/errands/day/cellSum.ts';
import { type DayAnswer, ways } from '../../engine/errands/day/dayAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { sumItems } from '../../engine/stages/path/sumItems.ts';
import { useBench } from '../../store/store.ts';
import { cellWords } from './dayWords.ts';

interface CellProps {
  answer: DayAnswer;
  at: MapPlace;
  onPick: (place: MapPlace) => void;
}

/** One cell of the day: what arrives, its sum line by line, and the way to the Path leaf. */
export function Cell({ answer, at, onPick }: CellProps) {
  const sayAll = useBench((s) => s.sayAll);
  const rows = answer.distances.length;
  const index = at.column * rows + at.row;
  const sum = cellSum(answer, index);
  const move = (columns: number, by: number) =>
    onPick({
      column: (at.column + columns + 24) % 24,
      row: Math.min(rows - 1, Math.max(0, at.row + by)),
    });
  const take = () => {
    const way = ways[answer.way[index] ?? 0];
    const hops = answer.hops[index] ?? 0;
    const sky = way === 'e' || way === 'f2';
    sayAll(
      {
        'path.hour': `${at.column}h`,
        'path.distance': format(answer.distances[at.row] ?? 1, 'm', 3),
        'path.route': way === 'ground' ? 'groundWave' : 'skyWave',
        ...(sky ? { 'path.layer': way, 'path.hops': String(hops) } : { 'path.hops': '' }),
      },
      'Hour and distance taken from the day',
    );
    useBench.getState().show('path');
  };
  return (
    <section className="cell" aria-label="The cell looked at">
      <p className="cell__says" aria-live="polite">
        {cellWords(answer, at.column, at.row)}
      </p>
      <p className="cell__moves">
        <Button onPress={() => move(-1, 0)}>an hour earlier</Button>
        <Button onPress={() => move(1, 0)}>an hour later</Button>
        <Button onPress={() => move(0, -1)}>nearer</Button>
        <Button onPress={() => move(0, 1)}>farther</Button>
        <Button kind="strong" onPress={take}>
          Take it to Path
        </Button>
      </p>
      {sum.length > 0 && (
        <Table
          caption="Its sum, line by line"
          narrow="scroll"
          columns={[
            { key: 'item', label: 'Line', as: 'words' },
            { key: 'adds', label: 'Adds' },
            { key: 'level', label: 'Leaves' },
          ]}
          rows={sum.map(({ item, adds, level }) => ({
            key: item,
            cells: {
              item: sumItems[item],
              adds: adds === null ? '–' : format(adds, 'dB', 3),
              level: level === null ? '–' : format(level, 'dBm', 3),
            },
          }))}
        />
      )}
    </section>
  );
}
