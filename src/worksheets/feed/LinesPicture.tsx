import { useMemo } from 'react';
import { RankBars, type Ranked } from '../../design/RankBars.tsx';
import { feedLines } from '../../engine/data/feedLines.ts';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface LineRow {
  readonly line: keyof typeof feedLines;
  readonly total: number | null;
  readonly share: number | null;
}

/** What each line lets through, best first; the one in use is said. */
export function LinesPicture() {
  const rows = useValue<readonly LineRow[]>('feed.kinds');
  const inUse = useValue<string>('feed.line');
  const ranked = useMemo<readonly Ranked[]>(
    () =>
      [...(rows ?? [])]
        .sort((a, b) => (b.share ?? -1) - (a.share ?? -1))
        .map(({ line, share, total }) => ({
          key: line,
          label: feedLines[line].name,
          share: share ?? 0,
          figure: share === null ? 'not known' : format(share, '%', 2),
          note: noteOf(total, line === inUse),
        })),
    [rows, inUse],
  );
  if (ranked.length === 0) return null;
  return <RankBars label="What gets through, best line first" of={ranked} />;
}

function noteOf(total: number | null, inUse: boolean): string {
  const loss =
    total === null
      ? 'the SWR typed holds for another impedance'
      : `takes ${format(total, 'dB', 4)}`;
  return inUse ? `${loss}; the line in use` : loss;
}
