import { useMemo } from 'react';
import { CurveChart, type NamedCurve } from '../../design/chart/CurveChart.tsx';
import { useValue } from '../../store/hooks.ts';
import { namesApart } from './namesApart.ts';
import { PERIODS, type Wave } from './twoPeriods.ts';
import { useCycles } from './useCycles.ts';

const axis = {
  from: 0,
  to: 360 * PERIODS,
  name: 'degrees of the cycle',
  unit: '°',
  step: 5,
  ticks: Array.from({ length: 4 * PERIODS + 1 }, (_, i) => 90 * i),
};

/** Both curves, their names where they are apart; the crest stands between the two places. */
function named(hand: Wave, exact: Wave | null, from: number, to: number): NamedCurve[] {
  const [byHand, fromModel] = namesApart(hand, exact ?? hand, from, to);
  return [
    ...(exact ? [{ ...exact, label: 'from the model', ink: 'main', ...fromModel } as const] : []),
    { ...hand, label: 'by hand', ink: 'reference', ...byHand },
  ];
}

/** Collector voltage and current over two periods: by hand, and what really flows. */
export function WavePictures() {
  const cycles = useCycles();
  const supply = useValue<number>('plan.supply');
  const limit = useValue<number>('transmit.limitVce');
  const drawn = useMemo(() => {
    if (cycles === null || supply === null) return null;
    const { hand, exact } = cycles;
    const most = Math.max(...hand.voltage.y, ...(exact?.voltage.y ?? []));
    const near = limit !== null && limit < 1.6 * most;
    const currents = [...hand.current.y, ...(exact?.current.y ?? [])];
    return {
      volts: {
        curves: named(hand.voltage, exact?.voltage ?? null, 180, 540),
        x: axis,
        y: { from: 0, to: 1.2 * Math.max(most, near ? limit : 0), name: 'V', unit: 'V' },
        flats: [
          { at: supply, label: 'supply', end: 'right', side: 'above' },
          ...(near ? [{ at: limit, label: 'limit', end: 'right', side: 'above' } as const] : []),
        ],
        tall: 15,
      } as const,
      amps: {
        curves: named(hand.current, exact?.current ?? null, 360, 720),
        x: axis,
        y: {
          from: Math.min(0, 1.1 * Math.min(...currents)),
          to: 1.2 * Math.max(...currents),
          name: 'A',
          unit: 'A',
          decimals: 3,
        },
        tall: 15,
      } as const,
    };
  }, [cycles, supply, limit]);
  if (drawn === null) return null;
  return (
    <>
      <CurveChart
        title="Collector voltage"
        summary="Two cycles at full power, emitter as zero. The closer to zero it gets, the more the final flattens."
        {...drawn.volts}
      />
      <CurveChart
        title="Collector current"
        summary="Of one side. By hand the tip of a cosine; the transistor’s own capacitances and stored charge round it off and pull it."
        {...drawn.amps}
      />
    </>
  );
}
