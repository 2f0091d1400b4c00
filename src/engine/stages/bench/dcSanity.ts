import type { Outcome } from '../../fields/kinds.ts';

/** More than this of the direct power cannot come out of a stage in class AB or B. */
export const TOO_GOOD = 0.7;
/** Less than this points to mismatch, loss or oscillation. */
export const TOO_POOR = 0.3;
/** Where built stages lie. */
export const USUAL = [0.4, 0.6] as const;

/**
 * Radio power out over direct power in, as a check on the power reading itself.
 *
 * For class AB and B at full drive, direct power of the final alone; with the whole transmitter's
 * current the ratio comes out lower.
 * Source: closed form (π/4)(Vcc − Vsat)/Vcc for the ceiling (0.67 at 13.8 V and 2 V); 0.40–0.55
 * usual, above 0.7 a wrong reading, below 0.3 a fault: common practice, no source.
 *
 * @param ratio out over in
 */
export function dcSanity(ratio: number): Outcome {
  if (ratio > TOO_GOOD || ratio < TOO_POOR) return 'fails';
  return ratio >= USUAL[0] && ratio <= USUAL[1] ? 'holds' : 'close';
}

/**
 * The most that class B can turn into radio power: π/4 of what saturation leaves.
 *
 * @param supply V
 * @param saturation V, 0 to supply
 */
export function classBCeiling(supply: number, saturation: number): number {
  return (Math.PI / 4) * ((supply - saturation) / supply);
}
