/**
 * Factors a symmetric positive definite matrix in place into its lower triangle.
 *
 * @param a n × n, row by row; only the lower triangle is read
 * @return false where the matrix is not positive definite to working precision
 */
export function choleskyFactor(a: Float64Array, n: number): boolean {
  for (let j = 0; j < n; j += 1) {
    for (let i = j; i < n; i += 1) {
      let sum = a[i * n + j] as number;
      const whole = sum;
      for (let k = 0; k < j; k += 1) sum -= (a[i * n + k] as number) * (a[j * n + k] as number);
      if (i > j) a[i * n + j] = sum / (a[j * n + j] as number);
      else if (sum > 1e-15 * whole && sum > 0) a[j * n + j] = Math.sqrt(sum);
      else return false;
    }
  }
  return true;
}

/** Solves in place with the triangle that `choleskyFactor` left. */
export function choleskySolve(a: Float64Array, n: number, b: Float64Array): void {
  for (let i = 0; i < n; i += 1) {
    let sum = b[i] as number;
    for (let k = 0; k < i; k += 1) sum -= (a[i * n + k] as number) * (b[k] as number);
    b[i] = sum / (a[i * n + i] as number);
  }
  for (let i = n - 1; i >= 0; i -= 1) {
    let sum = b[i] as number;
    for (let k = i + 1; k < n; k += 1) sum -= (a[k * n + i] as number) * (b[k] as number);
    b[i] = sum / (a[i * n + i] as number);
  }
}
