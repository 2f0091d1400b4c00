import { useMemo } from 'react';
import { ToroidDrawing } from '../../design/drawing/ToroidDrawing.tsx';
import { type PlannedWinding, WindingPlan } from '../../design/drawing/WindingPlan.tsx';
import { cores } from '../../engine/data/cores.ts';
import { wires } from '../../engine/data/wires.ts';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface TransformerRow {
  readonly label: string | null;
  readonly core: string | null;
  readonly first: number | null;
  readonly second: number | null;
  readonly turns: number | null;
  readonly secondTurns: number | null;
  readonly inductance: number | null;
  readonly wire: string | null;
  readonly build: string | null;
}

/** Every broadband winding as a line to act on, with its turns to count. */
export function TransformerPlan() {
  const rows = useValue<readonly TransformerRow[]>('windings.transformers');
  const windings = useMemo(() => (rows ?? []).flatMap(planned), [rows]);
  return windings.length === 0 ? null : <WindingPlan windings={windings} />;
}

function planned(row: TransformerRow): PlannedWinding[] {
  const { label, build, turns, secondTurns } = row;
  if (!label || !build || turns === null) return [];
  // Three wires wound together are one bundle; any other second winding lies over the first.
  const bundle = build.toLowerCase().startsWith('three wires');
  const core = cores.find(({ title }) => title === row.core);
  const wire = wires.find(({ title }) => title === row.wire);
  return [
    {
      key: label,
      title: label,
      build: `${build.charAt(0).toUpperCase()}${build.slice(1)}.`,
      more: `${impedances(row)} A meter shows about ${format(row.inductance ?? Number.NaN, 'H', 2)} across the first winding.`,
      picture: core && (
        <ToroidDrawing
          label={`A ${core.title} core, turns of the first winding numbered.`}
          outer={core.size.outer}
          inner={core.size.inner}
          wire={wire?.overall ?? 0}
          turns={bundle ? [turns, turns, turns] : [turns, ...(secondTurns ? [secondTurns] : [])]}
          bundle={bundle}
        />
      ),
    },
  ];
}

function impedances({ first, second, wire }: TransformerRow): string {
  const from = format(first ?? Number.NaN, 'Ω', 3);
  const ends = second === null ? `across ${from}` : `from ${from} to ${format(second, 'Ω', 3)}`;
  return `Works ${ends}; ${wire} wire.`;
}
