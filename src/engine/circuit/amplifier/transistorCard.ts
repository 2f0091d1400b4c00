/**
 * A bipolar transistor as the small-signal stages want it: the forward half of the published
 * Gummel–Poon equations. A fuller card may be given in its place.
 */
export interface TransistorCard {
  /** Transport saturation current, A. */
  readonly is: number;
  /** Ideal forward current gain, 1. */
  readonly bf: number;
  /** Early voltage, V; Infinity for none. */
  readonly vaf: number;
  /** Knee current, A, from which gain falls; Infinity for none. */
  readonly ikf: number;
  /** Leakage of the base–emitter junction, A, and its emission coefficient. */
  readonly ise: number;
  readonly ne: number;
  /** Resistance in series with the base, Ω. */
  readonly rb: number;
  /** Forward transit time, s. */
  readonly tf: number;
  /** Depletion capacitance at 0 V F, built-in voltage V and grading 1: base–emitter. */
  readonly cje: number;
  readonly vje: number;
  readonly mje: number;
  /** The same of base–collector. */
  readonly cjc: number;
  readonly vjc: number;
  readonly mjc: number;
  /** Share of the built-in voltage up to which the depletion formula holds, 1. */
  readonly fc: number;
}

/** How a card's currents go with temperature: exponents 1, gap of silicon V, the card's own K. */
export interface CardTemperature {
  readonly xti: number;
  readonly eg: number;
  readonly xtb: number;
  readonly tnom: number;
}

/** Usual figures of model cards; 27 °C is where simulators take a card to be measured. */
export const SILICON: CardTemperature = { xti: 3, eg: 1.11, xtb: 1.5, tnom: 300.15 };

/** Boltzmann’s constant over the elementary charge, V/K: exact, SI brochure, 9th edition. */
export const VOLT_PER_KELVIN = 1.380649e-23 / 1.602176634e-19;

/**
 * A card at another temperature: IS and ISE by the gap, BF by its exponent. From IS(T) follows the
 * −2 mV/K of a junction at constant current. Capacitances are left as they are: some percent in
 * 100 K.
 *
 * @param temperature of the junction, K
 * @source Antognetti & Massobrio, Semiconductor Device Modeling with SPICE, ch. 2 (from memory)
 */
export function cardAt(
  card: TransistorCard,
  temperature: number,
  { xti, eg, xtb, tnom }: CardTemperature = SILICON,
): TransistorCard {
  const ratio = temperature / tnom;
  const rise = ((ratio - 1) * eg) / (VOLT_PER_KELVIN * temperature) + xti * Math.log(ratio);
  const gain = ratio ** xtb;
  return {
    ...card,
    is: card.is * Math.exp(rise),
    bf: card.bf * gain,
    ise: (card.ise * Math.exp(rise / card.ne)) / gain,
  };
}

/**
 * Capacitance of a depletion layer, F: cj/(1 − v/vj)^m, from fc·vj on along the tangent.
 *
 * @param v voltage across the junction, V, positive forward
 */
export function depletion(cj: number, vj: number, m: number, fc: number, v: number): number {
  if (v < fc * vj) return cj / (1 - v / vj) ** m;
  return (cj / (1 - fc) ** (1 + m)) * (1 - fc * (1 + m) + (m * v) / vj);
}
