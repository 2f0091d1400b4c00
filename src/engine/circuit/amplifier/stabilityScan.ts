import { rollett } from '../nodal/rollett.ts';
import { scattering, type TwoPort } from '../nodal/scattering.ts';

/** A stage's stability over a band, and where it is least. */
export interface StabilityScan {
  readonly frequency: Float64Array;
  readonly k: Float64Array;
  /** The least factor, and its index; null where nothing comes back anywhere. */
  readonly lowest: number;
  readonly least: number | null;
  /** Scattering parameters there, referred to the stage's own ends. */
  readonly s: Float64Array;
  /** A port gives back more than it gets, somewhere in the band: the first such frequency, Hz. */
  readonly gives: number | null;
}

/** Where nothing comes back at all the factor has no bounds: this stands for it. */
const ENDLESS = 1e9;

/**
 * Rollett’s factor over a band, evenly spaced in octaves, and its least.
 *
 * @param from, to ends of the band, Hz
 * @param points how many frequencies are looked at
 */
export function stabilityScan(
  two: TwoPort,
  from: number,
  to: number,
  points: number,
): StabilityScan {
  const frequency = new Float64Array(points);
  const k = new Float64Array(points);
  const s = new Float64Array(8);
  let least: number | null = null;
  let lowest = 0;
  let gives: number | null = null;
  for (let i = 0; i < points; i += 1) {
    const f = from * (to / from) ** (i / (points - 1));
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
