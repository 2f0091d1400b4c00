import { useDeferredValue, useMemo } from 'react';
import { useValue } from '../../store/hooks.ts';
import { startOf, twiceByHand, twiceFrom, type Wave } from './twoPeriods.ts';
import { useExact } from './useExact.ts';

interface Cycle {
  readonly voltage: Float64Array;
  readonly current: Float64Array;
}

export interface Waves {
  readonly voltage: Wave;
  readonly current: Wave;
}

/** Collector voltage and current over two periods: by hand, and from the model once it has answered. */
export function useCycles(): { readonly hand: Waves; readonly exact: Waves | null } | null {
  const cycle = useDeferredValue(useValue<Cycle>('transmit.cycle'));
  const waves = useDeferredValue(useExact()?.waves ?? null);
  return useMemo(() => {
    if (cycle === null) return null;
    const from = waves === null ? 0 : startOf(waves.current);
    return {
      hand: { voltage: twiceByHand(cycle.voltage), current: twiceByHand(cycle.current) },
      exact: waves && {
        voltage: twiceFrom(waves.voltage, from),
        current: twiceFrom(waves.current, from),
      },
    };
  }, [cycle, waves]);
}
