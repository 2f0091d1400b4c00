/** The three elliptic functions of Jacobi at one place. */
export interface Jacobi {
  readonly sn: number;
  readonly cn: number;
  readonly dn: number;
}

/**
 * Jacobi's elliptic functions of a real argument, by the arithmetic-geometric mean.
 *
 * @param u argument; a quarter period is `ellipticK(m)`
 * @param m parameter k², 0 ≤ m < 1
 * Source: Abramowitz & Stegun, 16.4.
 */
export function jacobi(u: number, m: number): Jacobi {
  const a = [1];
  const c = [Math.sqrt(m)];
  let b = Math.sqrt(1 - m);
  let n = 0;
  while (Math.abs(c[n] ?? 0) > 1e-16 * (a[n] ?? 1) && n < 12) {
    const last = a[n] ?? 1;
    a.push((last + b) / 2);
    c.push((last - b) / 2);
    b = Math.sqrt(last * b);
    n += 1;
  }
  let phi = 2 ** n * (a[n] ?? 1) * u;
  for (let i = n; i > 0; i -= 1) {
    phi = (phi + Math.asin(((c[i] ?? 0) / (a[i] ?? 1)) * Math.sin(phi))) / 2;
  }
  const sn = Math.sin(phi);
  return { sn, cn: Math.cos(phi), dn: Math.sqrt(1 - m * sn * sn) };
}
