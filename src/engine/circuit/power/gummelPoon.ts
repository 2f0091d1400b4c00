/** A transistor as the published Gummel–Poon equations want it, at one temperature. SI units. */
export interface GummelPoon {
  /** Transport saturation current, A. */
  readonly is: number;
  /** Ideal forward and reverse current gain, 1. */
  readonly bf: number;
  readonly br: number;
  /** Emission coefficients of the two junctions, 1. */
  readonly nf: number;
  readonly nr: number;
  /** Early voltages, forward and reverse, V; Infinity for none. */
  readonly vaf: number;
  readonly var: number;
  /** Knee currents, forward and reverse, A; Infinity for none. */
  readonly ikf: number;
  readonly ikr: number;
  /** Leakage of the junctions, A, with its emission coefficient. */
  readonly ise: number;
  readonly ne: number;
  readonly isc: number;
  readonly nc: number;
  /** Resistance in series with base, emitter and collector, Ω. */
  readonly rb: number;
  readonly re: number;
  readonly rc: number;
  /** Depletion capacitance at 0 V F, built-in voltage V, grading 1: base–emitter. */
  readonly cje: number;
  readonly vje: number;
  readonly mje: number;
  /** The same of base–collector; all of it lies inside the base resistance. */
  readonly cjc: number;
  readonly vjc: number;
  readonly mjc: number;
  /** Share of the built-in voltage up to which the depletion formula holds, 1. */
  readonly fc: number;
  /** Forward transit time s, and how it grows with current: factor 1, voltage V, current A. */
  readonly tf: number;
  readonly xtf: number;
  readonly vtf: number;
  readonly itf: number;
  /** Reverse transit time, s. */
  readonly tr: number;
  /** Temperature, K. */
  readonly temperature: number;
}

/** Waveforms at the two junctions; all arrays of one length, owned by the caller. */
export interface JunctionWaves {
  /** Voltages base–emitter and base–collector, V: what is given. */
  readonly vbe: Float64Array;
  readonly vbc: Float64Array;
  /** Currents from the inner base through each junction, transport current included, A. */
  readonly ibe: Float64Array;
  readonly ibc: Float64Array;
  /** Charges, C. */
  readonly qbe: Float64Array;
  readonly qbc: Float64Array;
  /** Conductances, S: current (first letter) by voltage (second letter). */
  readonly gee: Float64Array;
  readonly gec: Float64Array;
  readonly gce: Float64Array;
  readonly gcc: Float64Array;
  /** Capacitances, F; the base–collector charge does not depend on vbe. */
  readonly cee: Float64Array;
  readonly cec: Float64Array;
  readonly ccc: Float64Array;
  /** Forward and reverse current before the base charge, A, and their slopes, S. */
  readonly forward: Float64Array;
  readonly forwardSlope: Float64Array;
  readonly reverse: Float64Array;
  readonly reverseSlope: Float64Array;
}

/** Boltzmann's constant over the elementary charge, V/K: exact, SI brochure, 9th edition. */
export const VOLT_PER_KELVIN = 1.380649e-23 / 1.602176634e-19;

/** Conductance across each junction, S, as circuit simulators add it: currents never quite stop. */
const LEAST = 1e-12;
/** Current at which an exponential goes over into its tangent, A: far above any that flows. */
const TANGENT = 1e4;
/** Exponent of the transit time's growth with voltage beyond which it stops, far outside of use. */
const STEEPEST = 5;

/**
 * Currents and charges of the inner transistor at each sample, and their derivatives.
 *
 * (F − R)/qb flows from collector to emitter, F = IS(e^(vbe/NF·VT) − 1), R = IS(e^(vbc/NR·VT) − 1),
 * with the base charge qb = q1(1 + √(1 + 4q2))/2, q1 = 1/(1 − vbc/VAF − vbe/VAR),
 * q2 = F/IKF + R/IKR.
 *
 * The series resistances are not in it. Left out: splitting of the base–collector capacitance over
 * the base resistance, base resistance that falls with current, excess phase, breakdown, heating.
 *
 * Source: Gummel & Poon, BSTJ 49 (1970), 827; Antognetti & Massobrio, Semiconductor Device
 * Modeling with SPICE, ch. 2 (from memory).
 */
