export interface Wave {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/** Whole periods that are drawn. */
export const PERIODS = 2;

/** One period by hand, its end drawn, twice; over degrees. */
export function twiceByHand(samples: Float64Array): Wave {
  const n = samples.length - 1;
  const length = n * PERIODS + 1;
  return {
    x: Array.from({ length }, (_, i) => (i * 360) / n),
    y: Array.from({ length }, (_, i) => samples[i % n] ?? 0),
  };
}

/** One period from the model, from one of its samples on, twice; over degrees. */
export function twiceFrom(samples: Float64Array, from: number): Wave {
  const n = samples.length;
  const length = n * PERIODS + 1;
  return {
    x: Array.from({ length }, (_, i) => (i * 360) / n),
    y: Array.from({ length }, (_, i) => samples[(from + i) % n] ?? 0),
  };
}

/** The sample from which on the middle of the pulse, by its fundamental, stands at 180°. */
export function startOf(current: Float64Array): number {
  const n = current.length;
  let [re, im] = [0, 0];
  current.forEach((i, k) => {
    re += i * Math.cos((2 * Math.PI * k) / n);
    im += i * Math.sin((2 * Math.PI * k) / n);
  });
  const middle = (Math.atan2(im, re) / (2 * Math.PI)) * n;
  return Math.round((((middle - n / 2) % n) + n) % n) % n;
}
