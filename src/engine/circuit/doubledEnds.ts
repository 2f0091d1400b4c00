import { bracketedMaximum } from './bracketedMaximum.ts';
import { bracketedRoot } from './bracketedRoot.ts';
import type { Couplings } from './couplings.ts';

/**
 * Equal coupling capacitors with two crystals side by side at each end: quasi-equiripple.
 *
 * An end arm then has half the reactance X of the others: the ladder is a chain of n − 1 whole T
 * sections, half an arm on either side of each capacitor. All meshes are in tune at X = 2·Xc as they
 * are, without series capacitors. With x = X/(2·Xc) − 1 = cos θ such a chain has the image
 * resistance Xc·sin θ and between ends R = ρ·Xc the loss 1 + ¼(ρ/sin θ − sin θ/ρ)²·sin²((n − 1)θ).
 * The one thing free is ρ; it is chosen for the least ripple, the dips in the middle and next to the
 * edges being then alike.
 *
 * @param n positions, 2 or more; two crystals more are needed
 * @returns couplings normalised to half power, with k between unlike resonators: k√(p p′)
 * @source image parameters of the constant-k section: O. J. Zobel, Theory and Design of Uniform and
 * Composite Electric Wave-filters, BSTJ 2, 1923; the choice of ρ is our own
 */
export function doubledEnds(n: number): Couplings {
  const rho = endRatio(n);
  const half = halfPowerAt(n, rho);
  const kappa = 1 / (2 * half);
  const parallel = Array.from({ length: n }, (_, i) => (i === 0 || i === n - 1 ? 2 : 1));
  const k = Array.from(
    { length: n - 1 },
    (_, i) => kappa * Math.sqrt((parallel[i] ?? 1) * (parallel[i + 1] ?? 1)),
  );
  const dip = 10 * Math.log10(1 + ripple(n, rho));
  return { k, qSource: half / rho, qLoad: half / rho, parallel, ripple: dip };
}

/** The ends against a coupling's reactance: R/Xc for the least ripple. Two and three are flat at 1. */
export function endRatio(n: number): number {
  if (n <= 3) return 1;
  return bracketedMaximum((rho) => -ripple(n, rho), 0.5, 1, 1e-12).at;
}

/** Loss as a ratio of powers less 1: ¼(ρ − (1 − x²)/ρ)²·U², U of order n − 2 in x. */
function lossAt(n: number, rho: number, x: number): number {
  let before = 0;
  let u = 1;
  for (let i = 0; i < n - 2; i += 1) [before, u] = [u, 2 * x * u - before];
  return (((rho - (1 - x * x) / rho) * u) / 2) ** 2;
}

/** The largest dip between the zeros of the loss. */
function ripple(n: number, rho: number): number {
  const edge = Math.max(Math.cos(Math.PI / (n - 1)), Math.sqrt(1 - rho * rho));
  const steps = 24 * n;
  const at = (i: number) => (edge * i) / steps;
  let most = lossAt(n, rho, 0);
  for (let i = 1; i < steps; i += 1) {
    const here = lossAt(n, rho, at(i));
    if (here < lossAt(n, rho, at(i - 1)) || here < lossAt(n, rho, at(i + 1))) continue;
    const top = bracketedMaximum((x) => lossAt(n, rho, x), at(i - 1), at(i + 1), 1e-9);
    most = Math.max(most, top.value);
  }
  return most;
}

/** The x at which half the power is passed: beyond it less. */
function halfPowerAt(n: number, rho: number): number {
  let out = 1.5;
  while (lossAt(n, rho, out - 0.005) > 1) out -= 0.005;
  return bracketedRoot((x) => lossAt(n, rho, x) - 1, out - 0.005, out, 1e-16);
}
