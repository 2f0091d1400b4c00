import { type BalanceDesk, balanceDesk } from './balanceDesk.ts';
import { type Attempt, balanceNewton, TOLERANCE } from './balanceNewton.ts';
import { balanceResidual, E_SIZE, type Surroundings, Z_SIZE } from './balanceStep.ts';
import type { GummelPoon } from './gummelPoon.ts';

/** Desks for the operating point, for finding the way, and for the answer. */
export interface BalanceBench {
  readonly rest: BalanceDesk;
  readonly coarse: BalanceDesk;
  readonly fine: BalanceDesk;
  /** State and sources on the way. */
  readonly way: Float64Array;
  readonly sources: Float64Array;
}

/** Harmonics of the answer unless said otherwise, and while the way is sought. */
const HARMONICS = 20;
const COARSE = 8;
/** Samples a period for each harmonic. */
const SAMPLES = 6;
/** Iterations before an attempt is given up. */
const PATIENCE = { rest: 100, coarse: 60, step: 20, ease: 50, answer: 30 };
/** Change of a sample that will do on the way, V. */
const ROUGHLY = 0.01;
/** Steps in which the drive is brought up where one stride does not do; and the smallest, of all. */
const STEP = 1 / 4;
const SMALLEST = 1 / 100;
/** Resistors that make the way easier, Ω: most, least; factor from one to the next, and the finest. */
const EASE = { most: 1000, least: 0.01, factor: 4, finest: 1.05 } as const;

/** Whether there is a state near by to begin with, and whether to give up where that doesn't do. */
export type Near = boolean | 'only';

/** Room for one power stage after the other. */
export function balanceBench(harmonics = HARMONICS): BalanceBench {
  const coarse = Math.min(COARSE, harmonics);
  return {
    rest: balanceDesk(0, 1),
    coarse: balanceDesk(coarse, SAMPLES * coarse),
    fine: balanceDesk(harmonics, SAMPLES * harmonics),
    way: new Float64Array(2 * (2 * harmonics + 1)),
    sources: new Float64Array(E_SIZE * (harmonics + 1)),
  };
}

/**
 * Periodic steady state of a transistor in its surroundings: the harmonics of its junction voltages
 * for which Kirchhoff's voltage law holds at every harmonic.
 *
 * From the operating point it goes with few harmonics to the full drive, in one stride or else in
 * steps, and from there on with all harmonics. Where that doesn't lead there, it says so, with what
 * is left of the law.
 *
 * @param around z and e for all harmonics of `bench.fine`
 * @param x receives the unknowns as `BalanceDesk` says (V peak)
 * @param near whether x already holds a state near by; `only`: nothing else is tried then
 * @return whether it converged; then currents and waveforms stand in `bench.fine`
 *
 * Source: Kundert & Sangiovanni-Vincentelli, IEEE Trans. CAD 5 (1986), 521 (from memory).
 */
export function harmonicBalance(
  bench: BalanceBench,
  model: GummelPoon,
  around: Surroundings,
  x: Float64Array,
  near: Near = false,
): Attempt {
  const { coarse, fine, way } = bench;
  let iterations = 0;
  const answered = () => {
    const tried = balanceNewton(fine, model, around, x, PATIENCE.answer);
    iterations += tried.iterations;
    return tried.residual < TOLERANCE && tried.converged;
  };
  const ended = (converged: boolean): Attempt => ({
    converged,
    residual: Math.sqrt(balanceResidual(fine, model, around, x)),
    iterations,
  });
  if (near && answered()) return ended(true);
  if (near === 'only') return ended(false);

  const rest = operatingPoint(bench, model, around);
  iterations += rest.iterations;
  const start = (desk: BalanceDesk, at: Float64Array) => {
    at.fill(0);
    at[0] = rest.vbe;
    at[desk.width] = rest.vbc;
  };
  // With few harmonics, in one stride.
  start(coarse, way);
  const stride = balanceNewton(coarse, model, around, way, PATIENCE.coarse, ROUGHLY);
  iterations += stride.iterations;
  if (stride.converged) {
    widened(coarse, way, fine, x);
    if (answered()) return ended(true);
  }
  // In steps: with few harmonics, then with all.
  start(coarse, way);
  const steps = broughtUp(bench, coarse, model, around, way);
  iterations += steps.iterations;
  if (steps.converged) {
    widened(coarse, way, fine, x);
    if (answered()) return ended(true);
  }
  start(fine, x);
  const small = broughtUp(bench, fine, model, around, x);
  iterations += small.iterations;
  if (small.converged && answered()) return ended(true);
  start(fine, x);
  const eased = easedIn(fine, model, around, x);
  iterations += eased.iterations;
  return ended(eased.converged && answered());
}

