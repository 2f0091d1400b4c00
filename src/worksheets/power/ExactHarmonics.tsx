import { useDeferredValue, useMemo } from 'react';
import { HarmonicChart } from '../../design/chart/HarmonicChart.tsx';
import { format, formatSame } from '../../engine/quantity/format.ts';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useValue } from '../../store/hooks.ts';
import { useExact } from './useExact.ts';

interface HandRow {
  readonly order: number | null;
  readonly level: number | null;
}

/** Below this nothing is drawn: a real lay-out lets more through than arithmetic does, dBc. */
const FLOOR = -120;
const HIGHEST = 10;

/** Harmonics at the antenna from the transistor's model and by hand, against the rule. */
export function ExactHarmonics() {
  const found = useDeferredValue(useExact());
  const hand = useDeferredValue(useValue<readonly HandRow[]>('output.harmonics'));
  const rules = useValue<string>('plan.rules');
  const harmonics = useMemo(() => {
    const rows = (found?.harmonics ?? []).filter(({ order }) => order <= HIGHEST);
    const { numbers } = formatSame(
      rows.map(({ frequency }) => frequency),
      'Hz',
      3,
    );
    return rows.map(({ order, level, limit, outcome }, i) => ({
      order,
      frequency: numbers[i] ?? '',
      level,
      limit,
      outcome,
      beside: hand?.find((row) => row.order === order)?.level ?? null,
    }));
  }, [found, hand]);
  const field = fieldAt('plan.rules');
  if (found === null || !field) return null;
  return (
    <HarmonicChart
      title="Harmonics at the antenna"
      summary={`Whole: from the model; dashed: by hand. ${
        found.worstMargin < 0
          ? `The nearest stands ${format(-found.worstMargin, 'dB', 2)} above the limit.`
          : `The nearest keeps ${format(found.worstMargin, 'dB', 2)} under the limit.`
      }`}
      harmonics={harmonics}
      frequencyUnit="MHz"
      limitLabel={`limit, ${shown(field, rules)}`}
      floor={FLOOR}
      answers={['From the model', 'By hand']}
    />
  );
}
