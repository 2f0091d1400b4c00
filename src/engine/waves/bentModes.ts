/** Roots of Ai(−x) and of its derivative (Abramowitz & Stegun, table 10.13). */
const AIRY = [
  2.33810741, 4.08794944, 5.52055983, 6.78670809, 7.94413359, 9.02265085, 10.04017434, 11.0085243,
  11.93601556, 12.82877675,
];
const AIRY_SLOPE = [
  1.01879297, 3.24819758, 4.82009921, 6.16330736, 7.37217726, 8.48848673, 9.53544905, 10.5276604,
  11.47505663, 12.38478837,
];

/** Root number s, s from 1; beyond the table by its expansion (10.4.94, 10.4.95). */
function airyRoot(s: number): number {
  const u = ((3 * Math.PI) / 8) * (4 * s - 1);
  return AIRY[s - 1] ?? u ** (2 / 3) * (1 + 5 / 48 / u ** 2 - 5 / 36 / u ** 4);
}

function airySlopeRoot(s: number): number {
  const u = ((3 * Math.PI) / 8) * (4 * s - 3);
  return AIRY_SLOPE[s - 1] ?? u ** (2 / 3) * (1 - 7 / 48 / u ** 2 + 35 / 288 / u ** 4);
}

/** Steps along the way from a known root to the one wanted. */
const STEPS = 60;

const TURN_RE = Math.cos(Math.PI / 3);
const TURN_IM = Math.sin(Math.PI / 3);

/**
 * The roots t of w₁′(t) = q·w₁(t), with which a wave creeps round a bent ground.
 *
 * Root s is known for q = 0 and for q = ∞; dt/dq = 1/(t − q²) leads from the nearer of the two to q
 * (Runge–Kutta).
 *
 * @param qr, qi of q = i·m·Δ
 * @param roots receives real and imaginary part of each root
 * Source: Fock, Electromagnetic Diffraction and Propagation Problems, 1965, chapter 10.
 */
export function bentModes(qr: number, qi: number, roots: Float64Array): void {
  const size = Math.hypot(qr, qi);
  const out = new Float64Array(2);
  for (let s = 1; 2 * s <= roots.length; s += 1) {
    const far = size >= Math.sqrt(airySlopeRoot(s));
    const start = far ? airyRoot(s) : airySlopeRoot(s);
    // The variable walked along: q itself, or 1/q.
    const er = far ? qr / (size * size) : qr;
    const ei = far ? -qi / (size * size) : qi;
    let tr = start * TURN_RE;
    let ti = start * TURN_IM;
    const hr = er / STEPS;
    const hi = ei / STEPS;
    for (let i = 0; i < STEPS; i += 1) {
      // Four slopes, each at the end of the one before; their weighted mean is the step.
      let sr = 0;
      let si = 0;
      out.fill(0);
      for (const { along, weight } of KUTTA) {
        const [pr = 0, pi = 0] = out;
        const ar = tr + along * (hr * pr - hi * pi);
        const ai = ti + along * (hr * pi + hi * pr);
        const at = (i + along) / STEPS;
        if (far) slopeFar(er * at, ei * at, ar, ai, out);
        else slopeNear(er * at, ei * at, ar, ai, out);
        sr += weight * (out[0] ?? 0);
        si += weight * (out[1] ?? 0);
      }
      tr += hr * sr - hi * si;
      ti += hr * si + hi * sr;
    }
    roots[2 * s - 2] = tr;
    roots[2 * s - 1] = ti;
  }
}

/** Runge and Kutta's four places in a step, and what each counts. */
const KUTTA = [
  { along: 0, weight: 1 / 6 },
  { along: 0.5, weight: 1 / 3 },
  { along: 0.5, weight: 1 / 3 },
  { along: 1, weight: 1 / 6 },
] as const;

/** dt/dq = 1/(t − q²). */
function slopeNear(qr: number, qi: number, tr: number, ti: number, out: Float64Array): void {
  inverse(tr - (qr * qr - qi * qi), ti - 2 * qr * qi, out);
}

/** dt/du = 1/(1 − u²t) with u = 1/q. */
function slopeFar(ur: number, ui: number, tr: number, ti: number, out: Float64Array): void {
  const vr = ur * ur - ui * ui;
  const vi = 2 * ur * ui;
  inverse(1 - (vr * tr - vi * ti), -(vr * ti + vi * tr), out);
}

function inverse(re: number, im: number, out: Float64Array): void {
  const size = re * re + im * im;
  out[0] = re / size;
  out[1] = -im / size;
}
