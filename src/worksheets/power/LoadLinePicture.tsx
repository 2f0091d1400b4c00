import { useMemo } from 'react';
import { LoopChart } from '../../design/chart/LoopChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { cycleTable } from './cycleTable.ts';
import { PERIODS } from './twoPeriods.ts';
import { useCycles, type Waves } from './useCycles.ts';

/** A limit further off than so many times the highest of the ways isn't drawn, only said. */
const FAR = 2.5;

const most = (...ways: readonly ArrayLike<number>[]) =>
  ways.reduce((high, way) => Math.max(high, ...Array.from(way)), 0);

/** Current against voltage at the collector: the way that the final runs once each cycle. */
export function LoadLinePicture() {
  const cycles = useCycles();
  const supply = useValue<number>('plan.supply');
  const vce = useValue<number>('transmit.limitVce');
  const ic = useValue<number>('transmit.limitIc');
  const each = useValue<number>('transmit.peakEach');
  const side = useValue<number>('transmit.peakCurrent');
  const props = useMemo(() => {
    if (cycles === null || supply === null) return null;
    const way = ({ voltage, current }: Waves, label: string, periods: number) => {
      const end = ((voltage.y.length - 1) / PERIODS) * periods + 1;
      return { x: voltage.y.slice(0, end), y: current.y.slice(0, end), label };
    };
    // By hand the way back is the way there: half a cycle is all of it.
    const line = way(cycles.hand, 'by hand', 0.5);
    const loop = cycles.exact && way(cycles.exact, 'from the model', 1);
    const highV = most(line.x, loop?.x ?? []);
    const highI = most(line.y, loop?.y ?? []);
    const lowI = Math.min(0, ...line.y, ...(loop?.y ?? []));
    // Those side by side bear so much more together.
    const bear = ic === null || each === null || side === null ? null : (ic * side) / each;
    const near = (limit: number | null, high: number, label: string) =>
      limit !== null && limit < FAR * high ? { at: limit, label } : undefined;
    const x = near(vce, highV, `limit ${format(vce ?? 0, 'V', 2)}`);
    const y = near(bear, highI, `limit ${format(bear ?? 0, 'A', 2)}`);
    return {
      loop,
      line,
      x: { from: 0, to: 1.08 * Math.max(highV, x?.at ?? 0), name: 'V', limit: x },
      y: { from: 1.1 * lowI, to: 1.15 * Math.max(highI, y?.at ?? 0), name: 'A', limit: y },
      uprights: [{ at: supply, label: 'supply' }],
      table: cycleTable(cycles.hand, cycles.exact),
      summary: `Collector current over collector voltage. A straight way is a pure resistance; a loop means that charge is stored or the load is tuned off. ${
        vce === null || bear === null
          ? ''
          : `The limits are ${format(vce, 'V', 2)} and ${format(bear, 'A', 2)}.`
      }`,
    } as const;
  }, [cycles, supply, vce, ic, each, side]);
  if (props === null) return null;
  return <LoopChart title="Load line" {...props} />;
}
