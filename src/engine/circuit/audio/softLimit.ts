/**
 * What a power stage makes of an envelope when it runs out of supply: straight at first, then bent
 * towards a ceiling.
 *
 * @param size of the envelope, @param ceiling in the same unit
 * @param sharpness of the knee: 1 soft, 2 to 3 as transistors have it, large an edge
 * @source C. Rapp, Proc. 2nd European Conf. on Satellite Communications, Liège, 1991
 */
export const softLimited = (size: number, ceiling: number, sharpness: number): number =>
  size / (1 + (size / ceiling) ** (2 * sharpness)) ** (1 / (2 * sharpness));

/** Bends an envelope's size in place, its phase kept: AM–AM alone. */
export function softLimit(
  re: Float64Array,
  im: Float64Array,
  ceiling: number,
  sharpness: number,
): void {
  const power = 2 * sharpness;
  const root = -1 / power;
  const per = 1 / (ceiling * ceiling);
  for (let i = 0; i < re.length; i += 1) {
    const a = re[i] as number;
    const b = im[i] as number;
    const x = (a * a + b * b) * per;
    // Far below the knee nothing changes that could be heard.
    if (x < 1e-6) continue;
    const gain = (1 + x ** sharpness) ** root;
    re[i] = a * gain;
    im[i] = b * gain;
  }
}

/** What a stage makes of an envelope, measured or worked: evenly spaced from 0. */
export interface LimitCurve {
  /** Sizes at the input: how far apart, and how many. */
  readonly step: number;
  /** Sizes at the output. */
  readonly given: Float64Array;
  /** Phase against that at small sizes or at any other, rad; null where it doesn't turn. */
  readonly turn: Float64Array | null;
}

/**
 * The same by a stage's own curve, size and phase, straight between its points; beyond the last the
 * output stays as it is there.
 */
export function limitByCurve(re: Float64Array, im: Float64Array, curve: LimitCurve): void {
  const { step, given, turn } = curve;
  const last = given.length - 1;
  for (let i = 0; i < re.length; i += 1) {
    const a = re[i] as number;
    const b = im[i] as number;
    const size = Math.sqrt(a * a + b * b);
    if (size === 0) continue;
    const at = size / step;
    const k = Math.min(last - 1, at | 0);
    const t = Math.min(1, at - k);
    const low = given[k] as number;
    const gain = (low + ((given[k + 1] as number) - low) * t) / size;
    if (turn === null) {
      re[i] = a * gain;
      im[i] = b * gain;
      continue;
    }
    const from = turn[k] as number;
    const angle = from + ((turn[k + 1] as number) - from) * t;
    const c = gain * Math.cos(angle);
    const d = gain * Math.sin(angle);
    re[i] = a * c - b * d;
    im[i] = a * d + b * c;
  }
}
