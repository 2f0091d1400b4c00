/**
 * Incomplete elliptic integral of the first kind, F(φ|m), by Carlson's duplication.
 *
 * @param tangent of the amplitude φ, 0 ≤ φ < 90°
 * @param m parameter k², 0 ≤ m ≤ 1
 * Source: Carlson, Numerical computation of real or complex elliptic integrals, 1995, eq. 2.2.
 */
export function ellipticF(tangent: number, m: number): number {
  const cosine = 1 / Math.hypot(1, tangent);
  const sine = tangent * cosine;
  return sine * carlson(cosine ** 2, cosine ** 2 + (1 - m) * sine ** 2, 1);
}

/** Carlson's R_F(x, y, z). */
function carlson(x: number, y: number, z: number): number {
  let [a, b, c] = [x, y, z];
  let mean = (a + b + c) / 3;
  for (let i = 0; i < 60; i += 1) {
    mean = (a + b + c) / 3;
    if (Math.max(Math.abs(mean - a), Math.abs(mean - b), Math.abs(mean - c)) < 1e-3 * mean) break;
    const step = Math.sqrt(a * b) + Math.sqrt(b * c) + Math.sqrt(c * a);
    [a, b, c] = [(a + step) / 4, (b + step) / 4, (c + step) / 4];
  }
  const [u, v] = [(mean - a) / mean, (mean - b) / mean];
  const w = -u - v;
  const e2 = u * v - w * w;
  const e3 = u * v * w;
  return (1 - e2 / 10 + e3 / 14 + (e2 * e2) / 24 - (3 * e2 * e3) / 44) / Math.sqrt(mean);
}
