import { useMemo } from 'react';
import { useValue } from '../../store/hooks.ts';
import type { Use } from './bagRow.ts';

interface Place {
  readonly position: number;
  readonly label: string;
}

/** What each crystal of the bag is used for, by its label in small letters. */
export function useUses(): ReadonlyMap<string, Use> {
  const places = useValue<readonly Place[]>('filter.places');
  const carrier = useValue<string>('carrier.chosen');
  return useMemo(() => {
    const uses = new Map<string, Use>();
    for (const label of (carrier ?? '').split(/[\s,;]+/)) {
      if (label !== '') uses.set(label.toLowerCase(), { kind: 'carrier' });
    }
    for (const { label, position } of places ?? []) {
      uses.set(label.toLowerCase(), { kind: 'filter', position });
    }
    return uses;
  }, [places, carrier]);
}
