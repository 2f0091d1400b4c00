import type { Attempt } from './balanceNewton.ts';
import { type BalanceBench, harmonicBalance, type Near } from './harmonicBalance.ts';
import {
  besides,
  blankSurroundings,
  type PowerCircuit,
  powerSurroundings,
  sidesOf,
} from './powerCircuit.ts';

/**
 * Spectra at the terminals of a power stage: Re and Im of the peak for each harmonic from 0, V and
 * A. Base and collector current flow into the transistor. Of a push-pull stage they are those of one
 * side; antenna and network current are those of the whole.
 */
export interface PowerState extends Attempt {
  /** Open voltage of the driver, V peak. */
  readonly drive: number;
  readonly baseVoltage: Float64Array;
  readonly baseCurrent: Float64Array;
  readonly collectorVoltage: Float64Array;
  readonly collectorCurrent: Float64Array;
  readonly emitterVoltage: Float64Array;
  readonly emitterCurrent: Float64Array;
  /** Into the output network. */
  readonly networkCurrent: Float64Array;
  /** Voltage at the load. */
  readonly antenna: Float64Array;
}

/**
 * Periodic steady state of a power stage.
 *
 * @param drive open voltage of the driver at the fundamental, V peak
 * @param x unknowns of `bench.fine`; receives the state
 * @param near whether x already holds a state near by; `only`: nothing else is tried then
 */
export function powerState(
  bench: BalanceBench,
  circuit: PowerCircuit,
  drive: number,
  x: Float64Array,
  near: Near = false,
): PowerState {
  const { harmonics, width, current } = bench.fine;
  const around = powerSurroundings(circuit, drive, blankSurroundings(harmonics));
  const attempt = harmonicBalance(bench, circuit.model, around, x, near);
  const { model, emitter, network, frequency, feed, pushPull } = circuit;
  const blank = () => new Float64Array(2 * (harmonics + 1));
  const state = {
    baseVoltage: blank(),
    baseCurrent: blank(),
    collectorVoltage: blank(),
    collectorCurrent: blank(),
    emitterVoltage: blank(),
    emitterCurrent: blank(),
    networkCurrent: blank(),
    antenna: blank(),
  };
  for (let k = 0; k <= harmonics; k += 1) {
    const at = k === 0 ? 0 : 2 * k - 1;
    const re = 2 * k;
    const im = re + 1;
    const read = (from: Float64Array, p: number, imaginary: 0 | 1) =>
      k === 0 && imaginary === 1 ? 0 : (from[p * width + at + imaginary] ?? 0);
    const er = read(current, 0, 0);
    const ei = read(current, 0, 1);
    const br = er + read(current, 1, 0);
    const bi = ei + read(current, 1, 1);
    const cr = er - br;
    const ci = ei - bi;
    const x0 = 2 * Math.PI * frequency * k * emitter.l;
    const evr = emitter.r * er - x0 * ei;
    const evi = emitter.r * ei + x0 * er;
    // From the emitter up: its own resistance, the junctions, those of base and collector.
    const innerR = evr + model.re * er + read(x, 0, 0);
    const innerI = evi + model.re * ei + read(x, 0, 1);
    const cvr = innerR - read(x, 1, 0) + model.rc * cr;
    const cvi = innerI - read(x, 1, 1) + model.rc * ci;
    state.emitterCurrent[re] = er;
    state.emitterCurrent[im] = ei;
    state.baseCurrent[re] = br;
    state.baseCurrent[im] = bi;
    state.collectorCurrent[re] = cr;
    state.collectorCurrent[im] = ci;
    state.emitterVoltage[re] = evr;
    state.emitterVoltage[im] = evi;
    state.baseVoltage[re] = innerR + model.rb * br;
    state.baseVoltage[im] = innerI + model.rb * bi;
    state.collectorVoltage[re] = cvr;
    state.collectorVoltage[im] = cvi;
    if (k === 0) continue;
    const sides = sidesOf(circuit);
    const nr = (network.input[re] ?? 0) / sides;
    const ni = (network.input[im] ?? 0) / sides;
    const size = nr * nr + ni * ni;
    // Where two sides cancel, the network gets what they differ by: a source of current beside it.
    let [vr, vi] = [cvr, cvi];
    if (pushPull && k % 2 === 0) {
      const z = besides(circuit, k, feed.l, sides);
      vr = -pushPull.unlike * (cr * z.re - ci * z.im);
      vi = -pushPull.unlike * (cr * z.im + ci * z.re);
    }
    const jr = (vr * nr + vi * ni) / size;
    const ji = (vi * nr - vr * ni) / size;
    state.networkCurrent[re] = jr;
    state.networkCurrent[im] = ji;
    const tr = network.transfer[re] ?? 0;
    const ti = network.transfer[im] ?? 0;
    state.antenna[re] = jr * tr - ji * ti;
    state.antenna[im] = jr * ti + ji * tr;
  }
  return { ...attempt, ...state, drive };
}
