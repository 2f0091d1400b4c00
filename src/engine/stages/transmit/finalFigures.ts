import { type TransistorKey, transistors } from '../../data/devices.ts';

/** What is known of the final: the data sheet's figures, or the user's own in their place. */
export interface FinalFigures {
  readonly limitVce: number;
  readonly limitIc: number;
  readonly limitJunction: number;
  readonly transition: number;
  /** K/W; null where the package isn't meant for a heat sink. */
  readonly toCase: number | null;
  readonly toAmbient: number;
}

/** The final's figures (V, A, K, Hz, K/W). */
export function finalFigures(seen: {
  readonly finalDevice: TransistorKey;
  readonly ownVce: number | null;
  readonly ownIc: number | null;
  readonly ownFt: number | null;
  readonly ownToCase: number | null;
  readonly ownToAmbient: number | null;
}): FinalFigures {
  const sheet = transistors[seen.finalDevice];
  return {
    limitVce: seen.ownVce ?? sheet.vceo,
    limitIc: seen.ownIc ?? sheet.ic,
    limitJunction: sheet.junction,
    transition: seen.ownFt ?? sheet.ft,
    toCase: seen.ownToCase ?? sheet.toCase,
    toAmbient: seen.ownToAmbient ?? sheet.toAmbient,
  };
}
