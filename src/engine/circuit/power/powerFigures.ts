import { type BalanceDesk, waveOf } from './balanceDesk.ts';
import type { PowerBudget } from './powerBudget.ts';
import { type PowerCircuit, sidesOf } from './powerCircuit.ts';
import type { PowerState } from './powerState.ts';

/** What stands for a harmonic that isn't there, dB. */
const NOTHING = -300;

/** What a power stage does in its steady state, for people. */
export interface PowerFigures {
  /** Power at the load, fundamental alone, W. */
  readonly power: number;
  /** Harmonics at the load against the fundamental, dBc, from the second on. */
  readonly harmonics: readonly number[];
  /** The same of the collector's voltage and current. */
  readonly collectorVoltageHarmonics: readonly number[];
  readonly collectorCurrentHarmonics: readonly number[];
  /** Direct currents, both sides together, A. */
  readonly collectorCurrent: number;
  readonly baseCurrent: number;
  /** Power at the load over what the supply gives, fraction. */
  readonly efficiency: number;
  /** Power into the output network over what the supply gives, fraction. */
  readonly collectorEfficiency: number;
  /** Heat in the transistors, W. */
  readonly dissipation: number;
  /** Power out of the driver's terminals, and the most it could give, W. */
  readonly driven: number;
  readonly available: number;
  /** Power into the output network over power out of the driver, ratio. */
  readonly gain: number;
  /**
   * What the driver works into at the fundamental, resistors at the base included, from base to base
   * in push-pull, Ω: Re, Im.
   */
  readonly input: readonly [number, number];
  /** Phase of the load's voltage against the driver's, rad. */
  readonly phase: number;
  /** Greatest collector–emitter voltage V, and collector current of one side A. */
  readonly peakVoltage: number;
  readonly peakCurrent: number;
}

/** One period, evenly sampled: collector–emitter voltage V, collector current A, base–emitter voltage V. */
export interface PowerWaves {
  readonly voltage: Float64Array;
  readonly current: Float64Array;
  readonly base: Float64Array;
}

/** Figures of a state; powers from `powerBudget`. */
export function powerFigures(
  circuit: PowerCircuit,
  state: PowerState,
  budget: PowerBudget,
  waves: PowerWaves,
): PowerFigures {
  const { driver, bias, shunt } = circuit;
  const sides = sidesOf(circuit);
  const { antenna, baseVoltage, baseCurrent, collectorCurrent, collectorVoltage, drive } = state;
  const across = 1 / shunt + 1 / bias.across;
  const vr = baseVoltage[2] ?? 0;
  const vi = baseVoltage[3] ?? 0;
  const ir = (baseCurrent[2] ?? 0) + vr * across;
  const ii = (baseCurrent[3] ?? 0) + vi * across;
  const size = ir * ir + ii * ii;
  const into = budget.fundamental + budget.harmonics + budget.network;
  return {
    power: budget.fundamental,
    harmonics: belowFundamental(antenna),
    collectorVoltageHarmonics: belowFundamental(collectorVoltage),
    collectorCurrentHarmonics: belowFundamental(collectorCurrent),
    collectorCurrent: sides * (collectorCurrent[0] ?? 0),
    baseCurrent: sides * (baseCurrent[0] ?? 0),
    efficiency: budget.fundamental / budget.supply,
    collectorEfficiency: into / budget.supply,
    dissipation: budget.transistor,
    driven: budget.driver,
    available: (sides * drive ** 2) / (8 * (driver[2] ?? 0)),
    gain: into / budget.driver,
    input: [(sides * (vr * ir + vi * ii)) / size, (sides * (vi * ir - vr * ii)) / size],
    phase: Math.atan2(antenna[3] ?? 0, antenna[2] ?? 0),
    peakVoltage: waves.voltage.reduce((most, v) => Math.max(most, v), 0),
    peakCurrent: waves.current.reduce((most, i) => Math.max(most, i), 0),
  };
}

/** Waveforms of a state over one period, as many samples as the desk has. */
export function powerWaves(desk: BalanceDesk, state: PowerState): PowerWaves {
  const blank = () => new Float64Array(desk.samples);
  const [voltage, current, base, emitter] = [blank(), blank(), blank(), blank()];
  waveOf(desk, packed(state.collectorVoltage), 0, voltage);
  waveOf(desk, packed(state.collectorCurrent), 0, current);
  waveOf(desk, packed(state.baseVoltage), 0, base);
  waveOf(desk, packed(state.emitterVoltage), 0, emitter);
  for (let n = 0; n < desk.samples; n += 1) {
    voltage[n] = (voltage[n] ?? 0) - (emitter[n] ?? 0);
    base[n] = (base[n] ?? 0) - (emitter[n] ?? 0);
  }
  return { voltage, current, base };
}

/** Mean, Re 1, Im 1, …: a spectrum without the imaginary part of its mean. */
const packed = (v: Float64Array) => Float64Array.of(v[0] ?? 0, ...v.subarray(2));

function belowFundamental(v: Float64Array): number[] {
  const size = (k: number) => Math.hypot(v[2 * k] ?? 0, v[2 * k + 1] ?? 0);
  const out: number[] = [];
  for (let k = 2; 2 * k < v.length; k += 1) {
    out.push(Math.max(NOTHING, 20 * Math.log10(size(k) / size(1))));
  }
  return out;
}
