import { type JunctionWaves, junctionWaves } from './gummelPoon.ts';

/**
 * Everything a balance of harmonics needs room for, made once and used again.
 *
 * Unknowns: the voltages of the two junctions, base–emitter then base–collector, each as
 * [mean, Re 1, Im 1, Re 2, Im 2, …] of v(t) = V0 + Re Σ Vk e^(jkωt): peak values.
 */
export interface BalanceDesk {
  /** Highest harmonic. */
  readonly harmonics: number;
  /** Samples a period. */
  readonly samples: number;
  /** Numbers a junction takes: 2·harmonics + 1. */
  readonly width: number;
  /** cos and sin of m·2πn/samples, rows m = 0 … 2·harmonics. */
  readonly cos: Float64Array;
  readonly sin: Float64Array;
  readonly waves: JunctionWaves;
  /** Currents of the junctions, laid out like the unknowns, A. */
  readonly current: Float64Array;
  /** Spectra of the four conductances, two-sided coefficients Re, Im for m = 0 … 2·harmonics. */
  readonly conductance: readonly Float64Array[];
  /** Spectra of the four capacitances. */
  readonly capacitance: readonly Float64Array[];
  /** Jacobian of the currents at one harmonic: Re and Im row of either junction. */
  readonly rows: readonly Float64Array[];
  readonly matrix: Float64Array;
  readonly residual: Float64Array;
  readonly step: Float64Array;
  /** Voltages at which the transistor was made linear last, V. */
  readonly heldE: Float64Array;
  readonly heldC: Float64Array;
}

/**
 * @param harmonics highest harmonic, 0 … (0 is the operating point)
 * @param samples samples a period; four times the harmonics or more keep folding back small
 */
export function balanceDesk(harmonics: number, samples: number): BalanceDesk {
  const width = 2 * harmonics + 1;
  const cos = new Float64Array(width * samples);
  const sin = new Float64Array(width * samples);
  for (let m = 0; m < width; m += 1) {
    for (let n = 0; n < samples; n += 1) {
      // The remainder keeps the argument small, so that equal angles give equal numbers.
      const angle = (2 * Math.PI * ((m * n) % samples)) / samples;
      cos[m * samples + n] = Math.cos(angle);
      sin[m * samples + n] = Math.sin(angle);
    }
  }
  const blank = (size: number) => new Float64Array(size);
  const four = (size: number) => [blank(size), blank(size), blank(size), blank(size)];
  return {
    harmonics,
    samples,
    width,
    cos,
    sin,
    waves: junctionWaves(samples),
    current: blank(2 * width),
    conductance: four(2 * width),
    capacitance: four(2 * width),
    rows: four(2 * width),
    matrix: blank(4 * width * width),
    residual: blank(2 * width),
    step: blank(2 * width),
    heldE: blank(samples),
    heldC: blank(samples),
  };
}

/** Waveform of a spectrum [mean, Re 1, Im 1, …] that starts at `from`. */
export function waveOf(
  { cos, sin, samples, harmonics }: BalanceDesk,
  spectrum: Float64Array,
  from: number,
  wave: Float64Array,
): void {
  wave.fill(spectrum[from] ?? 0);
  for (let k = 1; k <= harmonics; k += 1) {
    const re = spectrum[from + 2 * k - 1] ?? 0;
    const im = spectrum[from + 2 * k] ?? 0;
    if (re === 0 && im === 0) continue;
    const row = k * samples;
    for (let n = 0; n < samples; n += 1) {
      wave[n] = (wave[n] ?? 0) + re * (cos[row + n] ?? 0) - im * (sin[row + n] ?? 0);
    }
  }
}

/**
 * Adds (jkω)^order times the peak coefficients of a waveform to a spectrum that starts at `from`.
 *
 * @param rate 0 to add the waveform itself; ω in rad/s to add its derivative
 */
export function addSpectrum(
  { cos, sin, samples, harmonics }: BalanceDesk,
  wave: Float64Array,
  rate: number,
  spectrum: Float64Array,
  from: number,
): void {
  for (let k = 0; k <= harmonics; k += 1) {
    const row = k * samples;
    let re = 0;
    let im = 0;
    for (let n = 0; n < samples; n += 1) {
      const x = wave[n] ?? 0;
      re += x * (cos[row + n] ?? 0);
      im -= x * (sin[row + n] ?? 0);
    }
    if (k === 0) {
      if (rate === 0) spectrum[from] = (spectrum[from] ?? 0) + re / samples;
      continue;
    }
    const at = from + 2 * k - 1;
    const scale = 2 / samples;
    spectrum[at] = (spectrum[at] ?? 0) + scale * (rate === 0 ? re : -k * rate * im);
    spectrum[at + 1] = (spectrum[at + 1] ?? 0) + scale * (rate === 0 ? im : k * rate * re);
  }
}

/** Two-sided coefficients of a waveform, Re and Im for m = 0 … 2·harmonics. */
export function coefficientsOf(
  { cos, sin, samples, width }: BalanceDesk,
  wave: Float64Array,
  out: Float64Array,
): void {
  for (let m = 0; m < width; m += 1) {
    const row = m * samples;
    let re = 0;
    let im = 0;
    for (let n = 0; n < samples; n += 1) {
      const x = wave[n] ?? 0;
      re += x * (cos[row + n] ?? 0);
      im -= x * (sin[row + n] ?? 0);
    }
    out[2 * m] = re / samples;
    out[2 * m + 1] = im / samples;
  }
}
