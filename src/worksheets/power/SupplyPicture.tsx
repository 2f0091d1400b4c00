import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { useExact } from './useExact.ts';

interface Curve {
  readonly supply: Float64Array;
  readonly power: Float64Array;
  readonly efficiency: Float64Array;
}

/** Peak envelope power and efficiency against supply: the square law, and what the model makes of it. */
export function SupplyPicture() {
  const hand = useDeferredValue(useValue<Curve>('power.overSupply'));
  const found = useDeferredValue(useExact());
  const supply = useValue<number>('plan.supply');
  const drawn = useMemo(() => {
    if (hand === null || supply === null) return null;
    const exact = found?.overSupply ?? null;
    const from = hand.supply[0] ?? 0;
    const to = hand.supply.at(-1) ?? 1;
    const percent = (share: Float64Array) => share.map((x) => 100 * x);
    const one = (y: Float64Array, model: Float64Array | null, to1: number, unit: string) => {
      // The names stand where the two are furthest apart.
      const ends = (v: Float64Array | null) => (v === null ? 0 : (v[0] ?? 0));
      const over = ends(model) > ends(y);
      const at = from + 0.25 * (to - from);
      return {
        curves: [
          ...(exact && model
            ? [
                {
                  x: exact.supply,
                  y: model,
                  label: 'from the model',
                  ink: 'main',
                  nameAt: at,
                  side: over ? 'above' : 'below',
                } as const,
              ]
            : []),
          {
            x: hand.supply,
            y,
            label: 'by hand',
            ink: 'reference',
            nameAt: at,
            side: over ? 'below' : 'above',
          },
        ],
        x: { from, to, name: 'V', unit: 'V', step: (to - from) / 60 },
        y: { from: 0, to: to1, name: unit, unit, decimals: unit === 'W' ? 2 : 0 },
        uprights: [{ at: supply, label: 'planned', kind: 'live' }],
        tall: unit === 'W' ? 15 : 12,
      } as const;
    };
    const most = Math.max(...hand.power, ...(exact?.power ?? []));
    return {
      power: one(hand.power, exact?.power ?? null, 1.2 * most, 'W'),
      share: one(percent(hand.efficiency), exact && percent(exact.efficiency), 100, '%'),
      table: {
        columns: [
          { key: 'supply', label: 'Supply' },
          { key: 'hand', label: 'By hand' },
          { key: 'exact', label: 'From the model' },
          { key: 'handShare', label: 'Of direct power, by hand' },
          { key: 'share', label: 'from the model' },
          { key: 'third', label: 'Two tones, order 3, against PEP' },
        ],
        rows: Array.from(hand.supply, (volts, i) => ({
          key: String(i),
          cells: {
            supply: format(volts, 'V', 3),
            hand: format(hand.power[i] ?? 0, 'W', 2),
            exact: exact ? format(exact.power[i] ?? 0, 'W', 2) : '–',
            handShare: format(hand.efficiency[i] ?? 0, '%', 2),
            share: exact ? format(exact.efficiency[i] ?? 0, '%', 2) : '–',
            third: exact ? format(exact.third[i] ?? 0, 'dB', 2) : '–',
          },
        })),
      },
    };
  }, [hand, found, supply]);
  if (drawn === null) return null;
  return (
    <>
      <CurveChart
        title="Power over supply"
        summary="With the same load. By hand the drive follows and power goes with the square of the swing; the model keeps the drive, so a higher supply gives more only while the driver can."
        table={drawn.table}
        {...drawn.power}
      />
      <CurveChart
        title="Radio power over direct power"
        summary="At the antenna. A reading over 70 % in class AB or B is wrong, unless the drive is far too much for the supply: then the final clips."
        {...drawn.share}
      />
    </>
  );
}
