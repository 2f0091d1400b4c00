import { memo, useDeferredValue, useMemo } from 'react';
import { CurveChart, type CurveChartProps } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Given {
  readonly intercept: number;
  readonly product: number;
  readonly pair: number;
  readonly over: number;
  readonly floor: number;
  readonly harmless: number;
}

const FROM = -100;
const TO = 0;

/** Two stations and what they make of each other, over their strength. */
export const PairPicture = memo(function PairPicture() {
  const intercept = useValue<number>('strong.interceptOutside');
  const product = useValue<number>('strong.product');
  const over = useValue<number>('strong.productOver');
  const pair = useValue<number>('strong.pair');
  const floor = useValue<number>('receive.floor');
  const harmless = useValue<number>('strong.harmless');
  const chart = useDeferredValue(
    useMemo(
      () =>
        intercept === null ||
        product === null ||
        over === null ||
        pair === null ||
        floor === null ||
        harmless === null
          ? null
          : drawn({ intercept, product, over, pair, floor, harmless }),
      [intercept, product, over, pair, floor, harmless],
    ),
  );
  return chart && <CurveChart {...chart} />;
});

function drawn({ intercept, product, over, pair, floor, harmless }: Given): CurveChartProps {
  const noise = product - over;
  const bottom = 10 * Math.floor((Math.min(floor, noise) - 12) / 10);
  const made = (level: number) => 3 * level - 2 * intercept;
  // The product's line only where it stands on the chart.
  const low = Math.max(FROM, (bottom + 2 * intercept) / 3);
  const high = Math.min(TO, intercept);
  return {
    title: 'Two stations, and the one that they make',
    summary: `The product comes out of the noise when both stations reach ${format(harmless, 'dBm', 3)}. From there on it grows three times as fast as they do.`,
    curves: [
      {
        x: [FROM, TO],
        y: [FROM, TO],
        label: 'the stations',
        ink: 'reference',
        nameAt: -82,
        side: 'above',
      },
      {
        x: [low, high],
        y: [made(low), made(high)],
        label: 'their product',
        ink: 'main',
        nameAt: low + 0.35 * (high - low),
        side: 'right',
      },
    ],
    x: { from: FROM, to: TO, name: 'each station at the antenna, dBm', unit: 'dBm', step: 1 },
    y: { from: bottom, to: TO, name: 'dBm', unit: 'dBm' },
    flats: [
      { at: noise, label: 'all the noise', end: 'left' },
      { at: floor, label: 'the receiver’s own', end: 'left' },
    ],
    uprights: pair >= FROM && pair <= TO ? [{ at: pair, label: 'these two', kind: 'live' }] : [],
    tall: 20,
  };
}
