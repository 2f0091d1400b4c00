import type { FerriteKey } from './ferrites.ts';

/** A ferrite block with two holes side by side: one turn goes out through one and back through the other. */
export interface TwoHoleCore {
  readonly key: string;
  readonly title: string;
  readonly ferrite: FerriteKey;
  /** Along the holes, m. */
  readonly length: number;
  /** Across both holes, m. */
  readonly width: number;
  /** Across one hole, m. */
  readonly height: number;
  /** Diameter of each hole, m. */
  readonly hole: number;
  /** Between the middles of the holes, m. */
  readonly apart: number;
  /** Inductance of one turn, H. */
  readonly al: number;
  readonly source: string;
}

const large = { length: 14.35e-3, width: 13.3e-3, height: 7.5e-3, hole: 3.8e-3, apart: 5.7e-3 };
const small = { length: 6.2e-3, width: 7e-3, height: 4.2e-3, hole: 1.8e-3, apart: 2.9e-3 };
const source = 'makers’ and dealers’ lists, from memory, ±30 %';

const row = (
  title: string,
  ferrite: FerriteKey,
  size: typeof large,
  nanohenries: number,
): TwoHoleCore => ({ key: title, title, ferrite, ...size, al: nanohenries * 1e-9, source });

/** Two-hole cores, smaller first. They need fewer turns than a toroid of the same mix. */
export const twoHoleCores: readonly TwoHoleCore[] = [
  row('BN-73-2402', '73', small, 3750),
  row('BN-43-202', '43', large, 2200),
  row('BN-61-202', '61', large, 425),
  row('BN-73-202', '73', large, 8500),
];
