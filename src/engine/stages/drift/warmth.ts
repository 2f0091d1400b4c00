import type { Placed } from './seen.ts';

/** Cubic term of the AT cut, 1/K³: the same for all its angles. */
export const CUBIC = 1.05e-10;

/** Where slope and cubic meet in the middle, K. */
export const MIDDLE = 298.15;

/** Ends of the curve, K, and its step. */
const FROM = 263.15;
const STEPS = 24;
const STEP = 2.5;

/**
 * Shift of an AT-cut crystal against 25 °C, a fraction: a·(T − 25) + c·(T − 25)³.
 *
 * Source: Bechmann, Proc. IRE 48, 1960; the cubic term from memory.
 */
export const quartzShift = (slope: number, warmer: number): number =>
  slope * warmer + CUBIC * warmer ** 3;

/** Share with which C1 and C2 count in the divider. */
export function dividerShares({ c1, cpi, c2 }: Pick<Placed, 'c1' | 'cpi' | 'c2'>) {
  const first = c1 + cpi;
  return { first: (c2 / (first + c2)) ** 2, second: (first / (first + c2)) ** 2 };
}

/** Hertz per kelvin at 25 °C by crystal, parts and transistor; null where nothing is pulled. */
export function perDegree(seen: Placed) {
  const { carrier, slope, hzPerStray, hzPerPf, seriesC, seriesL } = seen;
  if (hzPerStray === null) return null;
  const shares = dividerShares(seen);
  const divider =
    -hzPerStray * seen.capacitors * (seen.c1 * shares.first + seen.c2 * shares.second);
  const series = hzPerPf === null || seriesC === null ? 0 : -hzPerPf * seriesC * seen.capacitors;
  const omega = 2 * Math.PI * carrier;
  // The slope of the loop's reactance follows from the pull of the divider.
  const coil =
    seriesL === null
      ? 0
      : -omega * seriesL * seen.coil * omega * seen.divider * seen.divider * hzPerStray;
  const base = seen.cpi > 0 ? (seen.cpi + seen.ccb) / seen.ambient : 0;
  return {
    ofCrystal: carrier * slope,
    ofParts: divider + series + coil,
    ofTransistor: hzPerStray * shares.first * base,
  };
}

/** Carrier and filter over temperature. */
export function overWarmth(seen: Placed, others: number) {
  const temperature = Float64Array.from({ length: STEPS + 1 }, (_, i) => FROM + STEP * i);
  const middle = seen.low6 === null || seen.high6 === null ? seen.fs : (seen.low6 + seen.high6) / 2;
  return {
    temperature,
    carrier: temperature.map(
      (t) => seen.carrier * quartzShift(seen.slope, t - MIDDLE) + others * (t - MIDDLE),
    ),
    filter: temperature.map((t) => middle * quartzShift(seen.slope, t - MIDDLE)),
  };
}
