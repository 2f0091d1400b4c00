import { rollett } from '../../circuit/nodal/rollett.ts';
import { scattering, type TwoPort } from '../../circuit/nodal/scattering.ts';
import type { StabilityScan } from './smallFields.ts';

/** Ends of the band, Hz, and how many frequencies are looked at. */
export const SCAN_FROM = 1e5;
export const SCAN_TO = 300e6;
export const SCAN_POINTS = 29;

/** Rollett's factor over the band, evenly spaced in octaves, and its least. */
export function stabilityScan(two: TwoPort): StabilityScan {
  const frequency = new Float64Array(SCAN_POINTS);
  const k = new Float64Array(SCAN_POINTS);
  const s = new Float64Array(8);
  let least = 0;
  let gives: number | null = null;
  for (let i = 0; i < SCAN_POINTS; i += 1) {
    const f = SCAN_FROM * (SCAN_TO / SCAN_FROM) ** (i / (SCAN_POINTS - 1));
    frequency[i] = f;
    scattering(two, f);
    k[i] = rollett(two.s).k;
    if (i === 0 || (k[i] ?? 0) < (k[least] ?? 0)) {
      least = i;
      s.set(two.s);
    }
    const at = (n: number) => two.s[n] ?? 0;
    if (gives === null && Math.max(Math.hypot(at(0), at(1)), Math.hypot(at(6), at(7))) > 1) {
      gives = f;
    }
  }
  return { frequency, k, least, s, gives };
}
