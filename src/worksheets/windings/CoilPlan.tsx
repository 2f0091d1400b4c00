import { useMemo } from 'react';
import { ToroidDrawing } from '../../design/drawing/ToroidDrawing.tsx';
import { type PlannedWinding, WindingPlan } from '../../design/drawing/WindingPlan.tsx';
import { cores } from '../../engine/data/cores.ts';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { listed } from './listed.ts';

interface CoilRow {
  readonly label: string | null;
  readonly core: string | null;
  readonly turns: number | null;
  readonly overall: number | null;
  readonly lAt: number | null;
  readonly l: number | null;
  readonly build: string | null;
}

/** Every tuned coil as a line to act on, with its turns to count. Coils that are alike stand together. */
export function CoilPlan() {
  const rows = useValue<readonly CoilRow[]>('windings.coils');
  const windings = useMemo(() => {
    const alike = new Map<string, CoilRow[]>();
    for (const row of rows ?? []) {
      const same = `${row.build} ${row.l?.toPrecision(4)}`;
      alike.set(same, [...(alike.get(same) ?? []), row]);
    }
    return [...alike.values()].flatMap(planned);
  }, [rows]);
  return windings.length === 0 ? null : <WindingPlan windings={windings} />;
}

function planned(alike: readonly CoilRow[]): PlannedWinding[] {
  const [row] = alike;
  if (!row?.build || row.turns === null) return [];
  const core = cores.find(({ title }) => title === row.core);
  const names = listed(alike.map(({ label }) => label ?? ''));
  return [
    {
      key: names,
      title: alike.length > 1 ? `${names}, alike` : names,
      build: `${row.build}.`,
      more: `Makes ${format(row.lAt ?? Number.NaN, 'H', 3)} where ${format(row.l ?? Number.NaN, 'H', 3)} is wanted.`,
      picture: core && (
        <ToroidDrawing
          label={`A ${core.title} core with ${row.turns} turns, numbered.`}
          outer={core.size.outer}
          inner={core.size.inner}
          wire={row.overall ?? 0}
          turns={[row.turns]}
          told
        />
      ),
    },
  ];
}
