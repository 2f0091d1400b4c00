import type { Unfolded } from '../../engine/rig/unfold.ts';

/** A working ready for the page. */
export interface Typeset {
  readonly label: string;
  readonly formula: string;
  readonly numbers: string | undefined;
  readonly value: string;
  readonly residual: string | undefined;
  readonly where: readonly {
    readonly symbol: string;
    readonly says: string;
    readonly value: string;
    readonly path: string | null;
  }[];
}

export function typeset(unfolded: Unfolded): Typeset {
  return {
    label: unfolded.field.label,
    formula: '',
    numbers: undefined,
    value: String(unfolded.value),
    residual: undefined,
    where: [],
  };
}
