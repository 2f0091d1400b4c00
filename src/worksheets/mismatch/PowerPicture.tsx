import { useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { useExactRound } from './useExactRound.ts';
import { inDegrees, roundAxis, useRound } from './useRound.ts';

/** What still reaches the antenna, and what the final turns into heat, over the angle. */
export function PowerPicture() {
  const round = useRound();
  const matched = useValue<number>('output.pepAntenna');
  const exact = useExactRound('power');
  const least = useValue<number>('mismatch.power');
  const heat = useValue<number>('mismatch.heat');
  const props = useMemo(() => {
    if (round === null || matched === null) return null;
    const x = inDegrees(round.angle);
    const most = Math.max(...round.power, ...round.heat, ...(exact?.y ?? []), matched);
    return {
      curves: [
        { x, y: round.power, label: 'into the antenna', ink: 'main', nameAt: 190, side: 'above' },
        { x, y: round.heat, label: 'heat in the final', ink: 'other', nameAt: 190, side: 'below' },
        ...(exact
          ? [
              {
                ...exact,
                label: 'the same, exact',
                ink: 'third',
                nameAt: 200,
                side: 'above',
              } as const,
            ]
          : []),
      ],
      x: roundAxis,
      y: { from: 0, to: most * 1.2, name: 'W', unit: 'W', decimals: 2 },
      flats: [{ at: matched, label: 'into the right antenna', end: 'right', side: 'above' }],
    } as const;
  }, [round, matched, exact]);
  if (props === null) return null;
  return (
    <CurveChart
      title="Power once round"
      summary={`At the worst angle ${format(least ?? Number.NaN, 'W', 3)} reach the antenna; at another the final turns ${format(heat ?? Number.NaN, 'W', 3)} into heat.`}
      tall={16}
      {...props}
    />
  );
}
