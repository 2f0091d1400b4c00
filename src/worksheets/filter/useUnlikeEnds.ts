import { useValue } from '../../store/hooks.ts';

/** Whether the filter wants another resistance at its load than at its source. */
export function useUnlikeEnds(): boolean {
  const source = useValue<number>('filter.ends');
  const load = useValue<number>('filter.endsLoad');
  return source !== null && load !== null && Math.abs(load / source - 1) > 1e-3;
}
