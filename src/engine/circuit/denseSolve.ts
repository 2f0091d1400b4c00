/**
 * Solves a·x = b for one right side by elimination with pivoting.
 *
 * @param a n × n numbers, row after row; destroyed
 * @param b n numbers; receives x
 * @param n number of unknowns
 * @return false where the matrix is singular or not finite: then b is not the answer
 */
export function denseSolve(a: Float64Array, b: Float64Array, n: number): boolean {
  for (let k = 0; k < n; k += 1) {
    let pivot = k;
    let best = Math.abs(a[k * n + k] ?? 0);
    for (let i = k + 1; i < n; i += 1) {
      const size = Math.abs(a[i * n + k] ?? 0);
      if (size > best) {
        best = size;
        pivot = i;
      }
    }
    if (!(best > 0) || best === Number.POSITIVE_INFINITY) return false;
    if (pivot !== k) {
      for (let j = k; j < n; j += 1) {
        const keep = a[k * n + j] ?? 0;
        a[k * n + j] = a[pivot * n + j] ?? 0;
        a[pivot * n + j] = keep;
      }
      const keep = b[k] ?? 0;
      b[k] = b[pivot] ?? 0;
      b[pivot] = keep;
    }
    const inverse = 1 / (a[k * n + k] ?? 0);
    const right = b[k] ?? 0;
    for (let i = k + 1; i < n; i += 1) {
      const factor = (a[i * n + k] ?? 0) * inverse;
      if (factor === 0) continue;
      const row = i * n;
      const top = k * n;
      for (let j = k + 1; j < n; j += 1) {
        a[row + j] = (a[row + j] ?? 0) - factor * (a[top + j] ?? 0);
      }
      b[i] = (b[i] ?? 0) - factor * right;
    }
  }
  for (let k = n - 1; k >= 0; k -= 1) {
    let sum = b[k] ?? 0;
    for (let j = k + 1; j < n; j += 1) sum -= (a[k * n + j] ?? 0) * (b[j] ?? 0);
    b[k] = sum / (a[k * n + k] ?? 0);
    if (!Number.isFinite(b[k] ?? 0)) return false;
  }
  return true;
}
