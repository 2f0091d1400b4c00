import { coupledLadder } from '../../circuit/coupledCircuits.ts';
import { ladderTransfer, TRANSFER_SIZE } from '../../circuit/ladderTransfer.ts';
import type { OutputLadder } from '../../circuit/outputLadder.ts';
import type { StrongSeen } from './seen.ts';

/** A ladder that a station comes through, and how much of it does. */
export interface Selective {
  /** Size of the transimpedance, Ω, over frequency in Hz. */
  readonly through: (frequency: number) => number;
}

/**
 * The output network from the antenna's side: a ladder of coils and capacitors passes as much one
 * way as the other, between the same two resistances. The receiver is taken to load it as the
 * collector's load did.
 */
export const networkBackwards = (ladder: OutputLadder, collectorSide: number): Selective =>
  selective({ ...ladder, sourceResistance: collectorSide, sourceCapacitance: 0 });

/** The output network where the signal comes in through it; else null. */
export const networkOf = ({
  throughNetwork,
  ladder,
  collectorSide,
}: Pick<StrongSeen, 'throughNetwork' | 'ladder' | 'collectorSide'>): Selective | null =>
  throughNetwork === 'yes' && ladder !== null && collectorSide !== null
    ? networkBackwards(ladder, collectorSide)
    : null;

/** The band-pass of a rig that converts, between its ends: it looks the same from both; else null. */
export const bandOf = ({
  scheme,
  bandPass,
}: Pick<StrongSeen, 'scheme' | 'bandPass'>): Selective | null =>
  scheme === 'conversion' && bandPass !== null ? selective(coupledLadder(bandPass)) : null;

function selective(ladder: OutputLadder): Selective {
  const out = new Float64Array(TRANSFER_SIZE);
  return {
    through(frequency) {
      ladderTransfer(ladder, frequency, out);
      return Math.hypot(out[0] ?? 0, out[1] ?? 0);
    },
  };
}

/** More than is taken off the signal, dB; nothing where there is no such ladder. */
export const takenBeyond = (ladder: Selective | null, frequency: number, signal: number): number =>
  ladder === null
    ? 0
    : Math.min(MOST_TAKEN, 20 * Math.log10(ladder.through(signal) / ladder.through(frequency)));

/** Beyond this, wires and boards leak more, dB. Common practice, no source. */
export const MOST_TAKEN = 120;
