import { memo, useMemo } from 'react';
import { ToroidDrawing } from '../../design/drawing/ToroidDrawing.tsx';
import { WaysToStand } from '../../design/drawing/WaysToStand.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { useCores } from './useCores.ts';

interface Way {
  readonly label: string;
  readonly share: number;
  readonly l: number;
  readonly rise: number;
}

interface Coil {
  readonly label: string;
  readonly core: string;
  readonly turns: number;
  readonly overall: number;
}

/** Less than this is not worth a picture. */
const LITTLE = 0.03;

/** The first coil three times: its turns spread, half-way, and pushed together. */
export const Spreads = memo(function Spreads() {
  const ways = useValue<readonly Way[]>('windings.spreads');
  const coils = useValue<readonly Coil[]>('windings.coils');
  const coreOf = useCores();
  const items = useMemo(() => {
    const coil = coils?.[0];
    const size = coil && coreOf(coil.core)?.size;
    if (!coil || !size) return [];
    return (ways ?? []).map(({ label, share, l, rise }) => ({
      key: label,
      title: label,
      figure: format(l, 'H', 3),
      more: rise < 5e-4 ? `${coil.label}, ${coil.turns} turns` : `+${format(rise, '%', 2)}`,
      picture: (
        <ToroidDrawing
          label={`${coil.turns} turns ${label}: ${format(l, 'H', 3)}.`}
          outer={size.outer}
          inner={size.inner}
          wire={coil.overall}
          turns={[coil.turns]}
          share={share}
          numbered={false}
        />
      ),
    }));
  }, [ways, coils, coreOf]);
  const gain = ways?.at(-1)?.rise ?? 0;
  if (items.length === 0 || gain < LITTLE) {
    return coils && coils.length > 0 ? (
      <p>
        The turns of {coils[0]?.label} fill their core: squeezing adds next to nothing. Choose wire
        with room to squeeze above if you want to trim that way.
      </p>
    ) : null;
  }
  return <WaysToStand items={items} />;
});
