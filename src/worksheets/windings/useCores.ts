import { useMemo } from 'react';
import { type Core, cores } from '../../engine/data/cores.ts';
import { useValue } from '../../store/hooks.ts';

interface Shelf {
  readonly row: readonly Core[];
}

/** A core by its title: of the box, unmarked rings too, or of the list. */
export function useCores(): (title: string) => Core | undefined {
  const shelf = useValue<Shelf>('cores.shelf');
  return useMemo(
    () => (title) => [...(shelf?.row ?? []), ...cores].find((core) => core.title === title),
    [shelf],
  );
}
