import { useDeferredValue, useMemo } from 'react';
import { CurveChart, type CurveChartProps } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface LoudnessRow {
  readonly report: string;
  readonly level: number;
  readonly needed: number;
}

/** Reports with a name of their own in the picture. */
const named: readonly string[] = ['S1', 'S3', 'S5', 'S7', 'S9', 'S9+20 dB', 'S9+40 dB'];

/** From the noise to the strongest station: how far up the volume has to be. */
export function LoudnessPicture() {
  const props = useDeferredValue(usePicture());
  return props && <CurveChart {...props} />;
}

function usePicture(): CurveChartProps | null {
  const rows = useValue<readonly LoudnessRow[]>('receive.loudness');
  const floor = useValue<number>('receive.floor');
  const band = useValue<number>('receive.bandHere');
  const weakest = useValue<number>('receive.weakest');
  const gain = useValue<number>('receive.audioGain');
  return useMemo(() => {
    const last = rows?.at(-1);
    if (!rows || !last || floor === null || band === null || weakest === null || gain === null) {
      return null;
    }
    const noise = Math.max(floor, band);
    const from = 5 * Math.floor((Math.min(floor, band, rows[0]?.level ?? -121) - 4) / 5);
    const needed = rows.map((row) => row.needed);
    const highest = 10 * Math.ceil((Math.max(gain, ...needed) + 28) / 10);
    return {
      title: 'How far up the volume must be',
      summary: `Signals come out of the noise at ${format(weakest, 'dBm', 3)}. Above the dotted line even full volume, ${format(gain, 'dB', 3)}, leaves them too quiet.`,
      curves: [
        {
          x: rows.map((row) => row.level),
          y: needed,
          label: 'gain for comfort',
          ink: 'main',
          nameAt: -63,
          side: 'right',
        },
      ],
      x: { from, to: last.level + 3, name: 'dBm at the antenna', unit: 'dBm', step: 1 },
      y: {
        from: 10 * Math.floor(Math.min(0, ...needed) / 10),
        to: highest,
        name: 'dB',
        unit: 'dB',
      },
      flats: [{ at: gain, label: 'volume full up', end: 'right' }],
      bands: [{ from, to: noise, kind: 'unwanted' }],
      uprights: [
        { at: floor, label: 'own noise', kind: 'rule' },
        { at: band, label: 'band noise', kind: 'rule' },
        { at: weakest, label: 'weakest signal', kind: 'live' },
      ],
      points: rows
        .filter((row) => named.includes(row.report))
        .map((row) => ({ x: row.level, y: row.needed, label: row.report, side: 'below' })),
      tall: 21,
    } satisfies CurveChartProps;
  }, [rows, floor, band, weakest, gain]);
}
