import type { BiasPoint } from './biasPoint.ts';
import { type TransistorCard, VOLT_PER_KELVIN } from './transistorCard.ts';

/** How a transistor's currents bend: i = i0 + … + second·v² + third·v³, v from base to emitter. */
export interface BentCurrents {
  /** Collector current: A/V², A/V³. */
  readonly collector: { readonly second: number; readonly third: number };
  /** Base current: A/V², A/V³. */
  readonly base: { readonly second: number; readonly third: number };
  /** Charge in the base for each ampere of collector current, s. */
  readonly transit: number;
}

/**
 * Taylor coefficients of the Gummel–Poon currents at an operating point, the knee at high current
 * included. Bent capacitances and the Early effect's own bend are left out: far below fT and away
 * from saturation they matter little.
 *
 * @param temperature of the junction, K
 * @source Gummel & Poon, Bell Syst. Tech. J. 49 (1970), 827; derivatives in closed form
 */
export function bentCurrents(
  card: TransistorCard,
  temperature: number,
  { vbe, vbc }: Pick<BiasPoint, 'vbe' | 'vbc'>,
): BentCurrents {
  const vt = VOLT_PER_KELVIN * temperature;
  const forward = card.is * Math.exp(vbe / vt);
  const early = 1 - vbc / card.vaf;
  const leak = card.ise > 0 ? card.ise * Math.exp(vbe / (card.ne * vt)) : 0;
  const [second, third] = kneeBend(forward, card.ikf, vt);
  const leakVt = card.ne * vt;
  return {
    collector: { second: early * second, third: early * third },
    base: {
      second: forward / card.bf / (2 * vt ** 2) + leak / (2 * leakVt ** 2),
      third: forward / card.bf / (6 * vt ** 3) + leak / (6 * leakVt ** 3),
    },
    transit: card.tf,
  };
}

/** v² and v³ coefficients of K(s − 1)/2 with s = √(1 + 4i/K): the collector current over its knee. */
function kneeBend(forward: number, knee: number, vt: number): readonly [number, number] {
  if (!Number.isFinite(knee)) return [forward / (2 * vt ** 2), forward / (6 * vt ** 3)];
  const s = Math.sqrt(1 + (4 * forward) / knee);
  // s′ = h/VT with h = (s − 1/s)/2.
  const h = (s - 1 / s) / 2;
  const slope = (1 + s ** -2) / 2;
  const bend = -(s ** -3);
  return [
    (knee * slope * h) / (4 * vt ** 2),
    (knee * (bend * h + slope ** 2) * h) / (12 * vt ** 3),
  ];
}
