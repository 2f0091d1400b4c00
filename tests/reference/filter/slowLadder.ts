import type { Ladder } from '../../../src/engine/circuit/ladder.ts';

type Complex = readonly [number, number];
type Matrix = readonly [Complex, Complex, Complex, Complex];

const add = (a: Complex, b: Complex): Complex => [a[0] + b[0], a[1] + b[1]];
const times = (a: Complex, b: Complex): Complex => [
  a[0] * b[0] - a[1] * b[1],
  a[0] * b[1] + a[1] * b[0],
];
const inverse = (a: Complex): Complex => {
  const size = a[0] ** 2 + a[1] ** 2;
  return [a[0] / size, -a[1] / size];
};
const one: Complex = [1, 0];
const zero: Complex = [0, 0];
const chain = (p: Matrix, q: Matrix): Matrix => [
  add(times(p[0], q[0]), times(p[1], q[2])),
  add(times(p[0], q[1]), times(p[1], q[3])),
  add(times(p[2], q[0]), times(p[3], q[2])),
  add(times(p[2], q[1]), times(p[3], q[3])),
];

/**
 * Transducer gain of a ladder, dB, the slow and obvious way: a product of chain matrices of complex
 * numbers. Shares nothing with the engine's kernel.
 */
export function slowGain(ladder: Ladder, f: number): number {
  const w = 2 * Math.PI * f;
  const capacitor = (c: number): Complex => [(w * c) / ladder.capacitorQ, w * c];
  let whole: Matrix = [one, zero, zero, one];
  const shunt = (y: Complex) => {
    whole = chain(whole, [one, zero, y, one]);
  };
  const series = (z: Complex) => {
    whole = chain(whole, [one, z, zero, one]);
  };
  shunt(capacitor(ladder.endC[0]));
  for (let i = 0; i < ladder.lm.length; i += 1) {
    const lm = ladder.lm[i] ?? 0;
    const cm = ladder.cm[i] ?? 0;
    const arm: Complex = [ladder.rm[i] ?? 0, w * lm - 1 / (w * cm)];
    const crystal = add(inverse(arm), [0, w * (ladder.c0[i] ?? 0)]);
    const c = ladder.series[i] ?? 0;
    if (ladder.form === 'shunt') {
      shunt(crystal);
      shunt(capacitor(c));
      shunt([0, w * (ladder.stray[i] ?? 0)]);
      const between = ladder.coupling[i];
      if (between !== undefined) {
        series([1 / (w * between * ladder.capacitorQ), -1 / (w * between)]);
      }
      continue;
    }
    series(inverse(crystal));
    // The series capacitor's loss as a series resistance: the engine's convention.
    if (c > 0) series([1 / (w * c * ladder.capacitorQ), -1 / (w * c)]);
    if (i < ladder.coupling.length) {
      shunt(add(capacitor(ladder.coupling[i] ?? 0), [0, w * (ladder.stray[i] ?? 0)]));
    }
  }
  shunt(capacitor(ladder.endC[1]));
  const [a, b, c, d] = whole;
  const { source, load } = ladder;
  const drive = add(add(times(a, load), b), times(source, add(times(c, load), d)));
  return 10 * Math.log10((4 * source[0] * load[0]) / (drive[0] ** 2 + drive[1] ** 2));
}

/** Outermost −3 dB points of a ladder from a dense sweep and bisection, Hz. */
export function slowWidth(ladder: Ladder, from: number, to: number, points = 600): number {
  const at = Array.from({ length: points + 1 }, (_, i) => from + ((to - from) * i) / points);
  const gains = at.map((f) => slowGain(ladder, f));
  const top = gains.indexOf(Math.max(...gains));
  // The peak between the samples, by a parabola.
  const [l, m, r] = [gains[top - 1] ?? -999, gains[top] ?? 0, gains[top + 1] ?? -999];
  const shift = l > -999 && r > -999 ? (l - r) / (2 * (l - 2 * m + r)) : 0;
  const target = m - ((l - r) * shift) / 4 - 3;
  const first = gains.findIndex((g) => g >= target);
  const last = gains.findLastIndex((g) => g >= target);
  const bisect = (inside: number, outside: number) => {
    let [a, b] = [inside, outside];
    for (let i = 0; i < 30; i += 1) {
      const middle = (a + b) / 2;
      if (slowGain(ladder, middle) >= target) a = middle;
      else b = middle;
    }
    return a;
  };
  if (first === 0 || last === points) return Number.POSITIVE_INFINITY;
  return bisect(at[last] ?? 0, at[last + 1] ?? 0) - bisect(at[first] ?? 0, at[first - 1] ?? 0);
}
