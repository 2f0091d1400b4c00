import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Discharge {
  readonly time: Float64Array;
  readonly voltage: Float64Array;
  readonly power: Float64Array;
}

const HOUR = 3600;

/** Volts of the battery, and what the final gives from them, over the hours. */
export function DischargePicture() {
  const curve = useDeferredValue(useValue<Discharge>('supply.discharge'));
  const hours = useDeferredValue(useValue<number>('supply.hours'));
  const end = useDeferredValue(useValue<number>('supply.endVoltage'));
  const watts = useDeferredValue(useValue<number>('supply.endPower'));
  const supply = useDeferredValue(useValue<number>('plan.supply'));
  const pep = useDeferredValue(useValue<number>('plan.pep'));
  const props = useMemo(() => {
    if (curve === null || hours === null || end === null || watts === null) return null;
    if (supply === null || pep === null) return null;
    const x = curve.time.map((t) => t / HOUR);
    const to = x[x.length - 1] ?? 1;
    const volts = curve.voltage.map((v) => (100 * v) / supply);
    const power = curve.power.map((p) => (100 * p) / pep);
    const all = [...volts, ...power];
    const from = Math.max(0, Math.floor(Math.min(...all) / 10) * 10 - 10);
    return {
      summary: `After ${format(hours, 'h', 2)} the battery is down to ${format(end, 'V', 3)}, and the final clips at ${format(watts, 'W', 2)} of ${format(pep, 'W', 3)}. Beyond that the battery takes harm.`,
      curves: [
        { x, y: volts, label: 'volts', ink: 'main', nameAt: to * 0.06, side: 'above' },
        { x, y: power, label: 'power', ink: 'other', nameAt: to * 0.06, side: 'below' },
      ],
      x: { from: 0, to, name: 'hours', unit: 'h', step: to / 200 },
      y: {
        from,
        to: Math.ceil(Math.max(...all) / 10) * 10 + 10,
        name: '% of the plan',
        unit: '%',
        decimals: 0,
      },
      bands: [{ from: hours / HOUR, to, kind: 'unwanted' }],
      uprights: [{ at: hours / HOUR, label: 'stop here', kind: 'live' }],
      tall: 15,
      table: {
        columns: [
          { key: 'time', label: 'Time' },
          { key: 'voltage', label: 'Battery' },
          { key: 'power', label: 'PEP then' },
        ],
        rows: [...curve.time.keys()]
          .filter((i) => i % 6 === 0)
          .map((i) => ({
            key: String(i),
            cells: {
              time: format(curve.time[i] ?? 0, 'h', 2),
              voltage: format(curve.voltage[i] ?? 0, 'V', 3),
              power: format(curve.power[i] ?? 0, 'W', 2),
            },
          })),
      },
    } as const;
  }, [curve, hours, end, watts, supply, pep]);
  return props === null ? null : <CurveChart title="As the battery empties" {...props} />;
}
