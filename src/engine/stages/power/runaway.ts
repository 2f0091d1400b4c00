/** What decides whether the standing current runs away. V, Ω, A, K, K/W. */
export interface RunawayAsked {
  readonly supply: number;
  /** Warming of the junction for each watt that the bias does not follow. */
  readonly drift: number;
  /** Emitter resistor of each, and what the bias path adds to it as seen there. */
  readonly ballast: number;
  readonly bias: number;
  /** Standing current of each. */
  readonly standing: number;
  /** Thermal voltage. */
  readonly thermalVoltage: number;
}

/** Fall of the base–emitter voltage with temperature at constant current, V/K. */
export const FALL = 2e-3;
/** Elementary charge C and Boltzmann's constant J/K: exact, SI brochure, 9th edition. */
export const CHARGE = 1.602176634e-19;
export const BOLTZMANN = 1.380649e-23;
/** Thermal loop up to which the stage holds well. */
export const WELL = 0.5;

/**
 * Thermal loop of a final's standing current: a kelvin lowers the base–emitter voltage by 2 mV, that
 * raises the current by 2 mV/(VT/I + R), that makes Vcc times as much heat, and that so many kelvins.
 *
 * @return loop (1: it runs away); the standing current A at which it becomes 1, null where it never
 *   does; the emitter resistor Ω that holds it at any current
 *
 * Holds for slow changes at small drive; the collector's mean voltage is the supply's. Source: closed
 * form; Gray & Meyer, Analysis and Design of Analog Integrated Circuits, on output stages (from memory).
 */
export function runaway(asked: RunawayAsked) {
  const { supply, drift, ballast, bias, standing, thermalVoltage } = asked;
  const worst = FALL * supply * drift;
  const held = ballast + bias;
  return {
    loop: (worst * standing) / (thermalVoltage + standing * held),
    from: worst > held ? thermalVoltage / (worst - held) : null,
    needed: Math.max(0, worst - bias),
  };
}

export const steadyOf = (loop: number): 'holds' | 'close' | 'fails' => {
  if (loop >= 1) return 'fails';
  return loop > WELL ? 'close' : 'holds';
};
