/** Dimensions of a toroid, m and m². */
export interface CoreSize {
  readonly outer: number;
  readonly inner: number;
  readonly height: number;
  /** Magnetic path length, m. */
  readonly path: number;
  /** Cross section, m². */
  readonly area: number;
}

/** What a toroid is pressed from. */
export interface Mix {
  readonly title: string;
  readonly kind: 'iron' | 'ferrite';
  /** Initial permeability. */
  readonly permeability: number;
  /** Frequency where a ferrite's permeability has relaxed to (1 − j)/2 of its initial value, Hz. */
  readonly relaxation: number | null;
  /** Quality factor of the core alone in a tuned coil, order of magnitude; null for ferrites. */
  readonly coreQ: number | null;
  /** Useful range for tuned coils (iron) or broadband windings (ferrite), Hz. */
  readonly useful: readonly [number, number];
  /** Relative tolerance of A_L. */
  readonly tolerance: number;
  readonly colour: string;
}

/** A toroid that can be bought. */
export interface Core {
  readonly key: string;
  readonly title: string;
  readonly size: CoreSize;
  readonly mix: Mix;
  /** Inductance of one turn, H; L = A_L·N². */
  readonly al: number;
  /** Where makers changed a mix under the same number: which one this row is. */
  readonly generation: 'current' | 'older' | null;
  readonly source: string;
  readonly year: number | null;
}

const size = (
  outer: number,
  inner: number,
  height: number,
  pathCm: number,
  areaCm2: number,
): CoreSize => ({
  outer: outer * 1e-3,
  inner: inner * 1e-3,
  height: height * 1e-3,
  path: pathCm * 1e-2,
  area: areaCm2 * 1e-4,
});

/** Makers' nominal dimensions (from memory), mm, then path in cm and section in cm². */
export const coreSizes = {
  T25: size(6.48, 3.05, 2.44, 1.5, 0.037),
  T37: size(9.53, 5.21, 3.25, 2.31, 0.064),
  T44: size(11.2, 5.82, 4.04, 2.68, 0.099),
  T50: size(12.7, 7.7, 4.83, 3.19, 0.112),
  T68: size(17.5, 9.4, 4.83, 4.23, 0.179),
  T80: size(20.2, 12.6, 6.35, 5.14, 0.231),
  T94: size(23.9, 14.2, 7.92, 5.97, 0.362),
  T106: size(26.9, 14.5, 11.1, 6.49, 0.659),
  FT37: size(9.53, 4.75, 3.18, 2.15, 0.076),
  FT50: size(12.7, 7.14, 4.77, 3.02, 0.133),
  FT82: size(21.0, 13.1, 6.35, 5.26, 0.246),
} as const satisfies Record<string, CoreSize>;

/**
 * Mixes. Permeability of iron powder: second-hand sources that agree. Relaxation of ferrites: from
 * Snoek's limit μi·f ≈ 8 GHz for nickel-zinc and the trend of makers' curves, from memory, ±30 %.
 * Core quality factors are typical figures from memory: a coil's real Q must be measured.
 */
export const mixes = {
  2: iron('mix 2', 10, [1e6, 30e6], 600, 'red'),
  6: iron('mix 6', 8.5, [3e6, 50e6], 600, 'yellow'),
  7: iron('mix 7', 9, [3e6, 35e6], 600, 'white'),
  43: ferrite('mix 43', 800, 11e6, [1e6, 50e6], 0.2),
  61: ferrite('mix 61', 125, 70e6, [2e6, 200e6], 0.25),
  77: ferrite('mix 77', 2000, 3.5e6, [0.1e6, 10e6], 0.25),
} as const satisfies Record<number, Mix>;

function iron(
  title: string,
  permeability: number,
  useful: readonly [number, number],
  coreQ: number,
  colour: string,
): Mix {
  return {
    title,
    kind: 'iron',
    permeability,
    relaxation: null,
    coreQ,
    useful,
    tolerance: 0.05,
    colour,
  };
}

function ferrite(
  title: string,
  permeability: number,
  relaxation: number,
  useful: readonly [number, number],
  tolerance: number,
): Mix {
  return {
    title,
    kind: 'ferrite',
    permeability,
    relaxation,
    coreQ: null,
    useful,
    tolerance,
    colour: 'grey, unmarked',
  };
}

/** µH per 100 turns (that is 10⁻¹⁰ H per turn²) for mixes 2, 6 and 7; null where none is made. */
const ironAl = {
  T25: [34, 27, 29],
  T37: [40, 30, 32],
  T44: [52, 42, 46],
  T50: [49, 40, 43],
  T68: [57, 47, 52],
  T80: [55, 45, 50],
  T94: [84, 70, null],
  T106: [135, 116, 133],
} as const;

const ironCores: readonly Core[] = ([2, 6, 7] as const).flatMap((number, column) =>
  (Object.keys(ironAl) as (keyof typeof ironAl)[]).flatMap((name): Core[] => {
    const per100 = ironAl[name][column];
    return per100 === null || per100 === undefined
      ? []
      : [
          {
            key: `${name}-${number}`,
            title: `${name}-${number}`,
            size: coreSizes[name],
            mix: mixes[number],
            al: per100 * 1e-10,
            generation: null,
            source: "makers' lists at second hand, four agreeing",
            year: null,
          },
        ];
  }),
);

/** nH per turn². Mix 43 was changed under the same number: the older rows are for older stock. */
const ferriteAl = {
  FT37: { 43: 350, '43 older': 420, 61: 55.3, 77: 884 },
  FT50: { 43: 440, '43 older': 523, 61: 68, 77: 990 },
  FT82: { 43: 470, '43 older': 557, 61: 73.3, 77: 1060 },
} as const;

const ferriteCores: readonly Core[] = (['43', '43 older', '61', '77'] as const).flatMap((label) =>
  (Object.keys(ferriteAl) as (keyof typeof ferriteAl)[]).map((name): Core => {
    const number = Number.parseInt(label, 10) as 43 | 61 | 77;
    return {
      key: `${name}-${label.replace(' ', '-')}`,
      title: `${name}-${label.replace(' older', ' (older)')}`,
      size: coreSizes[name],
      mix: mixes[number],
      al: ferriteAl[name][label] * 1e-9,
      generation: number === 43 ? (label === '43' ? 'current' : 'older') : null,
      source: "makers' lists at second hand",
      year: null,
    };
  }),
);

/** Every toroid, powdered iron first, smallest first within a mix. */
export const cores: readonly Core[] = [...ironCores, ...ferriteCores];
