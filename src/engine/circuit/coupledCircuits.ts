import { ladderTransfer, TRANSFER_SIZE } from './ladderTransfer.ts';
import { capacitor, type OutputLadder } from './outputLadder.ts';

/** A band-pass of two or three parallel circuits, capacitors between their tops and at the ends. */
export interface CoupledCircuits {
  /** Hz. */
  readonly nominal: number;
  readonly circuits: 2 | 3;
  /** H. */
  readonly coil: number;
  readonly coilQ: number;
  /** F. */
  readonly couple: number;
  readonly feed: number;
  readonly endC: number;
  /** F; 0 with two circuits. */
  readonly middleC: number;
  /** Ω. */
  readonly end: number;
}

/** The band-pass as a ladder between its two ends. */
export function coupledLadder(made: CoupledCircuits): OutputLadder {
  const tuned = (c: number) =>
    ({
      place: 'shunt',
      l: made.coil,
      c,
      ql: made.coilQ,
      qc: Number.POSITIVE_INFINITY,
    }) as const;
  const through = (c: number) => capacitor('series', c, Number.POSITIVE_INFINITY);
  const middle = made.circuits === 3 ? [through(made.couple), tuned(made.middleC)] : [];
  return {
    branches: [
      through(made.feed),
      tuned(made.endC),
      ...middle,
      through(made.couple),
      tuned(made.endC),
      through(made.feed),
    ],
    ratio: 1,
    sourceResistance: made.end,
    sourceCapacitance: 0,
    load: made.end,
    reference: made.nominal,
  };
}

/**
 * Transducer gain of a ladder between equal ends, dB: power into the load over the most that the
 * source can give, |Z_T|²·4/R².
 */
export function coupledGain(ladder: OutputLadder, frequency: number): number {
  const out = new Float64Array(TRANSFER_SIZE);
  ladderTransfer(ladder, frequency, out);
  return 20 * Math.log10((2 * Math.hypot(out[0] ?? 0, out[1] ?? 0)) / ladder.load);
}
