import type { Outcome } from '../../fields/kinds.ts';

/** One harmonic of an offered network, dBc. */
export interface OfferedHarmonic {
  readonly order: number;
  /** Hz */
  readonly frequency: number;
  readonly level: number;
  readonly limit: number;
  readonly outcome: Outcome;
}

/** A network as it came out, built with real parts. */
export interface Offered {
  /** Texts of the entries that make it, by path. */
  readonly entries: Readonly<Record<string, string>>;
  /** What it is, in words. */
  readonly words: string;
  readonly kind: string;
  readonly capacitors: number;
  readonly coils: number;
  readonly transformers: number;
  /** All of them together. */
  readonly parts: number;
  /** dB; null where the pulse has no harmonic. */
  readonly margin: number | null;
  readonly order: number | null;
  /** dB, W */
  readonly loss: number;
  readonly returnLoss: number;
  readonly power: number;
  /** Heat in the hottest part, W, and its name. */
  readonly heat: number;
  readonly hottest: string;
  /** What it fails in; empty where it passes. */
  readonly lacks: readonly Lack[];
  readonly harmonics: readonly OfferedHarmonic[];
}

/** What a network may fail in. */
export type Lack = 'margin' | 'fit' | 'loss' | 'power' | 'parts' | 'match' | 'family';

/** What would help where nothing passes. */
export interface Help {
  readonly says: string;
  readonly offered: Offered;
}

/** What came of looking through all networks. */
export interface SuggestAnswer {
  readonly looked: number;
  /** How many pass in everything. */
  readonly passed: number;
  /** The best of each kind that passes, in order: the first is the suggestion. */
  readonly ranked: readonly Offered[];
  /** Where none passes: those allowed that fail by least. */
  readonly nearest: readonly Offered[];
  readonly help: readonly Help[];
  /** Every kind at its best, for the picture: passing or not. */
  readonly all: readonly Pick<Offered, 'words' | 'parts' | 'margin' | 'lacks'>[];
}
