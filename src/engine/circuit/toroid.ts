/** Part of a toroid's inner circumference that a single layer leaves free, 30° of the whole. */
const LAYER_GAP = 1 / 12;

/**
 * Turns for an inductance, not rounded: √(L/A_L). One turn is one pass through the hole.
 *
 * @param l wanted inductance, H
 * @param al inductance of one turn, H
 */
export function turnsFor(l: number, al: number): number {
  return Math.sqrt(l / al);
}

/**
 * Diameter of the thickest wire of which so many turns lie side by side in one layer inside a
 * toroid, a gap of 30° left, m.
 *
 * The centres lie on a circle of the hole's diameter less one wire, d apart along the chord:
 * d = D·s/(1 + s) with s = sin(π(1 − gap)/N). One or two turns: half the hole.
 *
 * @param inner diameter of the hole, m
 * @param turns whole turns
 * @returns diameter over the enamel, m
 */
export function thickestWire(inner: number, turns: number): number {
  const s = turns < 2 ? 1 : Math.sin((Math.PI * (1 - LAYER_GAP)) / turns);
  return (inner * s) / (1 + s);
}

/**
 * Wire for a winding, tails included, m. Each turn goes once round the core's section with the
 * wire's centre half a diameter off it: N(2h + (OD − ID) + πd) + 2 tails.
 *
 * @param outer, inner, height dimensions of the core, m
 * @param wire diameter over the enamel, m
 * @param turns whole turns
 * @param tail length left at each end, m
 */
export function wireLength(
  core: { outer: number; inner: number; height: number },
  wire: number,
  turns: number,
  tail: number,
): number {
  return turns * (2 * core.height + core.outer - core.inner + Math.PI * wire) + 2 * tail;
}

/**
 * Peak flux density by Faraday's law for a sine, T: E/(√2·π·N·A·f), often written E/(4.44 N A f).
 *
 * @param voltage across the winding, V rms
 * @param turns whole turns
 * @param area cross section of the core, m²
 * @param frequency Hz
 */
export function peakFlux(voltage: number, turns: number, area: number, frequency: number): number {
  return voltage / (Math.SQRT2 * Math.PI * turns * area * frequency);
}

/**
 * Guideline for the peak flux density at which a core stays cool, T: 15 mT/√(f/MHz).
 *
 * It meets the makers' 57 G at 7 MHz and 150 G at 1 MHz; a guideline against heating, not the
 * saturation limit, which is tens of times higher.
 *
 * @param frequency Hz, 0.1 to 50 MHz
 * Source: makers' guideline, from memory.
 */
export function fluxGuide(frequency: number): number {
  return 15e-3 / Math.sqrt(frequency / 1e6);
}