export function gummelPoon(m: GummelPoon, w: JunctionWaves): void {
  const { vbe, vbc, ibe, ibc, qbe, qbc, gee, gec, gce, gcc, cee, cec, ccc } = w;
  const vt = VOLT_PER_KELVIN * m.temperature;
  clear(w);
  addJunction(vbe, m.is, m.nf * vt, w.forward, w.forwardSlope);
  addJunction(vbc, m.is, m.nr * vt, w.reverse, w.reverseSlope);
  addJunction(vbe, m.ise, m.ne * vt, ibe, gee);
  addJunction(vbc, m.isc, m.nc * vt, ibc, gcc);
  addDepletion(vbe, m.cje, m.vje, m.mje, m.fc, qbe, cee);
  addDepletion(vbc, m.cjc, m.vjc, m.mjc, m.fc, qbc, ccc);
  const { bf, br, tf, tr, xtf, itf } = m;
  const earlyF = 1 / m.vaf;
  const earlyR = 1 / m.var;
  const kneeF = 1 / m.ikf;
  const kneeR = 1 / m.ikr;
  const perVtf = 1 / (1.44 * m.vtf);
  for (let n = 0; n < vbe.length; n += 1) {
    const ve = vbe[n] ?? 0;
    const vc = vbc[n] ?? 0;
    const f = w.forward[n] ?? 0;
    const fSlope = w.forwardSlope[n] ?? 0;
    const r = w.reverse[n] ?? 0;
    const rSlope = w.reverseSlope[n] ?? 0;

    // Base charge. Its first factor is held away from the pole that lies far outside of use.
    const q1 = 1 / Math.max(0.05, 1 - vc * earlyF - ve * earlyR);
    const root = Math.sqrt(Math.max(1e-12, 1 + 4 * (f * kneeF + r * kneeR)));
    const qb = (q1 * (1 + root)) / 2;
    const qbByE = q1 * (qb * earlyR + (kneeF * fSlope) / root);
    const qbByC = q1 * (qb * earlyF + (kneeR * rSlope) / root);

    const transport = (f - r) / qb;
    const byE = (fSlope - transport * qbByE) / qb;
    const byC = (-rSlope - transport * qbByC) / qb;
    ibe[n] = (ibe[n] ?? 0) + transport + f / bf + LEAST * ve;
    ibc[n] = (ibc[n] ?? 0) - transport + r / br + LEAST * vc;
    gee[n] = (gee[n] ?? 0) + byE + fSlope / bf + LEAST;
    gec[n] = byC;
    gce[n] = -byE;
    gcc[n] = (gcc[n] ?? 0) - byC + rSlope / br + LEAST;

    // The transit time grows with current, and as the collector voltage falls.
    let grows = 0;
    let growsByE = 0;
    let growsByC = 0;
    if (xtf > 0 && f > 0) {
      const share = f / (f + itf);
      grows = xtf * share * share * Math.exp(Math.min(vc * perVtf, STEEPEST));
      growsByE = (2 * grows * (1 - share) * fSlope) / f;
      growsByC = vc * perVtf < STEEPEST ? grows * perVtf : 0;
    }
    const stored = (f * (1 + grows)) / qb;
    qbe[n] = (qbe[n] ?? 0) + tf * stored;
    cee[n] = (cee[n] ?? 0) + (tf * (fSlope * (1 + grows) + f * growsByE - stored * qbByE)) / qb;
    cec[n] = (tf * (f * growsByC - stored * qbByC)) / qb;
    qbc[n] = (qbc[n] ?? 0) + tr * r;
    ccc[n] = (ccc[n] ?? 0) + tr * rSlope;
  }
}

/** Blank waveforms. */
export function junctionWaves(samples: number): JunctionWaves {
  const blank = () => new Float64Array(samples);
  return {
    vbe: blank(),
    vbc: blank(),
    ibe: blank(),
    ibc: blank(),
    qbe: blank(),
    qbc: blank(),
    gee: blank(),
    gec: blank(),
    gce: blank(),
    gcc: blank(),
    cee: blank(),
    cec: blank(),
    ccc: blank(),
    forward: blank(),
    forwardSlope: blank(),
    reverse: blank(),
    reverseSlope: blank(),
  };
}

function clear(w: JunctionWaves): void {
  w.forward.fill(0);
  w.forwardSlope.fill(0);
  w.reverse.fill(0);
  w.reverseSlope.fill(0);
  w.ibe.fill(0);
  w.gee.fill(0);
  w.ibc.fill(0);
  w.gcc.fill(0);
  w.qbe.fill(0);
  w.cee.fill(0);
  w.qbc.fill(0);
  w.ccc.fill(0);
}

/** Adds is(e^(v/vt) − 1) and its slope. */
function addJunction(
  v: Float64Array,
  is: number,
  vt: number,
  current: Float64Array,
  slope: Float64Array,
): void {
  if (is === 0) return;
  const corner = vt * Math.log(TANGENT / is);
  for (let n = 0; n < v.length; n += 1) {
    const u = v[n] ?? 0;
    const x = is * Math.exp(Math.min(u, corner) / vt);
    current[n] = (current[n] ?? 0) + x - is + (u > corner ? (x * (u - corner)) / vt : 0);
    slope[n] = (slope[n] ?? 0) + x / vt;
  }
}

/**
 * Adds the charge of a depletion layer and its capacitance cj/(1 − v/vj)^m; from fc·vj on the
 * capacitance goes on along its tangent.
 */
function addDepletion(
  v: Float64Array,
  cj: number,
  vj: number,
  m: number,
  fc: number,
  charge: Float64Array,
  capacitance: Float64Array,
): void {
  if (cj === 0) return;
  const corner = fc * vj;
  const f1 = (vj * (1 - (1 - fc) ** (1 - m))) / (1 - m);
  const f2 = (1 - fc) ** (1 + m);
  const f3 = 1 - fc * (1 + m);
  for (let n = 0; n < v.length; n += 1) {
    const u = v[n] ?? 0;
    let q: number;
    let c: number;
    if (u < corner) {
      const y = 1 - u / vj;
      c = y ** -m;
      q = (vj * (1 - y * c)) / (1 - m);
    } else {
      c = (f3 + (m * u) / vj) / f2;
      q = f1 + (f3 * (u - corner) + (m / (2 * vj)) * (u * u - corner * corner)) / f2;
    }
    charge[n] = (charge[n] ?? 0) + cj * q;
    capacitance[n] = (capacitance[n] ?? 0) + cj * c;
  }
}
