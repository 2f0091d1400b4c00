import { bracketedRoot } from './bracketedRoot.ts';
import { ellipticK } from './elliptic.ts';
import { jacobi } from './jacobi.ts';

/**
 * Nome of a modulus by its series, q = e + 2e⁵ + 15e⁹ …, good to 1e-12 for k up to 0.99.
 *
 * @param k modulus, 0 < k < 1
 * Source: Abramowitz & Stegun, 17.3.21.
 */
export function nome(k: number): number {
  const k2 = Math.sqrt(1 - k * k);
  const e = (k * k) / (2 * (1 + k2) * (1 + Math.sqrt(k2)) ** 2);
  const e4 = e ** 4;
  return nomeSeries.reduceRight((sum, each) => sum * e4 + each, 0) * e;
}

/** Numbers of the nome's series. */
export const nomeSeries = [1, 2, 15, 150, 1707, 20910, 268616] as const;

/**
 * Stop-band edge over ripple edge at which an elliptic filter has an attenuation: the nomes of its two
 * moduli go as q = q₁^(1/n).
 *
 * @param n order, odd
 * @param ripple dB
 * @param attenuation least in the stop band, dB, above the ripple
 * Source: degree equation, Orfanidis, Lecture Notes on Elliptic Filter Design, 2006, eq. 48.
 */
export function edgeForAttenuation(n: number, ripple: number, attenuation: number): number {
  const k1 = Math.sqrt(
    Math.expm1((ripple * Math.LN10) / 10) / Math.expm1((attenuation * Math.LN10) / 10),
  );
  const q = nome(k1) ** (1 / n);
  let [above, below] = [0, 0];
  for (let i = 6; i >= 0; i -= 1) {
    above += q ** (i * (i + 1));
    below += i === 0 ? 1 : 2 * q ** (i * i);
  }
  return (below / above) ** 2 / (4 * Math.sqrt(q));
}

/** Lowest notch over ripple edge: edge/cd(K/n). */
export function lowestNotch(n: number, edge: number): number {
  const m = 1 / edge ** 2;
  const { cn, dn } = jacobi(ellipticK(m) / n, m);
  return (edge * dn) / cn;
}

/**
 * Stop-band edge over ripple edge at which an elliptic filter's lowest notch falls on a frequency.
 *
 * @param n order, odd
 * @param notch over ripple edge, above 1.01
 */
export function edgeForNotch(n: number, notch: number): number {
  return bracketedRoot((edge) => lowestNotch(n, edge) - notch, 1 + 1e-6, notch, 1e-14);
}
