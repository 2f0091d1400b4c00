/**
 * Solves A·x = b by elimination with row exchange.
 *
 * @param a square matrix, rows one after the other; destroyed
 * @param b right side; receives x
 */
export function solveLinear(a: Float64Array, b: Float64Array): void {
  const n = b.length;
  const at = (i: number, j: number) => a[i * n + j] as number;
  for (let k = 0; k < n; k += 1) {
    let pivot = k;
    for (let i = k + 1; i < n; i += 1) if (Math.abs(at(i, k)) > Math.abs(at(pivot, k))) pivot = i;
    for (let j = k; j < n; j += 1) {
      [a[k * n + j], a[pivot * n + j]] = [at(pivot, j), at(k, j)];
    }
    [b[k], b[pivot]] = [b[pivot] as number, b[k] as number];
    for (let i = k + 1; i < n; i += 1) {
      const factor = at(i, k) / at(k, k);
      for (let j = k; j < n; j += 1) a[i * n + j] = at(i, j) - factor * at(k, j);
      b[i] = (b[i] as number) - factor * (b[k] as number);
    }
  }
  for (let i = n - 1; i >= 0; i -= 1) {
    let sum = b[i] as number;
    for (let j = i + 1; j < n; j += 1) sum -= at(i, j) * (b[j] as number);
    b[i] = sum / at(i, i);
  }
}
