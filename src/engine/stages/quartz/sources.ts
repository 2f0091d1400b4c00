import type { Given } from './derive.ts';

/** Where a figure that the derivation starts from was taken. */
export type Source = 'typed' | 'measure' | 'sweep' | 'bag';

/** What each place knows of the crystal. */
export interface Known extends Given {
  readonly method: string;
  readonly measured: Figures;
  readonly swept: Figures;
  readonly bagged: Figures;
}

/** Figures that may be taken over: Hz, H, Ω, F. */
export interface Figures {
  readonly fs: number | null;
  readonly lm: number | null;
  readonly rm: number | null;
  readonly c0: number | null;
}

type Key = keyof Figures;

/** What the derivation starts from, and where each figure of it was taken. */
export interface Gathered {
  readonly given: Given;
  readonly from: Readonly<Partial<Record<keyof Given, Source>>>;
}

/**
 * Fills what was not typed: by the measurement that was chosen, then by the medians of the bag.
 * Only what goes together: where Lm, Cm or fp was typed no motional inductance is taken from
 * elsewhere, and where Rm or Qu was typed no resistance.
 */
export function gather({ method, measured, swept, bagged, ...typed }: Known): Gathered {
  const from: Partial<Record<keyof Given, Source>> = {};
  for (const key of ['fs', 'lm', 'cm', 'rm', 'qu', 'c0', 'fp'] as const) {
    if (typed[key] !== null) from[key] = 'typed';
  }
  const places: readonly (readonly [Source, Figures])[] = [
    ...(method === 'none'
      ? []
      : [method === 'sweep' ? (['sweep', swept] as const) : (['measure', measured] as const)]),
    ['bag', bagged],
  ];
  const filled = (key: Key, others: readonly (keyof Given)[]): number | null => {
    if (typed[key] !== null) return typed[key];
    if (others.some((other) => typed[other] !== null)) return null;
    const place = places.find(([, figures]) => figures[key] !== null);
    if (!place) return null;
    from[key] = place[0];
    return place[1][key];
  };
  // Lm and Cm together say fs themselves.
  const fs = filled('fs', typed.lm !== null && typed.cm !== null ? ['lm'] : []);
  const lm = filled('lm', ['cm', 'fp']);
  const rm = filled('rm', ['qu']);
  const c0 = filled(
    'c0',
    typed.fp !== null && (typed.lm !== null || typed.cm !== null) ? ['fp'] : [],
  );
  return { given: { ...typed, fs, lm, rm, c0 }, from };
}
