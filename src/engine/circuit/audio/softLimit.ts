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

/**
 * The same by a stage's own curve, straight between its points, from 0: beyond the last it stays.
 *
 * @param drive rising sizes at the input, evenly spaced from 0, @param given sizes at the output
 */
export function limitByCurve(
  re: Float64Array,
  im: Float64Array,
  drive: Float64Array,
  given: Float64Array,
): void {
  const last = drive.length - 1;
  const step = (drive[last] as number) / last;
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
    re[i] = a * gain;
    im[i] = b * gain;
  }
}
