import { ellipticK } from './elliptic.ts';
import { ellipticF } from './ellipticF.ts';
import { jacobi } from './jacobi.ts';

/** A trap of an elliptic prototype: coil with a capacitor across it. */
export interface PrototypeTrap {
  readonly l: number;
  readonly c: number;
  /** Where it stops everything, over the ripple edge. */
  readonly notch: number;
}

/** Low-pass of Cauer, capacitor first, equal ends, normalised to one ohm and the ripple edge. */
export interface EllipticPrototype {
  /** Capacitors to ground, from the source on: one more than there are traps. */
  readonly shunts: readonly number[];
  /** Traps in the path, from the source on. */
  readonly traps: readonly PrototypeTrap[];
  /** Least attenuation from the stop-band edge on, dB. */
  readonly attenuation: number;
}

/**
 * Elliptic low-pass of odd order with equal ends, from its own functions.
 *
 * Zeros of reflection are cd(uK), the notches 1/(k·cd(uK)) with u = 1/n, 3/n …; poles are
 * j·cd((u − jv)K). From these the input admittance Y = (E + F)/(E − F). The ladder comes out of it
 * notch by notch: a capacitor that makes Y vanish at the notch, then the trap, whose capacitor is
 * half the slope of the susceptance there. The highest notch stands next to the source, the lowest
 * in the middle (n = 7) or last (n = 5): so all values are positive.
 *
 * @param n order, odd, 3 to 7
 * @param ripple dB, above 0
 * @param edge stop-band edge over ripple edge, above 1
 * Source: Orfanidis, Lecture Notes on Elliptic Filter Design, 2006, sections 2 to 5; partial removal
 * of a pole, any text on network synthesis.
 */
export function ellipticPrototype(n: number, ripple: number, edge: number): EllipticPrototype {
  const { pairs, k1, epsilon, k } = functionsOf(n, ripple, edge);
  const m = k * k;
  const quarter = ellipticK(m);
  const v = (ellipticF(1 / epsilon, 1 - k1 * k1) / (n * ellipticK(k1 * k1))) * quarter;
  const beside = jacobi(v, 1 - m);
  // Real pole: j·sn(jv) = −sc(v) with the complementary modulus.
  const poles: [number, number][] = [[-beside.sn / beside.cn, 0]];
  for (const { sn, cn, dn } of pairs) {
    const [ar, ai] = [cn * beside.cn, sn * dn * beside.sn * beside.dn];
    const [br, bi] = [dn * beside.cn * beside.dn, m * sn * cn * beside.sn];
    const size = br * br + bi * bi;
    const [re, im] = [(ar * br + ai * bi) / size, (ai * br - ar * bi) / size];
    poles.push([-Math.abs(im), re], [-Math.abs(im), -re]);
  }
  const zeros = pairs.map(({ cn, dn }) => cn / dn);
  const notches = inOrder(zeros.map((zero) => edge / zero));
  const look = (at: number) => admittanceAt(at, poles, zeros);
  return {
    ...extract(notches, look),
    attenuation: 10 * Math.log10(1 + (epsilon / k1) ** 2),
  };
}

/** Moduli and the functions of Jacobi at the places that count. */
export function functionsOf(n: number, ripple: number, edge: number) {
  const epsilon = Math.sqrt(Math.expm1((ripple * Math.LN10) / 10));
  const k = 1 / edge;
  const quarter = ellipticK(k * k);
  const pairs = Array.from({ length: (n - 1) / 2 }, (_, i) =>
    jacobi(((2 * i + 1) / n) * quarter, k * k),
  );
  const k1 = pairs.reduce((product, { sn }) => product * sn ** 4, k ** n);
  return { epsilon, k, k1, pairs };
}

/** Notches as they stand in the ladder: the highest first, the lowest in the middle. */
function inOrder(rising: readonly number[]): number[] {
  const [low = 0, next = 0, high = 0] = rising;
  if (rising.length === 1) return [low];
  return rising.length === 2 ? [next, low] : [high, low, next];
}

