import type { Ladder } from '../../src/engine/circuit/ladder.ts';
import { gainAt } from '../../src/engine/circuit/ladderGain.ts';

/** A filter as the Carrier stage reads it. */
export interface ReadFilter {
  readonly ladder: Ladder;
  readonly loss: number;
  readonly low3: number;
  readonly high3: number;
  readonly low6: number;
  readonly high6: number;
}

// Source: Matthaei, Young & Jones 1964, table 4.05, 0.1 dB (n = 8 from memory).
const tables: Readonly<Record<number, readonly number[]>> = {
  4: [1, 1.1088, 1.3062, 1.7704, 0.8181, 1.3554],
  6: [1, 1.1681, 1.404, 2.0562, 1.5171, 1.9029, 0.8618, 1.3554],
  8: [1, 1.1897, 1.4346, 2.1199, 1.601, 2.1699, 1.564, 1.9444, 0.8778, 1.3554],
};

/**
 * A 0.1 dB Chebyshev ladder put together here from the printed prototype by the reactance method,
 * its edges found by halving: nothing of the engine's design is used, only its gain.
 *
 * @param width lossless −3 dB width, Hz
 */
export function printedFilter(
  fs: number,
  lm: number,
  qu: number,
  c0: number,
  n: 4 | 6 | 8,
  width: number,
): ReadFilter {
  const omega = 2 * Math.PI * fs;
  const cm = 1 / (omega * omega * lm);
  const g = tables[n] ?? [];
  const at = (i: number) => g[i] ?? 1;
  // From the ripple's edge to half power: f3/fr = cosh(acosh(1/ε)/n).
  const edge = Math.cosh(Math.acosh(1 / Math.sqrt(10 ** 0.01 - 1)) / n);
  const k = Array.from({ length: n - 1 }, (_, i) => 1 / Math.sqrt(at(i + 1) * at(i + 2)) / edge);
  const sums = Array.from({ length: n }, (_, i) => (k[i - 1] ?? 0) + (k[i] ?? 0));
  const most = Math.max(...sums);
  const reactance = (f: number) => {
    const xm = 2 * Math.PI * f * lm - 1 / (2 * Math.PI * f * cm);
    return xm / (1 - 2 * Math.PI * f * c0 * xm);
  };
  const top = fs * Math.sqrt(1 + cm / c0);
  const where = (x: number) => halve((f) => reactance(f) - x, fs * 0.99, top * (1 - 1e-9));
  const span = (h: number) => where(h * (most + 1)) - where(h * (most - 1));
  // Below the greatest width, which lies far over those used here.
  const h = halve((x) => span(x) - width, 1, 0.15 / (omega * c0));
  const w = 2 * Math.PI * where(h * most);
  const all = (value: number) => new Float64Array(n).fill(value);
  const ladder: Ladder = {
    lm: all(lm),
    cm: all(cm),
    rm: all((omega * lm) / qu),
    c0: all(c0),
    series: Float64Array.from(sums, (a) => (most - a < 1e-9 ? 0 : 1 / (w * h * (most - a)))),
    coupling: Float64Array.from(k, (one) => 1 / (w * h * one)),
    stray: new Float64Array(n - 1),
    capacitorQ: Number.POSITIVE_INFINITY,
    endC: [0, 0],
    leakage: 0,
    source: [h / (at(0) * at(1) * edge), 0],
    load: [h / (at(n) * at(n + 1) * edge), 0],
  };
  return { ladder, ...edgesOf(ladder, where(h * (most - 1)), where(h * (most + 1))) };
}

/** The same, made wider or narrower until it is so wide at −6 dB. */
export function printedFilterAtSix(
  fs: number,
  lm: number,
  qu: number,
  c0: number,
  n: 4 | 6 | 8,
  width: number,
): ReadFilter {
  let ask = width;
  for (let i = 0; i < 5; i += 1) {
    const { low6, high6 } = printedFilter(fs, lm, qu, c0, n, ask);
    ask *= width / (high6 - low6);
  }
  return printedFilter(fs, lm, qu, c0, n, ask);
}

function edgesOf(ladder: Ladder, low: number, high: number): Omit<ReadFilter, 'ladder'> {
  const middle = (low + high) / 2;
  let peak = Number.NEGATIVE_INFINITY;
  for (let f = low - 100; f <= high + 100; f += 0.5) peak = Math.max(peak, gainAt(ladder, f));
  const out = (down: number, way: 1 | -1) =>
    middle +
    way *
      halve(
        (d) => peak - down - gainAt(ladder, middle + way * d),
        (high - low) / 8,
        3 * (high - low),
      );
  return {
    loss: -peak,
    low3: out(3, -1),
    high3: out(3, 1),
    low6: out(6, -1),
    high6: out(6, 1),
  };
}

/** Where a rising function is zero, by halving. */
function halve(of: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 100; i += 1) {
    const m = (a + b) / 2;
    if (of(m) < 0) a = m;
    else b = m;
  }
  return (a + b) / 2;
}
