import { useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { useExactRound } from './useExactRound.ts';
import { inDegrees, roundAxis, useRound } from './useRound.ts';

/** The collector's peak over the angle: held by the supply, and if the drive went on. */
export function CollectorPicture() {
  const round = useRound();
  const limit = useValue<number>('transmit.limitVce');
  const supply = useValue<number>('plan.supply');
  const exact = useExactRound('voltage');
  const most = useValue<number>('mismatch.collector');
  const props = useMemo(() => {
    if (round === null || supply === null) return null;
    const x = inDegrees(round.angle);
    const peak = Math.max(...round.unheld, ...(exact?.y ?? []));
    // The transistor's limit is drawn where it is near enough to matter.
    const shows = limit !== null && limit < 2 * peak;
    return {
      curves: [
        { x, y: round.unheld, label: 'drive going on', ink: 'main', nameAt: 205, side: 'above' },
        { x, y: round.held, label: 'drive held', ink: 'other', nameAt: 60, side: 'below' },
        ...(exact
          ? [{ ...exact, label: 'exact', ink: 'third', nameAt: 300, side: 'above' } as const]
          : []),
      ],
      x: roundAxis,
      y: { from: 0, to: 1.15 * Math.max(peak, shows ? limit : 0), name: 'V', unit: 'V' },
      flats: [
        { at: supply, label: 'supply', end: 'right', side: 'below' },
        ...(shows
          ? [{ at: limit, label: 'limit of the final', end: 'right', side: 'above' } as const]
          : []),
      ],
    } as const;
  }, [round, limit, supply, exact]);
  if (props === null) return null;
  return (
    <CurveChart
      title="Collector voltage once round"
      summary={`Up to ${format(most ?? Number.NaN, 'Vpk', 3)} if nothing holds the drive${limit === null ? '.' : `; the final bears ${format(limit, 'V', 2)}.`}`}
      tall={16}
      {...props}
    />
  );
}
