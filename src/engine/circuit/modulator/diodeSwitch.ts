/**
 * How two diodes of a balanced modulator work together. `turns`: one conducts on either half of the
 * carrier, so that the audio is reversed; `together`: both on the same half, so that it is switched
 * on and off.
 */
export type DiodeAction = 'turns' | 'together';

/** Two alike diodes between a carrier and a load. */
export interface DiodePair {
  readonly action: DiodeAction;
  /** Peak voltage behind the carrier's source, V. */
  readonly emf: number;
  /** The carrier's source, Ω. */
  readonly source: number;
  /** Whole track of the trimmer between the diodes, half of it in each diode's branch, Ω, 0 … */
  readonly trimmer: number;
  /** Knee of the diodes, V; emission coefficient, 1; resistance in series, Ω. */
  readonly knee: number;
  readonly emission: number;
  readonly bulk: number;
  /** Impedance on the audio and output side, Ω. */
  readonly impedance: number;
}

/** Thermal voltage at 300 K, V: exact constants, SI brochure, 9th edition. */
export const MODULATOR_VT = (1.380649e-23 * 300) / 1.602176634e-19;

/** What the carrier makes of the diodes. */
export interface DiodeSwitch {
  /** Voltage of the carrier from which a diode conducts, V. */
  readonly knee: number;
  /** Angle of the carrier before that, rad. */
  readonly dead: number;
  /** Mean current of a diode while it conducts, A, and its resistance then, Ω. */
  readonly mean: number;
  readonly on: number;
  /** Loss of a perfect switch of this action, of the dead angle, and of the resistance, dB. */
  readonly ideal: number;
  readonly deadLoss: number;
  readonly onLoss: number;
}

/**
 * Conversion loss of a two-diode modulator from audio to one sideband, switched by a sine.
 *
 * The switch works while the carrier is above a knee u, from δ to π − δ with sin δ = u/emf. The
 * fundamental of a reversing switch that waits so long is 4/π·cos δ, half of it in each sideband;
 * of an on–off switch half that. Between equal resistances: π/2, 3.92 dB, or π, 9.94 dB, and cos δ.
 * The conducting diode stands between source and load R: 1 + r/(2R); two of them together in
 * parallel: half of r. r = n·VT/I + RS at the mean current while it conducts.
 *
 * The windings hold no direct voltage, so that the mean of the rectified current lowers the
 * diodes' own knee: by the part of it that drops in what lies across the windings. With cos δ and
 * δ to second order in u/emf that is a quadratic equation for u.
 *
 * Stops holding where the audio is not far below the carrier, and where charge stored in the diodes
 * counts.
 *
 * @return null where the carrier doesn't reach the knee
 * @source Fourier series of a square wave with gaps; tangent of the diode's exponential law
 */
export function diodeSwitch(pair: DiodePair): DiodeSwitch | null {
  const { action, emf, emission, bulk, impedance } = pair;
  if (!(emf > pair.knee)) return null;
  const branch = carrierBranch(pair);
  const lowered = ((action === 'turns' ? 2 : 1) * acrossWindings(pair)) / branch;
  const [a, b] = [lowered / (2 * Math.PI * emf), 1 - lowered / 2];
  const c = pair.knee - (lowered * emf) / Math.PI;
  // Hardly above the knee the second order is too coarse: nothing can raise the knee.
  const knee = c > 0 ? Math.min(pair.knee, (2 * c) / (b + Math.sqrt(b * b + 4 * a * c))) : 0;
  const dead = Math.asin(knee / emf);
  const open = Math.PI - 2 * dead;
  const mean = ((2 * emf * Math.cos(dead)) / open - knee) / branch;
  const on = (emission * MODULATOR_VT) / mean + bulk;
  return {
    knee,
    dead,
    mean,
    on,
    ideal: 20 * Math.log10(action === 'turns' ? Math.PI / 2 : Math.PI),
    deadLoss: -20 * Math.log10(Math.cos(dead)),
    onLoss: 20 * Math.log10(1 + on / ((action === 'turns' ? 2 : 4) * impedance)),
  };
}

/**
 * What lies across the windings as one branch sees it, Ω: where the diodes take turns the output,
 * of which half a winding sees a quarter; where they conduct together the carrier's source, twice.
 */
export const acrossWindings = ({ action, source, impedance }: DiodePair): number =>
  action === 'turns' ? impedance / 4 : 2 * source;

/** All that limits the carrier's current in one branch beside the diode itself, Ω. */
export const carrierBranch = (pair: DiodePair): number =>
  acrossWindings(pair) + (pair.action === 'turns' ? pair.source : 0) + pair.trimmer / 2;
