/** What a passband is judged by. */
export interface Looks {
  /** Deepest dip between two humps, below the best point, dB; 0 where there is none. A level shoulder
   *  counts as a dip; humps more than 3 dB down count less and less. */
  readonly ripple: number;
  /** From the best point to the lowest one within the middle seven tenths of the width, dB. */
  readonly fall: number;
  /** Between the outermost points 3 dB below the best one, Hz. */
  readonly width: number;
  /** At the best point, dB. */
  readonly loss: number;
}

/** The same, and how far apart its crystals lie, lowest to highest, Hz. */
export interface Judged extends Looks {
  readonly apart: number;
}

/** The part of the width, at each side, in which a fall is a corner and no unevenness. */
export const CORNER = 0.15;
/** Parts of a dB that the other figures count beside a dB of ripple. */
const FALL = 0.1;
const WIDTH = 10;
const FREE = 0.01;
const LOSS = 0.05;
const APART = 0.2;
/** How much more ripple counts beyond that of the n closest neighbours. */
const WORSE = 4;

/** What an arrangement is measured against. */
export interface Against {
  /** Width of the same filter with alike crystals, Hz. */
  readonly width: number;
  /** Ripple of the n closest neighbours in order of frequency, dB: never to be exceeded. */
  readonly ripple: number;
}

/**
 * The one figure that is made least, dB: the ripple; a tenth of the fall over the middle of the
 * passband; a tenth of a dB for each per cent of width over the first; a twentieth of the loss; a
 * fiftieth of a dB for each tenth of the width that the crystals lie apart. Ripple beyond that of
 * the n closest neighbours counts five times.
 */
export const meritOf = ({ ripple, fall, width, loss, apart }: Judged, against: Against): number =>
  ripple +
  WORSE * Math.max(0, ripple - against.ripple) +
  FALL * fall +
  WIDTH * Math.max(0, Math.abs(width / against.width - 1) - FREE) +
  LOSS * loss +
  (APART * apart) / against.width;
