/** The slider runs from an eighth to eight times the right resistance, evenly by ratio. */
const REACH = Math.log(8);

/** Distance from the middle of the slider within which it stands at the right resistance. */
const CATCHES = 0.006;

/** Where on the slider a resistance stands, 0 … 1; beyond the ends at the ends. */
export const placeOf = (ohms: number, wants: number): number =>
  Math.min(1, Math.max(0, 0.5 + Math.log(ohms / wants) / (2 * REACH)));

/** The resistance at a place of the slider, Ω; exactly the right one at its middle. */
export const ohmsAt = (position: number, wants: number): number =>
  Math.abs(position - 0.5) < CATCHES ? wants : wants * Math.exp((position - 0.5) * 2 * REACH);