/** Voltages of the junctions without drive, V. */
export function operatingPoint(
  { rest }: Pick<BalanceBench, 'rest'>,
  model: GummelPoon,
  around: Surroundings,
): Attempt & { readonly vbe: number; readonly vbc: number } {
  const base = around.e[0] ?? 0;
  const vbe = Math.min(base, 0.6);
  const x = Float64Array.of(vbe, vbe - base + (around.e[2] ?? 0));
  const tried = balanceNewton(rest, model, around, x, PATIENCE.rest);
  return { ...tried, vbe: x[0] ?? 0, vbc: x[1] ?? 0 };
}

/** Brings the drive up from nothing in steps; x goes along. */
function broughtUp(
  { sources }: BalanceBench,
  desk: BalanceDesk,
  model: GummelPoon,
  around: Surroundings,
  x: Float64Array,
): { readonly converged: boolean; readonly iterations: number } {
  const good = Float64Array.from(x);
  const now = { ...around, e: sources };
  let reached = 0;
  let step = STEP;
  let iterations = 0;
  while (reached < 1) {
    const aim = Math.min(1, reached + step);
    for (let i = 0; i < sources.length; i += 1) {
      sources[i] = (around.e[i] ?? 0) * (i < E_SIZE ? 1 : aim);
    }
    const tried = balanceNewton(desk, model, now, x, PATIENCE.step, ROUGHLY);
    iterations += tried.iterations;
    if (tried.converged) {
      good.set(x);
      reached = aim;
    } else {
      x.set(good);
      step /= 2;
      if (step < SMALLEST) return { converged: false, iterations };
    }
  }
  return { converged: true, iterations };
}

/**
 * Takes away, step by step, resistors put in series with both junctions for all harmonics: with much
 * of them the transistor is next to linear. x goes along.
 */
function easedIn(
  desk: BalanceDesk,
  model: GummelPoon,
  around: Surroundings,
  x: Float64Array,
): { readonly converged: boolean; readonly iterations: number } {
  const good = Float64Array.from(x);
  const z = Float64Array.from(around.z);
  const now = { ...around, z };
  let iterations = 0;
  let held = Number.POSITIVE_INFINITY;
  let factor: number = EASE.factor;
  let aim: number = EASE.most;
  while (held > EASE.least) {
    for (let i = Z_SIZE; i < z.length; i += Z_SIZE) {
      z[i] = (around.z[i] ?? 0) + aim;
      z[i + 6] = (around.z[i + 6] ?? 0) + aim;
    }
    const tried = balanceNewton(desk, model, now, x, PATIENCE.ease, ROUGHLY);
    iterations += tried.iterations;
    if (tried.converged) {
      good.set(x);
      held = aim;
    } else {
      if (held === Number.POSITIVE_INFINITY) return { converged: false, iterations };
      x.set(good);
      factor = Math.sqrt(factor);
      if (factor < EASE.finest) return { converged: false, iterations };
    }
    aim = held / factor;
  }
  return { converged: true, iterations };
}

/** The same state with more harmonics. */
function widened(few: BalanceDesk, from: Float64Array, many: BalanceDesk, to: Float64Array): void {
  to.fill(0);
  for (let p = 0; p < 2; p += 1) {
    for (let i = 0; i < Math.min(few.width, many.width); i += 1) {
      to[p * many.width + i] = from[p * few.width + i] ?? 0;
    }
  }
}
