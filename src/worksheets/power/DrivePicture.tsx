import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { plain } from '../../design/chart/ticks.ts';
import { format } from '../../engine/quantity/format.ts';
import { useExact } from './useExact.ts';

const DEGREES = 180 / Math.PI;

/** Room for a curve about zero: at least one, in halves. */
function room(y: Float64Array) {
  const low = Math.min(-0.5, ...y);
  const high = Math.max(0.5, ...y);
  const slack = 0.15 * (high - low);
  return { from: Math.floor(2 * (low - slack)) / 2, to: Math.ceil(2 * (high + slack)) / 2 };
}

/** Gain and phase over power: where they bend, speech flattens and splatters. */
export function DrivePicture() {
  const found = useDeferredValue(useExact());
  const curve = found?.overDrive ?? null;
  const drawn = useMemo(() => {
    if (curve === null) return null;
    const { power, gain } = curve;
    const phase = curve.phase.map((p) => p * DEGREES);
    const most = power.at(-1) ?? 1;
    const x = { from: 0, to: most, name: 'W at the antenna', unit: 'W', step: most / 60 };
    const flats = [{ at: 0, label: 'as at full power', end: 'right', side: 'below' }] as const;
    const one = (y: Float64Array, label: string, name: string, unit: string) =>
      ({
        curves: [{ x: power, y, label, ink: 'main', nameAt: 0.45 * most, side: 'above' }],
        x,
        y: { ...room(y), name, unit, decimals: 2 },
        flats,
        tall: 13,
      }) as const;
    return {
      gain: one(gain, 'gain', 'dB', 'dB'),
      phase: one(phase, 'phase', 'degrees', '°'),
      table: {
        columns: [
          { key: 'power', label: 'Power' },
          { key: 'gain', label: 'Gain', unit: 'dB' },
          { key: 'phase', label: 'Phase', unit: '°' },
          { key: 'current', label: 'Final’s current' },
        ],
        rows: Array.from(power, (watts, i) => ({
          key: String(i),
          cells: {
            power: format(watts, 'W', 3),
            gain: plain(Number((gain[i] ?? 0).toFixed(2))),
            phase: plain(Number((phase[i] ?? 0).toFixed(1))),
            current: format(curve.current[i] ?? 0, 'A', 3),
          },
        })),
      },
    };
  }, [curve]);
  if (drawn === null) return null;
  return (
    <>
      <CurveChart
        title="Gain over power"
        summary="Against that at full power. The more it changes on the way up, the more two tones make others: their products follow from this curve and the next."
        table={drawn.table}
        {...drawn.gain}
      />
      <CurveChart
        title="Phase over power"
        summary="Of the antenna’s voltage against the driver’s. Where it turns with the power, products come though the gain stays."
        {...drawn.phase}
      />
    </>
  );
}
