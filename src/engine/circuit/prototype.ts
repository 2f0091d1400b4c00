/**
 * A doubly terminated low-pass prototype: element values from the source resistance g[0] through
 * the reactances g[1] … g[n] to the load g[n+1], normalised to the family's own edge at 1 rad/s.
 */
export interface Prototype {
  readonly g: readonly number[];
  /** Where the response is down to half power, in units of the family's own edge. */
  readonly halfPower: number;
}

/**
 * Maximally flat prototype, normalised to half power.
 *
 * @param n number of reactances, 1 or more
 * @source Matthaei, Young & Jones, Microwave Filters, 1964, eq. 4.05-1
 */
export function butterworth(n: number): Prototype {
  const g = [1];
  for (let k = 1; k <= n; k += 1) g.push(2 * Math.sin(((2 * k - 1) * Math.PI) / (2 * n)));
  g.push(1);
  return { g, halfPower: 1 };
}

/**
 * Equal-ripple prototype, normalised to the ripple edge. The load differs from 1 for even n.
 *
 * @param n number of reactances, 1 or more
 * @param ripple dB, above 0 and below 3.01: past that the ripple itself crosses half power
 * @source Matthaei, Young & Jones, Microwave Filters, 1964, eq. 4.05-2 and 4.03-3
 */
export function chebyshev(n: number, ripple: number): Prototype {
  const quarter = (ripple * Math.LN10) / 40;
  const beta = -Math.log(Math.tanh(quarter));
  const gamma = Math.sinh(beta / (2 * n));
  const a = (k: number) => Math.sin(((2 * k - 1) * Math.PI) / (2 * n));
  const b = (k: number) => gamma ** 2 + Math.sin((k * Math.PI) / n) ** 2;
  const g = [1];
  let last = (2 * a(1)) / gamma;
  g.push(last);
  for (let k = 2; k <= n; k += 1) {
    last = (4 * a(k - 1) * a(k)) / (b(k - 1) * last);
    g.push(last);
  }
  g.push(n % 2 === 1 ? 1 : 1 / Math.tanh(beta / 4) ** 2);
  const epsilon = Math.sqrt(Math.expm1((ripple * Math.LN10) / 10));
  return { g, halfPower: Math.cosh(Math.acosh(1 / epsilon) / n) };
}
