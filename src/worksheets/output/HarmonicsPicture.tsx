import { useDeferredValue, useMemo } from 'react';
import { type Harmonic, HarmonicChart } from '../../design/chart/HarmonicChart.tsx';
import type { Outcome } from '../../engine/fields/kinds.ts';
import { format, formatSame } from '../../engine/quantity/format.ts';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useValue } from '../../store/hooks.ts';

interface Row {
  readonly order: number | null;
  readonly frequency: number | null;
  readonly level: number | null;
  readonly limit: number | null;
  readonly outcome: Outcome | null;
}

/** Below this nothing is drawn: a real layout lets more through than arithmetic does, dBc. */
const FLOOR = -100;

/** Every harmonic at the antenna against the limit of the rules chosen. */
export function HarmonicsPicture() {
  const rows = useDeferredValue(useValue<readonly Row[]>('output.harmonics'));
  const rules = useValue<string>('plan.rules');
  const margin = useValue<number>('output.worstMargin');
  const order = useValue<number>('output.worstOrder');
  const picture = useMemo(() => drawn(rows ?? []), [rows]);
  const field = fieldAt('plan.rules');
  if (picture.harmonics.length === 0 || !field) return null;
  return (
    <HarmonicChart
      title="Harmonics at the antenna"
      summary={summaryOf(margin, order)}
      harmonics={picture.harmonics}
      frequencyUnit={picture.unit}
      limitLabel={`limit, ${shown(field, rules)}`}
      floor={FLOOR}
    />
  );
}

function drawn(rows: readonly Row[]): { harmonics: readonly Harmonic[]; unit: string } {
  const there = rows.filter((row) => row.level !== null && row.frequency !== null);
  const { numbers, unit } = formatSame(
    there.map((row) => row.frequency ?? 0),
    'Hz',
    3,
  );
  const harmonics = there.map((row, index) => ({
    order: row.order ?? 0,
    frequency: numbers[index] ?? '',
    level: row.level ?? FLOOR,
    limit: row.limit,
    outcome: row.outcome ?? 'holds',
  }));
  return { harmonics, unit };
}

function summaryOf(margin: number | null, order: number | null): string {
  if (margin === null || order === null) return 'The current pulse has no harmonics to speak of.';
  return margin < 0
    ? `Harmonic ${order} stands ${format(-margin, 'dB', 3)} above the limit.`
    : `Harmonic ${order} comes nearest: ${format(margin, 'dB', 3)} under the limit.`;
}
