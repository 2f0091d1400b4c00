import type { PowerBudget } from '../../circuit/power/powerBudget.ts';
import type { PowerFigures, PowerWaves } from '../../circuit/power/powerFigures.ts';
import type { Outcome } from '../../fields/kinds.ts';

/** One harmonic in the steady state. */
export interface ExactHarmonic {
  readonly order: number;
  /** Hz. */
  readonly frequency: number;
  /** At the collector, against the fundamental there: voltage and current, dB. */
  readonly collectorVoltage: number;
  readonly collectorCurrent: number;
  /** At the antenna, dBc, the rule's limit, and what lies between, dB. */
  readonly level: number;
  readonly limit: number;
  readonly margin: number;
  readonly outcome: Outcome;
}

/** The stage over its drive, rising. */
export interface OverDrive {
  /** Most power that the driver could give, over that at full drive, dB. */
  readonly drive: Float64Array;
  /** At the antenna, W. */
  readonly power: Float64Array;
  /** Power at the antenna over most power of the driver: dB, against full drive. */
  readonly gain: Float64Array;
  /** Phase of the output against that at full drive, rad. */
  readonly phase: Float64Array;
  /** Direct collector current, all transistors together, A. */
  readonly current: Float64Array;
  /** Heat in all transistors together, W. */
  readonly dissipation: Float64Array;
}

/** Two equal tones that reach the same crest. */
export interface TwoTones {
  /** 3, 5, 7. */
  readonly orders: readonly number[];
  /** Products against the peak envelope power, and against one of the tones, dB. */
  readonly belowPep: readonly number[];
  readonly belowTone: readonly number[];
  /** Mean power at the antenna W, direct collector current A. */
  readonly power: number;
  readonly current: number;
}

/** The stage with the same drive and bias at other supply voltages. */
export interface OverSupply {
  /** V. */
  readonly supply: Float64Array;
  /** At the antenna, W. */
  readonly power: Float64Array;
  /** Power at the antenna over direct power of the collector, fraction. */
  readonly efficiency: Float64Array;
  /** Third-order products of two tones against the peak envelope power there, dB. */
  readonly third: Float64Array;
}

/** The stage on a supply that gives way, with unchanged drive and bias. */
export interface Sag {
  /** Resistance of battery and leads, Ω. */
  readonly resistance: number;
  /** What is left at the final at the crest, V. */
  readonly supply: number;
  /** At the antenna, W, and against that without sag, dB. */
  readonly power: number;
  readonly lost: number;
}

/** What each transistor of the stage has to bear. */
export interface EachTransistor {
  /** How many there are. */
  readonly count: number;
  /** Standing current A, peak of the collector current A, heat at full power W. */
  readonly standing: number;
  readonly peakCurrent: number;
  readonly dissipation: number;
  /** Heat in its emitter resistor at full power, W. */
  readonly ballast: number;
}

/** The junction, warmed by its own heat. */
export interface ExactJunction {
  /** After minutes of speech, or with the key down. */
  readonly warmth: 'speech' | 'tone';
  /** K. */
  readonly temperature: number;
  /** Heat in each transistor that goes with it, W: the mean of speech, or that of the tone. */
  readonly heat: number;
  /** How often heat and temperature were worked out anew; whether they agree within a kelvin. */
  readonly rounds: number;
  readonly settled: boolean;
  /** With the heat of full power all the time, K: what a long tone would lead to. */
  readonly tone: number;
}

/** What stands for something that the rig doesn't say. */
export interface Assumption {
  readonly what: string;
  readonly value: number;
  readonly unit: 'Ω' | 'H' | 'F' | 'K';
}

/** What the steady state of the final says. */
export interface PowerAnswer {
  /** Full power reached; the driver or the supply gives less; nothing found. */
  readonly reached: 'full' | 'short' | 'none';
  /** What came of it, in words. */
  readonly says: string;
  /** How it comes about, in words. */
  readonly how: string;
  readonly assumptions: readonly Assumption[];
  /** What was found at full power, or at the most there is; null where nothing was. */
  readonly found: {
    /** Kirchhoff's law is met to this, V. */
    readonly residual: number;
    /** Open voltage of the bias for the standing current wanted, V. */
    readonly bias: number;
    readonly figures: PowerFigures;
    readonly budget: PowerBudget;
    readonly waves: PowerWaves;
    readonly harmonics: readonly ExactHarmonic[];
    readonly worstMargin: number;
    readonly each: EachTransistor;
    readonly junction: ExactJunction;
    /** Null where a state on the way was not found. */
    readonly overDrive: OverDrive | null;
    readonly twoTones: TwoTones | null;
    readonly overSupply: OverSupply | null;
    /** Null where the supply is stiff, or no state was found. */
    readonly sag: Sag | null;
  } | null;
}
