import { awgDiameter } from './awgDiameter.ts';

/** Enamelled copper wire of one size. */
export interface Wire {
  readonly title: string;
  readonly system: 'metric' | 'awg';
  /** Bare copper diameter, m. */
  readonly bare: number;
  /** Greatest diameter over grade 1 enamel, m. */
  readonly overall: number;
}

/** Bare and grade 1 overall diameter in mm: IEC 60317-0-1, R20 sizes (from memory). */
const metric: readonly (readonly [number, number])[] = [
  [0.1, 0.117],
  [0.125, 0.144],
  [0.16, 0.182],
  [0.2, 0.226],
  [0.224, 0.252],
  [0.25, 0.281],
  [0.28, 0.312],
  [0.315, 0.349],
  [0.355, 0.392],
  [0.4, 0.439],
  [0.45, 0.491],
  [0.5, 0.544],
  [0.56, 0.606],
  [0.63, 0.679],
  [0.71, 0.762],
  [0.8, 0.855],
  [0.9, 0.959],
  [1, 1.062],
];

/** Every wire, thinnest first within its system. */
export const wires: readonly Wire[] = [
  ...metric.map(
    ([bare, overall]): Wire => ({
      title: `${bare.toFixed(3).replace(/0+$/, '').replace(/\.$/, '.0')} mm`,
      system: 'metric',
      bare: bare * 1e-3,
      overall: overall * 1e-3,
    }),
  ),
  ...[36, 34, 32, 30, 28, 26, 24, 22, 20, 18].map((gauge): Wire => {
    const bare = awgDiameter(gauge);
    return { title: `AWG ${gauge}`, system: 'awg', bare, overall: overEnamel(bare) };
  }),
];

/**
 * Diameter over grade 1 enamel for sizes that the metric table does not hold, m:
 * d + 0.062 mm·√(d/mm) meets every row of it from 0.25 mm up within 2 µm.
 */
function overEnamel(bare: number): number {
  return bare + 0.062e-3 * Math.sqrt(bare / 1e-3);
}
