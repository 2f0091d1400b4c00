import type { Ladder } from './ladder.ts';
import { CHAIN_SIZE, ladderChain } from './ladderChain.ts';
import { LEAKY_SIZE, leakyDrive } from './leakyDrive.ts';

/** What `ladderResponse` fills; each as long as the frequencies, each may be left out. */
export interface LadderFigures {
  /** Transducer gain, dB. */
  readonly gain?: Float64Array;
  /** Phase of the forward transmission, rad, without jumps from point to point. */
  readonly phase?: Float64Array;
  /** Group delay, s. */
  readonly delay?: Float64Array;
  /** Impedance that the filter shows to the source, Ω. */
  readonly inputR?: Float64Array;
  readonly inputX?: Float64Array;
  /** Impedance that the filter shows to the load, Ω. */
  readonly outputR?: Float64Array;
  readonly outputX?: Float64Array;
  /** Return loss at the source's and the load's end against their own impedance, dB. */
  readonly returnLoss?: Float64Array;
  readonly outputReturnLoss?: Float64Array;
}

const state = new Float64Array(CHAIN_SIZE);
const leak = new Float64Array(LEAKY_SIZE);
const port = new Float64Array(2);

/**
 * Full response of a ladder: gain, phase, group delay, and the impedances at both ends.
 *
 * Group delay is the derivative of the phase, worked with the chain itself.
 *
 * @param frequency Hz, rising
 */
export function ladderResponse(
  ladder: Ladder,
  frequency: Float64Array,
  figures: LadderFigures,
): void {
  const { source, load } = ladder;
  const wantsOutput = figures.outputR || figures.outputX || figures.outputReturnLoss;
  let last = 0;
  for (let i = 0; i < frequency.length; i += 1) {
    const f = frequency[i] as number;
    const delay = drive(ladder, f);
    const er = leak[0] as number;
    const ei = leak[1] as number;
    if (figures.gain) {
      figures.gain[i] = 10 * Math.log10((4 * source[0] * load[0]) / (er * er + ei * ei));
    }
    if (figures.phase) {
      const phase = -Math.atan2(ei, er);
      last = i === 0 ? phase : phase + 2 * Math.PI * Math.round((last - phase) / (2 * Math.PI));
      figures.phase[i] = last;
    }
    if (figures.delay) figures.delay[i] = delay;
    port[0] = leak[2] as number;
    port[1] = leak[3] as number;
    if (figures.inputR) figures.inputR[i] = port[0];
    if (figures.inputX) figures.inputX[i] = port[1];
    if (figures.returnLoss) figures.returnLoss[i] = returnLossOf(port[0], port[1], source);
    if (!wantsOutput) continue;
    outputImpedance(ladder, f);
    if (figures.outputR) figures.outputR[i] = port[0];
    if (figures.outputX) figures.outputX[i] = port[1];
    if (figures.outputReturnLoss) {
      figures.outputReturnLoss[i] = returnLossOf(port[0], port[1], load);
    }
  }
}

/**
 * Return loss of an impedance against a source, dB: 20 log |Z + Zs| / |Z − Zs*|.
 * Power waves, so that 0 dB is total reflection whatever the source's reactance. Where most comes
 * back, the logarithm is taken as 2 artanh b with (1 + b)/(1 − b) for the ratio: that keeps its
 * digits next to 0 dB.
 */
function returnLossOf(r: number, x: number, zs: readonly [number, number]): number {
  const on = (r + zs[0]) ** 2 + (x + zs[1]) ** 2;
  const off = (r - zs[0]) ** 2 + (x + zs[1]) ** 2;
  if (2 * off < on) return 10 * Math.log10(on / off);
  const b = (4 * r * zs[0]) / (on + off);
  return (20 / Math.LN10) * Math.atanh(b);
}

/** Source voltage for one ampere in the load and input impedance, into `leak`; answers the delay. */
function drive(ladder: Ladder, f: number): number {
  if (ladder.leakage > 0) {
    leakyDrive(ladder, f, leak);
    return leak[4] as number;
  }
  const { source, load } = ladder;
  state.fill(0);
  state[0] = load[0];
  state[1] = load[1];
  state[2] = 1;
  ladderChain(ladder, f, state);
  const [vr, vi, ir, ii, ur, ui, jr, ji] = state as unknown as Eight;
  const er = vr + source[0] * ir - source[1] * ii;
  const ei = vi + source[0] * ii + source[1] * ir;
  const size = 1 / (ir * ir + ii * ii);
  leak[0] = er;
  leak[1] = ei;
  leak[2] = (vr * ir + vi * ii) * size;
  leak[3] = (vi * ir - vr * ii) * size;
  const dr = ur + source[0] * jr - source[1] * ji;
  const di = ui + source[0] * ji + source[1] * jr;
  return (di * er - dr * ei) / (er * er + ei * ei);
}

type Eight = [number, number, number, number, number, number, number, number];

function outputImpedance(ladder: Ladder, f: number): void {
  if (ladder.leakage > 0) {
    leakyDrive(ladder, f, leak, true);
    port[0] = leak[2] as number;
    port[1] = leak[3] as number;
    return;
  }
  state.fill(0);
  state[0] = ladder.source[0];
  state[1] = ladder.source[1];
  state[2] = 1;
  ladderChain(ladder, f, state, true);
  const [vr, vi, ir, ii] = state as unknown as Eight;
  const size = 1 / (ir * ir + ii * ii);
  port[0] = (vr * ir + vi * ii) * size;
  port[1] = (vi * ir - vr * ii) * size;
}
