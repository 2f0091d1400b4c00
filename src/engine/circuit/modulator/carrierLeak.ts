import { carrierBranch, type DiodePair, type DiodeSwitch } from './diodeSwitch.ts';

/** What is not alike in the two halves of a balanced modulator. */
export interface Unbalance {
  /** How far from the true null the trimmer is left, as a share of its whole track, 1. */
  readonly step: number;
  /** Difference of the diodes' forward voltages, V. */
  readonly mismatch: number;
  /** Difference of the capacitances from the carrier to both halves, F. */
  readonly capacitance: number;
}

/** What of the carrier comes through. */
export interface CarrierLeak {
  /** Peak voltages at the output's half: in phase with the carrier, and in quadrature, V. */
  readonly inPhase: number;
  readonly quadrature: number;
  /** Unbalance in phase, before and after trimming, and what the trimmer can take out: peak A. */
  readonly fromDiodes: number;
  readonly fromStep: number;
  readonly reach: number;
  /** The same as a difference of the diodes' voltages, V. */
  readonly mismatchReach: number;
  /** Power of it in the load, W. */
  readonly power: number;
  /** The carrier's available power over that, dB. */
  readonly balance: number;
}

/**
 * Carrier left by a two-diode modulator whose halves are not quite alike: the difference of two
 * trains of cosine tips, to first order in the unbalance.
 *
 * A tip above the knee has the fundamental emf/R·γ, γ = (θ − sin θ)/(2π), θ = π − 2δ. A difference
 * ΔR in a branch takes the share ΔR/r of it, a difference ΔV of the knees takes 2·cos δ/π·ΔV/r;
 * what the trimmer can reach of the sum it takes out down to its step. A capacitance is always
 * there, and adds at a right angle.
 *
 * Diodes that take turns carry all of the carrier through one half of the output winding at a time,
 * which sees a quarter of the impedance. Diodes that conduct together give their difference to an
 * output of the full impedance; the carrier's source isn't in the way of the difference.
 *
 * @param on the diodes as switched
 * @param omega of the carrier, rad/s
 * @source Fourier coefficients of the clipped cosine; Norton's theorem
 */
export function carrierLeak(
  pair: DiodePair,
  on: Pick<DiodeSwitch, 'dead' | 'on'>,
  { step, mismatch, capacitance }: Unbalance,
  omega: number,
): CarrierLeak {
  const { emf, trimmer, source } = pair;
  const turns = pair.action === 'turns';
  const own = trimmer / 2 + on.on;
  const branch = carrierBranch(pair) + on.on;
  const difference = turns ? source + own : own;
  const output = turns ? pair.impedance / 4 : pair.impedance;
  const angle = Math.PI - 2 * on.dead;
  const tip = (angle - Math.sin(angle)) / (2 * Math.PI);
  const perOhm = ((emf / branch) * tip) / difference;
  const perVolt = (2 * Math.cos(on.dead)) / Math.PI / difference;
  const fromDiodes = perVolt * mismatch;
  const fromStep = perOhm * 2 * step * trimmer;
  const reach = perOhm * trimmer;
  const current = Math.max(fromStep, fromDiodes - reach);
  const load = 1 / ((turns ? 1 : 2) / difference + 1 / output);
  const share = turns ? 2 * tip : tip;
  const inPhase = current * load;
  const quadrature = omega * capacitance * emf * (output + (load - output) * share);
  const power = (inPhase ** 2 + quadrature ** 2) / (2 * output);
  return {
    inPhase,
    quadrature,
    fromDiodes,
    fromStep,
    reach,
    mismatchReach: reach / perVolt,
    power,
    balance: 10 * Math.log10(emf ** 2 / (8 * source) / power),
  };
}
