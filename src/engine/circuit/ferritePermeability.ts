/** Rows of a permeability curve: frequency in Hz rising, μ′, μ″, all above 0. */
type Curve = readonly (readonly [number, number, number])[];

/** A stretch of a curve between two of its rows. */
export interface Stretch {
  readonly from: readonly [number, number, number];
  readonly to: readonly [number, number, number];
}

/** The stretch of a curve that holds a frequency; beyond its ends the outermost goes on. */
export function stretchAt(curve: Curve, frequency: number): Stretch {
  let i = 1;
  while (i < curve.length - 1 && frequency > (curve[i]?.[0] ?? 0)) i += 1;
  const [from, to] = [curve[i - 1], curve[i]];
  if (!from || !to) throw new Error('a curve has two rows at least');
  return { from, to };
}

/**
 * A ferrite's permeability at a frequency, on straight lines between the rows of its curve where
 * both axes are logarithmic, as makers print them.
 *
 * @param curve frequency in Hz rising, μ′, μ″; two rows at least
 * @param frequency Hz, above 0
 * @returns μ′ (stores) and μ″ (loses); μ = μ′ − jμ″
 */
export function ferritePermeability(
  curve: Curve,
  frequency: number,
): { stores: number; loses: number } {
  const { from, to } = stretchAt(curve, frequency);
  const share = Math.log(frequency / from[0]) / Math.log(to[0] / from[0]);
  return {
    stores: from[1] * (to[1] / from[1]) ** share,
    loses: from[2] * (to[2] / from[2]) ** share,
  };
}
