/** Bare diameter over pitch, 0.1 to 1, one for each row of the table. */
const ROWS = 10;

/** Length over diameter, one for each column but the last, which is a coil without end. */
export const columns = [0, 0.2, 0.4, 0.6, 0.8, 1, 2, 4, 6, 8, 10] as const;

/**
 * How many times the resistance of a single-layer coil is that of the same wire stretched straight,
 * both far into the skin effect. First row: diameter over pitch 0.1.
 *
 * Source: Medhurst, H.F. Resistance and Self-Capacitance of Single-Layer Solenoids, Wireless
 * Engineer, 1947, table of φ (from memory).
 */
export const medhurst: readonly (readonly number[])[] = [
  [1.02, 1.02, 1.03, 1.03, 1.03, 1.03, 1.04, 1.04, 1.04, 1.04, 1.04, 1.05],
  [1.07, 1.08, 1.08, 1.1, 1.1, 1.1, 1.13, 1.15, 1.16, 1.16, 1.17, 1.19],
  [1.16, 1.19, 1.21, 1.22, 1.23, 1.24, 1.28, 1.32, 1.34, 1.34, 1.35, 1.4],
  [1.26, 1.29, 1.33, 1.38, 1.42, 1.45, 1.5, 1.54, 1.56, 1.57, 1.58, 1.65],
  [1.44, 1.48, 1.54, 1.6, 1.64, 1.67, 1.74, 1.78, 1.8, 1.81, 1.83, 1.93],
  [1.74, 1.77, 1.83, 1.89, 1.92, 1.94, 1.98, 2.01, 2.03, 2.08, 2.1, 2.22],
  [2.12, 2.2, 2.28, 2.38, 2.44, 2.47, 2.32, 2.27, 2.29, 2.34, 2.37, 2.51],
  [2.74, 2.83, 2.97, 3.1, 3.2, 3.17, 2.74, 2.6, 2.6, 2.62, 2.65, 2.81],
  [3.73, 3.84, 3.99, 4.11, 4.17, 4.1, 3.36, 3.05, 2.92, 2.9, 2.93, 3.11],
  [5.31, 5.45, 5.65, 5.8, 5.8, 5.55, 4.1, 3.54, 3.31, 3.2, 3.23, 3.41],
];

/** A place in the table: the four figures around it, and how far between them. */
export interface Corner {
  /** Lower row and column, lower row and upper column, upper row and lower column, both upper. */
  readonly at: readonly [number, number, number, number];
  /** Share of the way to the upper row, and to the upper column. */
  readonly row: number;
  readonly column: number;
  /** Number of the lower row; length over diameter of both columns, the upper null for a coil without end. */
  readonly low: number;
  readonly from: number;
  readonly to: number | null;
}

/**
 * Where a coil stands in the table.
 *
 * @param s bare diameter over pitch, 0 to 1; below 0.1 the first row counts towards 1 at 0
 * @param slender length over diameter
 */
export function cornerOf(s: number, slender: number): Corner {
  const r = Math.min(Math.max(s, 0), 1) * ROWS;
  const low = Math.min(ROWS - 1, Math.floor(r));
  const last = columns.length - 1;
  // Beyond 10 the rest of the way to a coil without end goes with one over the slenderness.
  const c = slender >= 10 ? last : Math.max(0, columns.findIndex((edge) => edge > slender) - 1);
  const [from, to] = [columns[c] ?? 0, columns[c + 1] ?? 0];
  const column = slender >= 10 ? 1 - 10 / slender : (slender - from) / (to - from);
  const figure = (row: number, at: number) => (row === 0 ? 1 : (medhurst[row - 1]?.[at] ?? 1));
  return {
    at: [figure(low, c), figure(low, c + 1), figure(low + 1, c), figure(low + 1, c + 1)],
    row: r - low,
    column,
    low,
    from,
    to: slender >= 10 ? null : to,
  };
}

/**
 * How many times neighbouring turns raise the resistance of a single-layer coil on air.
 *
 * @param s bare diameter over pitch, 0 to 1
 * @param slender length over diameter
 */
export function medhurstRise(s: number, slender: number): number {
  const { at, row, column } = cornerOf(s, slender);
  const [a, b, c, d] = at;
  return (1 - row) * (a + column * (b - a)) + row * (c + column * (d - c));
}

/**
 * Self-capacitance of a single-layer coil on air with one end at ground, F:
 * (0.1126·ℓ/D + 0.08 + 0.27·√(D/ℓ)) pF for each centimetre of diameter.
 *
 * @param diameter from wire centre to wire centre, m
 * @param length m
 * Source: Medhurst 1947, formula fitted to his measurements (from memory).
 */
export function airCapacitance(diameter: number, length: number): number {
  const slender = length / diameter;
  return 1e-10 * diameter * (0.1126 * slender + 0.08 + 0.27 / Math.sqrt(slender));
}
