import { rollett } from '../../circuit/nodal/rollett.ts';
import { scattering, type TwoPort } from '../../circuit/nodal/scattering.ts';
import type { StabilityScan } from './smallFields.ts';

/** Ends of the band, Hz, and how many frequencies are looked at. */
export const SCAN_FROM = 1e5;
export const SCAN_TO = 300e6;
export const SCAN_POINTS = 29;

/** Where nothing comes back at all the factor has no bounds: this stands for it. */
const ENDLESS = 1e9;

/** Rollett's factor over the band, evenly spaced in octaves, and its least. */
export function stabilityScan(two: TwoPort): StabilityScan {
  const frequency = new Float64Array(SCAN_POINTS);
  const k = new Float64Array(SCAN_POINTS);
  const s = new Float64Array(8);
  let least: number | null = null;
  let lowest = 0;
  let gives: number | null = null;
  for (let i = 0; i < SCAN_POINTS; i += 1) {
    const f = SCAN_FROM * (SCAN_TO / SCAN_FROM) ** (i / (SCAN_POINTS - 1));
    frequency[i] = f;
    scattering(two, f);
    const raw = rollett(two.s).k;
    const known = Number.isFinite(raw);
    k[i] = known ? Math.min(raw, ENDLESS) : ENDLESS;
    if (known && (least === null || raw < lowest)) {
      least = i;
      lowest = raw;
      s.set(two.s);
    }
    const at = (n: number) => two.s[n] ?? 0;
    if (gives === null && Math.max(Math.hypot(at(0), at(1)), Math.hypot(at(6), at(7))) > 1) {
      gives = f;
    }
  }
  return { frequency, k, lowest, least, s, gives };
}
