import { useDeferredValue, useMemo } from 'react';
import { HarmonicChart } from '../../design/chart/HarmonicChart.tsx';
import { format, formatSame } from '../../engine/quantity/format.ts';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useValue } from '../../store/hooks.ts';
import { useExact } from './useExact.ts';

/** Below this nothing is drawn: a real lay-out lets more through than arithmetic does, dBc. */
const FLOOR = -110;
const HIGHEST = 10;

/** Harmonics at the antenna as the transistor's model gives them, against the rule. */
export function ExactHarmonics() {
  const found = useDeferredValue(useExact());
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
    }));
  }, [found]);
  const field = fieldAt('plan.rules');
  if (found === null || !field) return null;
  return (
    <HarmonicChart
      title="Harmonics at the antenna, from the model"
      summary={
        found.worstMargin < 0
          ? `The nearest stands ${format(-found.worstMargin, 'dB', 1)} above the limit.`
          : `The nearest keeps ${format(found.worstMargin, 'dB', 1)} under the limit.`
      }
      harmonics={harmonics}
      frequencyUnit="MHz"
      limitLabel={`limit, ${shown(field, rules)}`}
      floor={FLOOR}
    />
  );
}
