import { useDeferredValue, useMemo } from 'react';
import { DotStripChart, type DotStripChartProps } from '../../design/chart/DotStripChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import type { BagRow, Use } from './bagRow.ts';
import { useUses } from './useUses.ts';

/** The lot as it is: every crystal at its frequency, those in use marked. */
export function LotPicture() {
  const rows = useValue<readonly BagRow[]>('bag.rows');
  const fs = useValue<number>('bag.fs');
  const spread = useValue<number>('bag.spread');
  const two = useValue<string>('bag.humps') === 'two';
  const uses = useUses();
  const drawn = useMemo(
    () => (rows === null || fs === null ? null : picture(rows, fs, spread, two, uses)),
    [rows, fs, spread, two, uses],
  );
  const late = useDeferredValue(drawn);
  return late && <DotStripChart {...late} />;
}

function picture(
  rows: readonly BagRow[],
  fs: number,
  spread: number | null,
  two: boolean,
  uses: ReadonlyMap<string, Use>,
): DotStripChartProps {
  const counted = rows
    .filter((row) => row.standing === 'counts' && row.off !== null)
    .sort((a, b) => (a.off ?? 0) - (b.off ?? 0));
  const [low, high] = [counted[0]?.off ?? 0, counted.at(-1)?.off ?? 0];
  const margin = Math.max(5, (high - low) * 0.06);
  const used = counted.filter(({ label }) => uses.has(label.toLowerCase())).length;
  return {
    title: 'The lot as it is',
    summary: [
      `Each crystal at its distance from the median, ${format(fs, 'Hz', 7)}.`,
      ...(spread === null ? [] : [`Standard deviation ${format(spread, 'Hz', 3)}.`]),
      ...(two ? ['It is two lots in one bag: one standard deviation says little of it.'] : []),
      used === 0
        ? 'None is in use yet.'
        : 'Filled with a number: its place in the filter. The lozenge: the carrier.',
    ].join(' '),
    dots: counted.map((row) => {
      const use = uses.get(row.label.toLowerCase());
      const at = { key: String(row.line), x: row.off ?? 0 };
      if (use?.kind === 'filter') return { ...at, kind: 'placed', text: String(use.position) };
      return use ? { ...at, kind: 'marked', text: 'c' } : { ...at, kind: 'plain' };
    }),
    from: low - margin,
    to: high + margin,
    xName: 'Hz from the median',
  };
}