type Look = (at: number) => { readonly b: number; readonly slope: number };

/** Susceptance that the whole ladder shows at a notch, and its slope there. */
function admittanceAt(
  w: number,
  poles: readonly (readonly [number, number])[],
  zeros: readonly number[],
): ReturnType<Look> {
  // E(jω) and its derivative over itself; F(jω) = jω∏(ω_i² − ω²).
  let [er, ei, lr, li] = [1, 0, 0, 0];
  for (const [re, im] of poles) {
    const [x, y] = [-re, w - im];
    [er, ei] = [er * x - ei * y, er * y + ei * x];
    const size = x * x + y * y;
    // d/dω of ln(jω − p) = j/(jω − p)
    lr += y / size;
    li += x / size;
  }
  let f = w;
  let fl = 1 / w;
  for (const zero of zeros) {
    f *= zero * zero - w * w;
    fl -= (2 * w) / (zero * zero - w * w);
  }
  // Y = (E + jf)/(E − jf); Y′ = 2·E·jf·(f′/f − E′/E)/(E − jf)².
  const [nr, ni] = [er, ei + f];
  const [dr, di] = [er, ei - f];
  const size = dr * dr + di * di;
  const b = (ni * dr - nr * di) / size;
  const [pr, pi] = [-2 * ei * f, 2 * er * f];
  const [qr, qi] = [fl - lr, -li];
  const [tr, ti] = [pr * qr - pi * qi, pr * qi + pi * qr];
  const [sr, si] = [dr * dr - di * di, 2 * dr * di];
  const whole = sr * sr + si * si;
  return { b, slope: (ti * sr - tr * si) / whole };
}

/**
 * The ladder from both ends to its middle. Seen from one end the far parts are hidden behind the
 * attenuation of those before them; a filter of odd order shows the same admittance at both ends.
 */
function extract(
  notches: readonly number[],
  look: Look,
): Pick<EllipticPrototype, 'shunts' | 'traps'> {
  const near = fromOneEnd(notches, look);
  const far = fromOneEnd([...notches].reverse(), look);
  const [count, half] = [notches.length, Math.floor(notches.length / 2)];
  return {
    shunts: Array.from({ length: count + 1 }, (_, k) =>
      k <= half ? (near.shunts[k] ?? 0) : (far.shunts[count - k] ?? 0),
    ),
    traps: Array.from({ length: count }, (_, k) =>
      k <= half && !(k === half && count % 2 === 0)
        ? (near.traps[k] as PrototypeTrap)
        : (far.traps[count - 1 - k] as PrototypeTrap),
    ),
  };
}

/** The first half of a ladder's capacitors and traps, the middle ones included. */
function fromOneEnd(notches: readonly number[], look: Look) {
  const shunts: number[] = [];
  const traps: PrototypeTrap[] = [];
  for (const notch of notches.slice(0, Math.floor(notches.length / 2) + 1)) {
    // What is left of the susceptance behind the parts found so far, and its slope.
    let { b, slope } = look(notch);
    for (let k = 0; k < traps.length; k += 1) {
      const trap = traps[k] as PrototypeTrap;
      b -= notch * (shunts[k] ?? 0);
      slope -= shunts[k] ?? 0;
      // Reactance behind the capacitor, less that of the trap.
      const below = 1 - (notch / trap.notch) ** 2;
      const x = -1 / b - (notch * trap.l) / below;
      const xSlope = slope / (b * b) - (trap.l * (2 - below)) / below ** 2;
      b = -1 / x;
      slope = xSlope / (x * x);
    }
    const c = b / notch;
    const across = (slope - c) / 2;
    shunts.push(c);
    traps.push({ l: 1 / (notch * notch * across), c: across, notch });
  }
  return { shunts, traps };
}
