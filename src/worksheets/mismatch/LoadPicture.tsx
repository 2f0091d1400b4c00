import { useMemo } from 'react';
import { LocusChart } from '../../design/chart/LocusChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { useRound } from './useRound.ts';

const marked = [
  [0, '0°'],
  [18, '90°'],
  [36, '180°'],
  [54, '270°'],
] as const;

/** The load of the collector as the antenna's reflection goes round: a circle. */
export function LoadPicture() {
  const round = useRound();
  const swr = useValue<number>('mismatch.swr');
  const wanted = useValue<number>('transmit.collectorLoad');
  const props = useMemo(() => {
    if (round === null || swr === null || wanted === null) return null;
    const { resistance, reactance } = round;
    const middle = (Math.max(...resistance) + Math.min(...resistance)) / 2;
    const radius = (Math.max(...resistance) - Math.min(...resistance)) / 2;
    const at = (k: number) => ({ x: resistance[k] ?? 0, y: reactance[k] ?? 0 });
    const side = (k: number) => {
      const { x, y } = at(k);
      if (Math.abs(y) > Math.abs(x - middle)) return y > 0 ? 'above' : 'below';
      return x > middle ? 'right' : 'left';
    };
    return {
      ring: { x: resistance, y: reactance },
      marks:
        radius < 1e-6 * middle
          ? []
          : marked.map(([k, label]) => ({ ...at(k), label, side: side(k) }) as const),
      wanted: { x: wanted, y: 0, label: 'wanted' },
      from: Math.min(...resistance),
      to: Math.max(...resistance),
    };
  }, [round, swr, wanted]);
  if (props === null) return null;
  const { from, to, ...ring } = props;
  return (
    <LocusChart
      title="What the collector sees"
      summary={`Resistance between ${format(from, 'Ω', 3)} and ${format(to, 'Ω', 3)} as a cable of any length turns the antenna round; ${format(wanted ?? Number.NaN, 'Ω', 3)} are wanted. Above the line it is inductive.`}
      xName="resistance, Ω"
      yName="reactance, Ω"
      {...ring}
    />
  );
}
