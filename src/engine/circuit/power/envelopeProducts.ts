/** Intermodulation of two equal tones, order 3, 5, 7 …: dB. */
export interface EnvelopeProducts {
  /** Each product against the peak envelope power, dB. */
  readonly belowPep: readonly number[];
  /** Each product against one of the tones, dB: some 6 dB more than the other. */
  readonly belowTone: readonly number[];
  /** One tone against the peak envelope power, dB: −6.02 where nothing flattens. */
  readonly tone: number;
  /** Mean power over peak envelope power, ratio: a half where nothing flattens. */
  readonly mean: number;
}

/**
 * Drives at which a stage has to be known for `envelopeProducts`: the points at which the
 * envelope |cos| of two equal tones is sampled.
 *
 * @param peak drive at the crest of the envelope
 * @param points how many; products up to the order 2·points − 1 can be told
 * @return falling, which is how a sweep of the drive finds its way best
 */
export function envelopeDrives(peak: number, points: number): Float64Array {
  return Float64Array.from(
    { length: points },
    (_, j) => peak * Math.cos(((j + 0.5) * Math.PI) / (2 * points)),
  );
}

/**
 * Two equal tones through a stage whose output's size and phase depend on its drive (AM–AM and
 * AM–PM), slowly enough that it follows its envelope.
 *
 * The two tones are a carrier with the envelope A·cos ϑ, sign and all; the output y(A·cos ϑ), odd in
 * its argument, has the Fourier coefficients c1 (both tones), c3, c5 …: product over tone is
 * |cn/c1|, and a tone is |c1|/2.
 *
 * @param re, im output at the drives of `envelopeDrives`, in any one unit of volts
 * @param peak output at the crest itself, same unit: its size
 * @param highest highest order, odd
 *
 * Stops holding where bias or supply can't follow the envelope, or the network's passband is not
 * wide against the spacing of the tones. Source: Maas, Nonlinear Microwave and RF Circuits,
 * section 4 (from memory); the sum is Gauss–Chebyshev quadrature, closed form.
 */
export function envelopeProducts(
  re: Float64Array,
  im: Float64Array,
  peak: number,
  highest: number,
): EnvelopeProducts {
  const points = re.length;
  const size = (order: number) => {
    let sr = 0;
    let si = 0;
    for (let j = 0; j < points; j += 1) {
      const c = Math.cos((order * (j + 0.5) * Math.PI) / (2 * points));
      sr += (re[j] ?? 0) * c;
      si += (im[j] ?? 0) * c;
    }
    return (2 * Math.hypot(sr, si)) / points;
  };
  const tone = size(1);
  const orders: number[] = [];
  for (let order = 3; order <= highest; order += 2) orders.push(size(order));
  const db = (ratio: number) => 20 * Math.log10(ratio);
  let power = 0;
  for (let j = 0; j < points; j += 1) power += (re[j] ?? 0) ** 2 + (im[j] ?? 0) ** 2;
  return {
    belowPep: orders.map((c) => db(c / (2 * peak))),
    belowTone: orders.map((c) => db(c / tone)),
    tone: db(tone / (2 * peak)),
    mean: power / (points * peak * peak),
  };
}
