import { rollett } from '../nodal/rollett.ts';
import { scattering, type TwoPort, twoPort } from '../nodal/scattering.ts';
import { type TwoPortFigures, twoPortFigures } from '../nodal/twoPortFigures.ts';
import type { BiasPoint } from './biasPoint.ts';
import type { StageCircuit } from './stageCircuit.ts';

/** A stage between its neighbours at one frequency. */
export interface StageFigures extends TwoPortFigures {
  /** Rollett's factor at this frequency. */
  readonly stability: number;
  /** Greatest peak voltage at the output before the first limit, V, and which limit it is. */
  readonly most: number;
  readonly limit: 'current' | 'voltage';
}

/** A stage closed by its neighbours' resistances, ready for any frequency. */
export const closeStage = (circuit: StageCircuit, ends: readonly [number, number]): TwoPort =>
  twoPort(circuit.net, circuit.ports, ends);

/**
 * Gain, impedances, stability and headroom of a stage that `closeStage` has closed.
 *
 * @param frequency Hz
 * @param bias operating point
 * @param keeps collector–emitter voltage that no signal may use, V
 * @return null where the circuit has no answer
 */
export function stageFigures(
  { device, pi }: StageCircuit,
  two: TwoPort,
  frequency: number,
  bias: Pick<BiasPoint, 'collectorCurrent' | 'vce'>,
  keeps: number,
): StageFigures | null {
  if (!scattering(two, frequency)) return null;
  const { re, im } = two.first;
  const at = (x: Float64Array, node: number) => (node === 0 ? 0 : (x[node - 1] ?? 0));
  const across = (x: Float64Array) => at(x, device.collector) - at(x, device.emitter);
  const current = (x: Float64Array) =>
    pi.gm * (at(x, device.inner) - at(x, device.emitter)) + pi.go * across(x);
  const output = Math.hypot(at(re, two.ports[1]), at(im, two.ports[1]));
  const byCurrent = (bias.collectorCurrent * output) / Math.hypot(current(re), current(im));
  const byVoltage = (Math.max(0, bias.vce - keeps) * output) / Math.hypot(across(re), across(im));
  return {
    ...twoPortFigures(two.s, two.ends),
    stability: rollett(two.s).k,
    most: Math.min(byCurrent, byVoltage),
    limit: byCurrent < byVoltage ? 'current' : 'voltage',
  };
}
