/** A ready-made choke. */
export interface Choke {
  readonly make: string;
  /** H. */
  readonly l: number;
  /** At `qAt` in Hz. */
  readonly q: number;
  readonly qAt: number;
  /** Self-resonance, Hz: above it the choke is a capacitor. */
  readonly resonance: number;
  /** Greatest direct current, A. */
  readonly most: number;
  /** Resistance to direct current, Ω. */
  readonly resistance: number;
  readonly source: string;
}

/** µH, Q, MHz of the Q, self-resonance in MHz, greatest A, Ω. */
type Row = readonly [number, number, number, number, number, number];

const source = 'typical of its kind; common practice, from memory';

const series = (make: string, rows: readonly Row[]): Choke[] =>
  rows.map(([l, q, qAt, resonance, most, resistance]) => ({
    make,
    l: l * 1e-6,
    q,
    qAt: qAt * 1e6,
    resonance: resonance * 1e6,
    most,
    resistance,
    source,
  }));

/**
 * Ready-made chokes, smaller value first within a make. Typical figures: those of the part in the
 * hand are on its maker's sheet, and self-resonance is soon measured.
 */
export const chokes: readonly Choke[] = [
  ...series('moulded axial', [
    [1, 50, 7.96, 190, 1.2, 0.12],
    [2.2, 50, 7.96, 110, 0.9, 0.25],
    [4.7, 55, 7.96, 60, 0.7, 0.4],
    [10, 55, 2.52, 36, 0.55, 0.65],
    [22, 60, 2.52, 20, 0.4, 1.2],
    [47, 60, 2.52, 13, 0.3, 2.2],
    [100, 60, 0.796, 8, 0.2, 4],
    [220, 60, 0.796, 5.2, 0.14, 8],
    [470, 60, 0.796, 3.5, 0.1, 17],
    [1000, 50, 0.252, 2.4, 0.07, 24],
  ]),
  ...series('radial drum', [
    [1, 30, 7.96, 140, 5, 0.01],
    [2.2, 30, 7.96, 85, 4.2, 0.015],
    [4.7, 35, 7.96, 45, 3.5, 0.02],
    [10, 40, 2.52, 25, 2.6, 0.04],
    [22, 40, 2.52, 14, 1.8, 0.08],
    [47, 45, 2.52, 9, 1.3, 0.15],
    [100, 45, 0.796, 6, 0.9, 0.3],
    [220, 40, 0.796, 3.8, 0.6, 0.6],
  ]),
];
