/** One row of a ferrite's permeability: frequency in Hz, μ′ (stores), μ″ (loses). */
export type CurvePoint = readonly [number, number, number];

/** What a ferrite is, and how its permeability goes with frequency. */
export interface Ferrite {
  readonly title: string;
  /** Initial permeability, at low frequency and small signals. */
  readonly permeability: number;
  readonly curve: readonly CurvePoint[];
  /** Flux density at saturation, 25 °C, T. */
  readonly saturation: number;
  /** Curie temperature, K: above it there is no ferrite left to speak of. */
  readonly curie: number;
  /** Maker's greatest loss factor tan δ/μi, and the frequency in Hz at which it holds. */
  readonly lossFactor: readonly [number, number];
  readonly generation: 'current' | 'older' | null;
  readonly source: string;
}

const remembered = 'makers’ curves and catalogue figures, from memory, ±20 %';

const mhz = (points: readonly CurvePoint[]): readonly CurvePoint[] =>
  points.map(([f, stores, loses]) => [f * 1e6, stores, loses]);

/** Nickel-zinc of medium permeability: smoothed through points remembered of the makers' curves. */
const mix43 = mhz([
  [0.1, 790, 27],
  [0.2, 780, 44],
  [0.5, 750, 83],
  [1, 720, 130],
  [2, 650, 190],
  [3, 590, 220],
  [5, 500, 260],
  [7, 430, 270],
  [10, 350, 260],
  [15, 270, 250],
  [20, 220, 230],
  [30, 160, 190],
  [50, 100, 150],
  [100, 57, 98],
  [200, 32, 61],
  [500, 16, 32],
  [1000, 9.6, 19],
]);

/**
 * Ferrites for broadband windings. Makers' curves differ between their own editions by a tenth and
 * more; a curve for the lot in the hand beats all of them.
 */
export const ferrites = {
  '43': {
    title: 'mix 43',
    permeability: 800,
    curve: mix43,
    saturation: 0.35,
    curie: 403,
    lossFactor: [250e-6, 1e6],
    generation: 'current',
    source: remembered,
  },
  // The older material was rated at 850 and its cores a fifth higher. No separate curve is at hand:
  // it is taken to fall off alike.
  '43-older': {
    title: 'mix 43 (older)',
    permeability: 850,
    curve: mix43.map(
      ([f, stores, loses]): CurvePoint => [f, (stores * 850) / 800, (loses * 850) / 800],
    ),
    saturation: 0.275,
    curie: 403,
    lossFactor: [250e-6, 1e6],
    generation: 'older',
    source: remembered,
  },
  '61': {
    title: 'mix 61',
    permeability: 125,
    curve: mhz([
      [0.1, 125, 0.1],
      [1, 125, 0.4],
      [2, 125, 0.6],
      [5, 126, 1.2],
      [7, 127, 1.8],
      [10, 130, 3.5],
      [15, 137, 9],
      [20, 143, 18],
      [30, 138, 44],
      [40, 122, 67],
      [50, 104, 79],
      [70, 75, 80],
      [100, 47, 66],
      [200, 19, 42],
      [500, 6, 20],
      [1000, 3, 11],
    ]),
    saturation: 0.235,
    curie: 573,
    lossFactor: [30e-6, 1e6],
    generation: null,
    source: remembered,
  },
  '73': {
    title: 'mix 73',
    permeability: 2500,
    curve: mhz([
      [0.1, 2500, 62],
      [0.2, 2490, 120],
      [0.5, 2460, 310],
      [1, 2350, 590],
      [2, 2000, 1000],
      [3, 1600, 1200],
      [5, 980, 1220],
      [7, 620, 1080],
      [10, 350, 860],
      [15, 170, 620],
      [20, 97, 480],
      [30, 45, 330],
      [50, 17, 200],
      [100, 5, 100],
      [200, 2, 50],
    ]),
    saturation: 0.39,
    curie: 433,
    lossFactor: [10e-6, 0.1e6],
    generation: null,
    source: remembered,
  },
  '77': {
    title: 'mix 77',
    permeability: 2000,
    curve: mhz([
      [0.1, 2000, 57],
      [0.2, 1990, 114],
      [0.5, 1960, 280],
      [1, 1850, 530],
      [2, 1510, 860],
      [3, 1150, 990],
      [5, 660, 940],
      [7, 400, 800],
      [10, 220, 620],
      [15, 100, 440],
      [20, 60, 340],
      [30, 28, 230],
      [50, 11, 140],
      [100, 3.4, 70],
      [200, 1.6, 35],
    ]),
    saturation: 0.49,
    curie: 473,
    lossFactor: [15e-6, 0.1e6],
    generation: null,
    source: remembered,
  },
} as const satisfies Record<string, Ferrite>;

export type FerriteKey = keyof typeof ferrites;
