/** A complex figure: resistance and reactance in Ω, or the two parts of a ratio. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

/** What a two-port is to its neighbours. */
export interface TwoPortFigures {
  /** Impedance looking in with the load in place, Ω. */
  readonly input: Complex;
  /** Impedance looking back with the source in place, Ω. */
  readonly output: Complex;
  /** Voltage at the load over voltage at the input. */
  readonly voltageGain: Complex;
  /** Power in the load over what the source could give, ratio. */
  readonly transducerGain: number;
  /** Power in the load over power into the input, ratio; negative where the input gives power. */
  readonly powerGain: number;
}

/**
 * Impedances and gains of a two-port between any source and load.
 *
 * @param s real and imaginary parts of s11, s12, s21, s22 in turn
 * @param ends resistances that s is referred to, Ω
 * @param source, load what really stands there, Ω; left out: the resistances themselves
 * @source Gonzalez, Microwave Transistor Amplifiers, ch. 3 (power gain equations)
 */
export function twoPortFigures(
  s: Float64Array,
  ends: readonly [number, number],
  source: Complex = { re: ends[0], im: 0 },
  load: Complex = { re: ends[1], im: 0 },
): TwoPortFigures {
  const s11 = { re: s[0] as number, im: s[1] as number };
  const s12 = { re: s[2] as number, im: s[3] as number };
  const s21 = { re: s[4] as number, im: s[5] as number };
  const s22 = { re: s[6] as number, im: s[7] as number };
  const back = times(s12, s21);
  const sourceWave = reflection(source, ends[0]);
  const loadWave = reflection(load, ends[1]);
  const behind = minus(ONE, times(s22, loadWave));
  const before = minus(ONE, times(s11, sourceWave));
  const inWave = plus(s11, over(times(back, loadWave), behind));
  const outWave = plus(s22, over(times(back, sourceWave), before));
  const forward = square(s21);
  const taken = 1 - square(loadWave);
  const ratio = Math.sqrt(ends[1] / ends[0]);
  const volts = over(times(s21, plus(ONE, loadWave)), times(behind, plus(ONE, inWave)));
  return {
    input: impedance(inWave, ends[0]),
    output: impedance(outWave, ends[1]),
    voltageGain: { re: volts.re * ratio, im: volts.im * ratio },
    transducerGain:
      ((1 - square(sourceWave)) * forward * taken) /
      (square(minus(ONE, times(sourceWave, inWave))) * square(behind)),
    powerGain: (forward * taken) / ((1 - square(inWave)) * square(behind)),
  };
}

const ONE: Complex = { re: 1, im: 0 };
const plus = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
const minus = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
const times = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});
const square = (a: Complex): number => a.re * a.re + a.im * a.im;
const over = (a: Complex, b: Complex): Complex => {
  const size = square(b);
  return { re: (a.re * b.re + a.im * b.im) / size, im: (a.im * b.re - a.re * b.im) / size };
};
const reflection = (z: Complex, r: number): Complex =>
  over({ re: z.re - r, im: z.im }, { re: z.re + r, im: z.im });
const impedance = (wave: Complex, r: number): Complex => {
  const z = over(plus(ONE, wave), minus(ONE, wave));
  return { re: z.re * r, im: z.im * r };
};
