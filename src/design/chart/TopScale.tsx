import type { PlotAxis } from './scale.ts';
import { plain } from './ticks.ts';
import { useScales } from './useScales.ts';

/** A second scale along the top, whose places may move with every figure typed. */
export function TopScale({ of, em }: { of: PlotAxis; em: number }) {
  const s = useScales();
  if (s === null) return null;
  const { ticks, format = plain, name, nameAt } = of;
  return (
    <g className="chart__top chart__soft">
      <path
        d={`M${s.left} ${s.top}H${s.right}${ticks.map((at) => `M${s.x(at)} ${s.top}v${-em * 0.35}`).join('')}`}
      />
      {ticks.map((at) => (
        <text key={at} x={s.x(at)} y={s.top - em * 0.6} textAnchor="middle">
          {format(at)}
        </text>
      ))}
      {name !== undefined && (
        <text
          x={nameAt === 'start' ? s.left + em * 0.25 : s.right}
          y={s.top - em * (nameAt === 'above' ? 1.8 : 0.6)}
          textAnchor={nameAt === 'start' ? 'start' : 'end'}
        >
          {name}
        </text>
      )}
    </g>
  );
}
