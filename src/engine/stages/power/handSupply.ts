/** Supply voltages that a portable rig meets: 9 to 15 V; or a quarter less and more than planned. */
const PORTABLE = [9, 15] as const;
const SHARE = 0.25;
const POINTS = 7;

/** @return seven supply voltages, V */
export function suppliesAbout(supply: number): Float64Array {
  const [low, high] =
    supply >= PORTABLE[0] && supply <= PORTABLE[1]
      ? PORTABLE
      : [supply * (1 - SHARE), supply * (1 + SHARE)];
  return Float64Array.from({ length: POINTS }, (_, i) => low + ((high - low) * i) / (POINTS - 1));
}

/**
 * Peak envelope power W and efficiency at other supply voltages by the square law: with the same
 * load the collector swings by what the supply allows, and all currents with it.
 */
export function handSupply(asked: {
  readonly supply: number;
  readonly saturation: number;
  readonly pep: number;
  readonly dcCurrent: number;
}) {
  const supply = suppliesAbout(asked.supply);
  const swing = supply.map(
    (v) => Math.max(0, v - asked.saturation) / (asked.supply - asked.saturation),
  );
  return {
    supply,
    power: swing.map((x) => asked.pep * x ** 2),
    efficiency: swing.map((x, i) => (asked.pep * x) / ((supply[i] ?? 1) * asked.dcCurrent)),
  };
}
