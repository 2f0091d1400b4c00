import type { NodalSystem } from './nodalSystem.ts';

/** A factored matrix of node equations; all arrays owned by whoever made it. */
export interface Factored {
  readonly size: number;
  /** Both triangles in one, row after row; the pivots stand as their reciprocals. */
  readonly re: Float64Array;
  readonly im: Float64Array;
  /** Row that was taken as the k-th pivot row. */
  readonly rows: Int16Array;
}

/** Room to factor a system of that many unknowns. */
export function factored(size: number): Factored {
  const room = new Float64Array(2 * size * size);
  return {
    size,
    re: room.subarray(0, size * size),
    im: room.subarray(size * size),
    rows: new Int16Array(size),
  };
}

/**
 * Factors G + jωC by elimination with partial pivoting. Allocates nothing.
 *
 * @param omega angular frequency, rad/s
 * @return false where the circuit has no answer: a node that nothing holds, a loop of sources
 */
export function factor(system: NodalSystem, omega: number, lu: Factored): boolean {
  const { size: n, g, c } = system;
  const { re, im, rows } = lu;
  for (let i = 0; i < n * n; i += 1) {
    re[i] = g[i] as number;
    im[i] = omega * (c[i] as number);
  }
  for (let k = 0; k < n; k += 1) {
    let pivot = k;
    let best = 0;
    for (let i = k; i < n; i += 1) {
      const size = Math.abs(re[i * n + k] as number) + Math.abs(im[i * n + k] as number);
      if (size > best) {
        best = size;
        pivot = i;
      }
    }
    if (!(best > 0 && best < Number.POSITIVE_INFINITY)) return false;
    rows[k] = pivot;
    if (pivot !== k) exchange(re, im, n, k, pivot);
    const top = k * n;
    const pr = re[top + k] as number;
    const pi = im[top + k] as number;
    const square = pr * pr + pi * pi;
    const qr = pr / square;
    const qi = -pi / square;
    re[top + k] = qr;
    im[top + k] = qi;
    for (let i = k + 1; i < n; i += 1) {
      const row = i * n;
      const ar = re[row + k] as number;
      const ai = im[row + k] as number;
      if (ar === 0 && ai === 0) continue;
      const fr = ar * qr - ai * qi;
      const fi = ar * qi + ai * qr;
      re[row + k] = fr;
      im[row + k] = fi;
      for (let j = k + 1; j < n; j += 1) {
        const ur = re[top + j] as number;
        const ui = im[top + j] as number;
        if (ur === 0 && ui === 0) continue;
        re[row + j] = (re[row + j] as number) - fr * ur + fi * ui;
        im[row + j] = (im[row + j] as number) - fr * ui - fi * ur;
      }
    }
  }
  return true;
}

/**
 * Solves the factored equations for one set of sources.
 *
 * @param re, im the sources; receive the unknowns
 */
export function solve(lu: Factored, re: Float64Array, im: Float64Array): void {
  const { size: n, re: lr, im: li, rows } = lu;
  for (let k = 0; k < n; k += 1) {
    const pivot = rows[k] as number;
    if (pivot !== k) {
      const keepRe = re[k] as number;
      const keepIm = im[k] as number;
      re[k] = re[pivot] as number;
      im[k] = im[pivot] as number;
      re[pivot] = keepRe;
      im[pivot] = keepIm;
    }
  }
  for (let i = 1; i < n; i += 1) {
    let xr = re[i] as number;
    let xi = im[i] as number;
    for (let j = 0; j < i; j += 1) {
      const ar = lr[i * n + j] as number;
      const ai = li[i * n + j] as number;
      const br = re[j] as number;
      const bi = im[j] as number;
      xr -= ar * br - ai * bi;
      xi -= ar * bi + ai * br;
    }
    re[i] = xr;
    im[i] = xi;
  }
  for (let i = n - 1; i >= 0; i -= 1) {
    let xr = re[i] as number;
    let xi = im[i] as number;
    for (let j = i + 1; j < n; j += 1) {
      const ar = lr[i * n + j] as number;
      const ai = li[i * n + j] as number;
      const br = re[j] as number;
      const bi = im[j] as number;
      xr -= ar * br - ai * bi;
      xi -= ar * bi + ai * br;
    }
    const pr = lr[i * n + i] as number;
    const pi = li[i * n + i] as number;
    re[i] = xr * pr - xi * pi;
    im[i] = xr * pi + xi * pr;
  }
}

/** Whole rows, factors already found included, so that `rows` can be applied before all else. */
function exchange(re: Float64Array, im: Float64Array, n: number, a: number, b: number): void {
  for (let j = 0; j < n; j += 1) {
    const keepRe = re[a * n + j] as number;
    const keepIm = im[a * n + j] as number;
    re[a * n + j] = re[b * n + j] as number;
    im[a * n + j] = im[b * n + j] as number;
    re[b * n + j] = keepRe;
    im[b * n + j] = keepIm;
  }
}
