/**
 * Fourier coefficient of a cosine pulse, over the pulse's peak: the harmonic currents of a
 * transistor that conducts during part of each cycle.
 *
 * i(φ)/Imax = (cos φ − cos h)/(1 − cos h) for |φ| < h, else 0, with h half the conduction angle;
 * i = I0 + I1 cos φ + I2 cos 2φ + …
 *
 * @param angle conduction angle of the whole pulse, rad, 0…2π (2π is class A, π class B)
 * @param order 0 for the mean (direct current), 1 for the fundamental, 2 … harmonics
 * @return signed coefficient, 1. Below about 0.02 rad the closed form loses digits.
 *
 * Source: closed form; table in Terman, Radio Engineers' Handbook, 1943, section 5 (from memory).
 */
export function cosinePulse(angle: number, order: number): number {
  const h = angle / 2;
  const [sin, cos] = [Math.sin(h), Math.cos(h)];
  const scale = Math.PI * (1 - cos);
  if (order === 0) return (sin - h * cos) / scale;
  if (order === 1) return (h - sin * cos) / scale;
  const n = order;
  return (2 * (Math.sin(n * h) * cos - n * Math.cos(n * h) * sin)) / (n * (n * n - 1) * scale);
}

/**
 * Standing current over the peak of the fundamental that goes with a conduction angle: 0 at π
 * (class B), 1 at 2π (class A), negative below π, where it stands for a bias beyond cut-off.
 *
 * @param angle conduction angle, rad, 0 < angle ≤ 2π
 * @return Iq/I1, 1
 */
export function standingRatio(angle: number): number {
  return (-2 * Math.PI * Math.cos(angle / 2)) / (angle - Math.sin(angle));
}

/**
 * Conduction angle of a stage whose standing current is known, at a given fundamental.
 *
 * @param ratio standing current over the peak of the fundamental, 1, 0 ≤ ratio; from 1 on the
 *   stage never cuts off (class A)
 * @return conduction angle, rad, π…2π: the root of standingRatio(angle) = ratio, to the last digit
 */
export function conductionAngle(ratio: number): number {
  if (ratio >= 1) return 2 * Math.PI;
  if (ratio <= 0) return Math.PI;
  let low = Math.PI;
  let high = 2 * Math.PI;
  // Bisection: the ratio rises steadily with the angle; 60 halvings use up the digits.
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (standingRatio(middle) < ratio) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Share of the direct power that becomes radio power when the collector swings the whole supply.
 *
 * @param angle conduction angle, rad
 * @return efficiency, fraction; times (Vcc − Vsat)/Vcc for a real transistor
 */
export function pulseEfficiency(angle: number): number {
  return cosinePulse(angle, 1) / (2 * cosinePulse(angle, 0));
}
