import { useDeferredValue, useMemo } from 'react';
import { type Level, LevelChart } from '../../design/chart/LevelChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { receiveFields } from '../../engine/stages/receive/fields.ts';
import { useValue } from '../../store/hooks.ts';

const blockNames: Readonly<Record<string, string>> =
  receiveFields.results.chain.columns.block.options;

interface ChainRow {
  readonly block: string;
  readonly level: number;
  readonly share: number;
}

/** An S9 signal on its way from the antenna to the detector. */
export function ChainPicture() {
  const chain = useDeferredValue(useValue<readonly ChainRow[]>('receive.chain'));
  const levels = useMemo<readonly Level[]>(
    () =>
      (chain ?? []).map(({ block, level }, index) => ({
        key: `${index}`,
        label: blockNames[block] ?? block,
        level,
      })),
    [chain],
  );
  if (!chain || levels.length === 0) return null;
  const worst = chain.reduce((most, row) => (row.share > most.share ? row : most));
  return (
    <LevelChart
      title="An S9 signal behind each block"
      summary={`The largest part of the noise, ${format(worst.share, '%', 2)}, comes from here: ${blockNames[worst.block] ?? worst.block}.`}
      levels={levels}
    />
  );
}
