import type { BiasPoint } from './biasPoint.ts';
import { depletion, type TransistorCard, VOLT_PER_KELVIN } from './transistorCard.ts';

/** A transistor for small signals at its operating point. */
export interface HybridPi {
  /** Base terminal to inner base, Ω. */
  readonly rb: number;
  /** Inner base to emitter, S and F. */
  readonly gpi: number;
  readonly cpi: number;
  /** Collector current by inner base–emitter voltage, S. */
  readonly gm: number;
  /** Inner base to collector, F. */
  readonly cmu: number;
  /** Collector to emitter, S. */
  readonly go: number;
  /** Charge of the inner base by collector voltage, F: the base grows narrower. */
  readonly cec: number;
}

/**
 * The hybrid-pi model at an operating point: the slopes of the currents and charges there.
 *
 * Stops holding near fT, where the charge in the base no longer follows at once.
 *
 * @param card at the junction's temperature
 * @param temperature of the junction, K
 * @source Gray & Meyer, Analysis and Design of Analog Integrated Circuits, ch. 1
 */
export function hybridPi(
  card: TransistorCard,
  temperature: number,
  { vbe, vbc }: Pick<BiasPoint, 'vbe' | 'vbc'>,
): HybridPi {
  const vt = VOLT_PER_KELVIN * temperature;
  const forward = card.is * Math.expm1(vbe / vt);
  const slope = (forward + card.is) / vt;
  const early = 1 - vbc / card.vaf;
  // Current i/q with q = (1 + √(1 + 4i/IKF))/2, and its slope by i.
  const root = Math.sqrt(1 + (4 * forward) / card.ikf);
  const knee = (1 + root) / 2;
  const kneeSlope = 1 / knee - forward / (card.ikf * root * knee * knee);
  const transport = slope * early * kneeSlope;
  const go = forward / knee / card.vaf;
  const leak = card.ise > 0 ? card.ise * Math.exp(vbe / (card.ne * vt)) : 0;
  return {
    rb: card.rb,
    gpi: slope / card.bf + leak / (card.ne * vt),
    cpi: card.tf * transport + depletion(card.cje, card.vje, card.mje, card.fc, vbe),
    gm: transport - go,
    cmu: depletion(card.cjc, card.vjc, card.mjc, card.fc, vbc),
    go,
    cec: card.tf * go,
  };
}

/** A transistor without supply: only what its junctions' capacitances at 0 V join. */
export function hybridPiOff(card: TransistorCard): HybridPi {
  return { rb: card.rb, gpi: 0, cpi: card.cje, gm: 0, cmu: card.cjc, go: 0, cec: 0 };
}

/** Frequency at which the current gain with the collector at rest has fallen to 1, Hz. */
export const transitionOf = (pi: HybridPi): number => pi.gm / (2 * Math.PI * (pi.cpi + pi.cmu));
