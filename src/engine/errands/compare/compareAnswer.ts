import type { EnvelopeStep } from '../../circuit/envelopeStep.ts';
import type { StepFigures } from '../../circuit/stepFigures.ts';
import type { Variant } from '../../stages/compare/variants.ts';

/** A curve over frequency: Hz, dB against the best point, s. */
export interface ComparedResponse {
  readonly frequency: Float64Array;
  readonly gain: Float64Array;
  readonly delay: Float64Array;
}

/** The voice through the filter: tones in Hz, dB against the best point. */
export interface ComparedVoice {
  readonly tone: Float64Array;
  readonly wanted: Float64Array;
  readonly opposite: Float64Array;
}

/** What stands in the columns of the table; Hz, dB, s, Ω; null where there is none. */
export interface ComparedFigures extends Omit<StepFigures, 'delay'> {
  readonly width3: number | null;
  readonly width6: number | null;
  readonly width60: number | null;
  readonly shape: number | null;
  readonly loss: number | null;
  readonly ripple: number | null;
  readonly delayVariation: number | null;
  readonly ends: number | null;
  readonly carrier: number | null;
  readonly carrierDown: number | null;
  readonly audioLow6: number | null;
  readonly audioHigh6: number | null;
  readonly suppression300: number | null;
  readonly suppression1k: number | null;
  readonly suppressionWorst: number | null;
  readonly crystals: number;
  /** Capacitors to be fitted, and how many different values they have. */
  readonly capacitors: number;
  readonly values: number;
}

/** One filter as it came out, or why it did not. */
export interface Compared {
  readonly variant: Variant;
  /** What is wrong with it, in words. */
  readonly says: readonly string[];
  readonly found: {
    readonly response: ComparedResponse;
    readonly step: EnvelopeStep;
    readonly voice: ComparedVoice | null;
    readonly figures: ComparedFigures;
  } | null;
}

/** All filters, in the order of their letters. */
export interface CompareAnswer {
  readonly filters: readonly Compared[];
}
