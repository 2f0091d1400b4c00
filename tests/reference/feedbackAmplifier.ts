/** A common-emitter stage with an emitter resistor and a resistor from collector to base. */
export interface FeedbackStage {
  /** Emitter current at rest, A. */
  readonly current: number;
  /** Emitter resistor that no capacitor bridges, Ω, 0 … */
  readonly emitter: number;
  /** Resistor from collector to base, Ω. */
  readonly feedback: number;
  /** Load at the collector, Ω. */
  readonly load: number;
  /** Source at the base, Ω. */
  readonly source: number;
  /** Current gain at the frequency in question, 1: see `currentGain`. */
  readonly beta: number;
  /** Current gain for direct current, 1; only its base current's noise depends on it. */
  readonly hfe: number;
  /** Resistance of the base itself, Ω. */
  readonly base: number;
}

/** What the stage is to its neighbours. */
export interface FeedbackFigures {
  /** Collector over base voltage, negative. */
  readonly voltageGain: number;
  /** Input resistance with the load in place, Ω. */
  readonly input: number;
  /** Output resistance with the source in place, Ω. */
  readonly output: number;
  /** Power in the load over power into the stage, ratio. */
  readonly powerGain: number;
  /** Noise factor at 290 K from this source, ratio; the load's own noise is not counted. */
  readonly noiseFactor: number;
  /** Greatest peak collector voltage before the current swings down to nothing, V. */
  readonly currentLimitedSwing: number;
}

/** Thermal voltage kT/q at 300 K, V. Exact constants: SI brochure, 9th edition. */
export const THERMAL_VOLTAGE = (1.380649e-23 * 300) / 1.602176634e-19;
/** q/(2kT0) at 290 K, 1/V: shot noise of a current against thermal noise of a conductance. */
const SHOT_PER_VOLT = 1.602176634e-19 / (2 * 1.380649e-23 * 290);

/**
 * Gain, resistances and noise of a degenerated common-emitter stage with shunt feedback: the half
 * of a two-way amplifier. Hybrid-pi with rπ, gm and rbb', solved on its two nodes in closed form.
 *
 * Stops holding where the phase of the current gain matters (near fT/10), where Cob times the
 * load does, and where the transistor's own output resistance is not far above the load.
 *
 * Source: nodal analysis; the same form in Gray & Meyer, Analysis and Design of Analog Integrated
 * Circuits, ch. 8 (shunt-shunt feedback) and ch. 11 (noise).
 */
export function feedbackAmplifier(s: FeedbackStage): FeedbackFigures {
  const re = THERMAL_VOLTAGE / s.current;
  const branch = s.base + (s.beta + 1) * (re + s.emitter);
  const gm = s.beta / branch;
  const gi = 1 / branch;
  const gf = 1 / s.feedback;
  const gl = 1 / s.load;
  const gs = 1 / s.source;

  const voltageGain = -(gm - gf) / (gf + gl);
  const input = 1 / (gi + gf * (1 - voltageGain));
  const output = 1 / (gf + ((gm - gf) * gf) / (gf + gi + gs));
  return {
    voltageGain,
    input,
    output,
    powerGain: (voltageGain ** 2 * input) / s.load,
    noiseFactor: 1 + noiseAdded(s, { re, branch, gm, back: (gs + gi + gf) / (gm - gf) }),
    currentLimitedSwing: (s.current * Math.abs(voltageGain)) / gm,
  };
}

/** Noise of each part as a current at the input, over that of the source. */
function noiseAdded(
  s: FeedbackStage,
  // `back`: a current at the collector as one at the base
  { re, branch, gm, back }: { re: number; branch: number; gm: number; back: number },
): number {
  const resistors = (s.base + s.emitter) * (1 / branch - gm * back) ** 2;
  const feedback = (1 + back) ** 2 / s.feedback;
  const baseCurrent = s.current / (s.hfe + 1);
  const rpi = (s.beta + 1) * re;
  const baseShot =
    SHOT_PER_VOLT *
    baseCurrent *
    ((rpi + s.beta * s.emitter) / branch + gm * (s.base + s.emitter) * back) ** 2;
  const collectorShot =
    SHOT_PER_VOLT *
    (s.current - baseCurrent) *
    (s.emitter / branch + (1 - gm * s.emitter) * back) ** 2;
  return s.source * (resistors + feedback + baseShot + collectorShot);
}
