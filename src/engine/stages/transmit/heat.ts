import { speechEnvelope } from '../../circuit/speechEnvelope.ts';

/** Powers and temperatures of a final. W, A, V, K, K/W. */
export interface HeatAsked {
  readonly supply: number;
  readonly collectorPower: number;
  readonly quiescent: number;
  readonly dcCurrent: number;
  /** Mean over peak envelope power of speech, fraction. */
  readonly speechMean: number;
}

/** Mean envelope of two equal tones over its peak: the mean of |cos|. */
const TWO_TONE_ENVELOPE = 2 / Math.PI;

/**
 * Supply current and heat of the final for a tone, two tones and speech. The current is taken to
 * rise in a straight line with the envelope from its standing value to that at the peak: exact in
 * classes A and B, close in AB.
 *
 * @return heat in the transistor W: with a tone at full power, with the tone that heats most, with
 *   two tones, on speech; and mean supply currents, A
 */
export function heat(asked: HeatAsked) {
  const { supply, collectorPower, quiescent, dcCurrent, speechMean } = asked;
  const rise = dcCurrent - quiescent;
  const current = (envelope: number) => quiescent + rise * envelope;
  // Heat of a tone at envelope x is Vcc·I(x) − P·x²: greatest where its slope is nought.
  const worst = Math.min(1, (supply * rise) / (2 * collectorPower));
  const twoToneCurrent = current(TWO_TONE_ENVELOPE);
  const speechCurrent = current(speechEnvelope(speechMean));
  return {
    dissipation: supply * dcCurrent - collectorPower,
    dissipationTone: supply * current(worst) - collectorPower * worst ** 2,
    twoToneCurrent,
    dissipationTwoTone: supply * twoToneCurrent - collectorPower / 2,
    speechCurrent,
    dissipationSpeech: supply * speechCurrent - collectorPower * speechMean,
  };
}

/** The way of the heat from the junction to the air, K/W. */
export interface HeatPath {
  readonly toCase: number | null;
  readonly toAmbient: number;
  readonly contact: number;
  /** Heat sink; null for a free-standing case. */
  readonly sink: number | null;
}

/** Thermal resistance from junction to air, K/W. */
export function thermalResistance({ toCase, toAmbient, contact, sink }: HeatPath): number {
  return sink === null || toCase === null ? toAmbient : toCase + contact + sink;
}

/**
 * Greatest thermal resistance of a heat sink that keeps the junction cool enough:
 * (Tj − Ta)/Pd − RθJC − RθCS.
 *
 * @param power heat, W
 * @param room junction temperature allowed less that of the air, K
 * @return K/W; null where the free-standing case is enough; 0 or less where no sink can do it
 */
export function sinkNeeded(
  power: number,
  room: number,
  { toCase, toAmbient, contact }: Omit<HeatPath, 'sink'>,
): number | null {
  if (power * toAmbient <= room) return null;
  return toCase === null ? 0 : room / power - toCase - contact;
}
