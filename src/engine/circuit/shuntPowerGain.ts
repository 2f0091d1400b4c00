import type { Ladder } from './ladder.ts';

/**
 * Transducer gain of a ladder of the shunt form without leakage, as a plain ratio of powers.
 *
 * As in the series form one ampere in the load is followed back to the source: crystals to ground
 * add current, coupling capacitors add voltage. Exact, nothing allocated.
 *
 * @param f Hz, above zero
 */
export function shuntPowerGain(ladder: Ladder, f: number): number {
  const { lm, cm, rm, c0, series, coupling, stray, endC, source, load } = ladder;
  const w = 2 * Math.PI * f;
  const perW = 1 / w;
  const tan = 1 / ladder.capacitorQ;
  const n = lm.length;
  let vr = load[0];
  let vi = load[1];
  let ir = 1;
  let ii = 0;
  for (let k = n - 1; k >= 0; k -= 1) {
    // The node: Y = 1/(Rm + jXm) + jω(C0 + stray) + the fitted capacitors across it.
    const r = rm[k] as number;
    const xm = w * (lm[k] as number) - perW / (cm[k] as number);
    const size = 1 / (r * r + xm * xm);
    const fitted = (series[k] as number) + (k === 0 ? endC[0] : 0) + (k === n - 1 ? endC[1] : 0);
    const g = r * size + w * fitted * tan;
    const b = w * ((c0[k] as number) + (stray[k] as number) + fitted) - xm * size;
    ir += g * vr - b * vi;
    ii += g * vi + b * vr;
    if (k > 0) {
      const x = perW / (coupling[k - 1] as number);
      vr += x * (tan * ir + ii);
      vi += x * (tan * ii - ir);
    }
  }
  const er = vr + source[0] * ir - source[1] * ii;
  const ei = vi + source[0] * ii + source[1] * ir;
  return (4 * source[0] * load[0]) / (er * er + ei * ei);
}
