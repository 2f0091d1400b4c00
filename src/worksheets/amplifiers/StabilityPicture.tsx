import { memo, useDeferredValue, useMemo } from 'react';
import { CurveChart, type CurveChartProps } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Scan {
  readonly frequency: Float64Array;
  readonly k: Float64Array;
}
interface Stability {
  readonly amplifier: Scan;
  readonly driver: Scan;
}

const MHZ = 1e6;
/** The top of the picture: above it there is nothing to fear. */
const MOST = 3;

/** Rollett's factor of amplifier and driver over frequency, and where it is below one. */
export const StabilityPicture = memo(function StabilityPicture() {
  const stability = useDeferredValue(useValue<Stability>('transmit.stability'));
  const nominal = useDeferredValue(useValue<number>('plan.nominal'));
  const props = useMemo(
    () => (stability && nominal !== null ? picture(stability, nominal) : null),
    [stability, nominal],
  );
  return props && <CurveChart {...props} />;
});

function picture({ amplifier, driver }: Stability, nominal: number): CurveChartProps {
  const x = amplifier.frequency.map((hz) => Math.log10(hz / MHZ));
  const below = (scan: Scan) => scan.k.map((k) => Math.min(k, MOST));
  return {
    title: 'Stability of amplifier and driver over frequency',
    summary: `${wordsFor('Two-way amplifier', amplifier)} ${wordsFor('Driver', driver)}`,
    curves: [
      { x, y: below(amplifier), label: 'amplifier', ink: 'main', nameAt: 0.9, side: 'below' },
      { x, y: below(driver), label: 'driver', ink: 'other', nameAt: 0.2, side: 'above' },
    ],
    x: {
      from: -1,
      to: Math.log10(300),
      name: 'MHz',
      unit: 'MHz',
      step: 0.05,
      ticks: [-1, Math.log10(0.3), 0, Math.log10(3), 1, Math.log10(30), 2, Math.log10(300)],
      format: (at) => String(Number((10 ** at).toPrecision(2))),
    },
    y: { from: 0, to: MOST, name: 'K', unit: '', decimals: 2 },
    flats: [{ at: 1, label: 'K = 1', side: 'below' }],
    uprights: [{ at: Math.log10(nominal / MHZ), label: 'operating frequency', kind: 'live' }],
    tall: 15,
  };
}

/** Where a stage could oscillate, in words. */
function wordsFor(name: string, { frequency, k }: Scan): string {
  const ranges: [number, number][] = [];
  frequency.forEach((hz, i) => {
    if ((k[i] ?? 0) >= 1) return;
    const last = ranges.at(-1);
    if (last && i > 0 && last[1] === frequency[i - 1]) last[1] = hz;
    else ranges.push([hz, hz]);
  });
  if (ranges.length === 0) return `${name}: K above 1 everywhere.`;
  const said = ranges.map(([from, to]) =>
    from === to
      ? `at ${format(from, 'Hz', 2)}`
      : `from ${format(from, 'Hz', 2)} to ${format(to, 'Hz', 2)}`,
  );
  return `${name}: K below 1 ${said.join(' and ')}.`;
}
