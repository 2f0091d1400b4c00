/** What the final does into a mismatched network, one entry an angle of the antenna's reflection. */
export interface Around {
  /** Angle of the reflection, rad: 0 where the antenna's resistance is R·SWR, π where it is R/SWR. */
  readonly angle: Float64Array;
  /** Load that the collector sees, Ω. */
  readonly resistance: Float64Array;
  readonly reactance: Float64Array;
  /** Share of the planned drive that the supply allows. */
  readonly drive: Float64Array;
  /** Power into the antenna, W. */
  readonly power: Float64Array;
  /** What the network keeps, dB. */
  readonly loss: Float64Array;
  /** Peak of a collector, V: with the drive held to what the supply allows; and if it went on. */
  readonly held: Float64Array;
  readonly unheld: Float64Array;
  /** Heat in the final, W. */
  readonly heat: Float64Array;
  /** Fundamental into the antenna for one ampere out of the collector, over R/2: (1 − ρ²)/|c + dΓ|². */
  readonly gain: Float64Array;
}

/** The final by hand: V, A peak, Ω. */
export interface HandFinal {
  readonly supply: number;
  readonly fundamental: number;
  /** Direct current at full drive and without any. */
  readonly dcCurrent: number;
  readonly quiescent: number;
  readonly collectorLoad: number;
  /** Two in push-pull: each collector swings by half of what the load has. */
  readonly sides: 1 | 2;
}

/** Steps of a whole round. */
export const ROUND = 72;

/**
 * Follows the antenna's reflection once round at a constant standing-wave ratio, in closed form.
 *
 * The collector is a current source that the supply limits: into more than the load wanted the drive
 * is held to what its swing allows, and the direct current falls in a straight line with the drive.
 * `unheld` is what the peak would come to if the pulse went on.
 *
 * @param waves of the network alone, from `chainWaves`, and with the collector's own resistance
 * @param antenna R, Ω
 * @param rho size of the reflection, 0 ≤ rho < 1
 * @returns angles 0 … 2π in steps of 5°, both ends
 */
export function aroundCircle(
  waves: Float64Array,
  loaded: Float64Array,
  antenna: number,
  rho: number,
  final: HandFinal,
): Around {
  const n = ROUND + 1;
  const make = () => new Float64Array(n);
  const around: Around = {
    angle: make(),
    resistance: make(),
    reactance: make(),
    drive: make(),
    power: make(),
    loss: make(),
    held: make(),
    unheld: make(),
    heat: make(),
    gain: make(),
  };
  const { supply, fundamental, dcCurrent, quiescent, collectorLoad, sides } = final;
  const [ar = 0, ai = 0, br = 0, bi = 0, cr = 0, ci = 0, dr = 0, di = 0] = waves;
  const [er, ei, fr, fi] = [loaded[4] ?? 0, loaded[5] ?? 0, loaded[6] ?? 0, loaded[7] ?? 0];
  const kept = 1 - rho * rho;
  for (let k = 0; k < n; k += 1) {
    const angle = (k * 2 * Math.PI) / ROUND;
    const gr = rho * Math.cos(angle);
    const gi = rho * Math.sin(angle);
    const vr = ar + br * gr - bi * gi;
    const vi = ai + br * gi + bi * gr;
    const ir = cr + dr * gr - di * gi;
    const ii = ci + dr * gi + di * gr;
    const size = ir * ir + ii * ii;
    const flow = vr * ir + vi * ii;
    const resistance = (antenna * flow) / size;
    const impedance = antenna * Math.sqrt((vr * vr + vi * vi) / size);
    const drive = Math.min(1, collectorLoad / impedance);
    const current = drive * fundamental;
    const jr = er + fr * gr - fi * gi;
    const ji = ei + fr * gi + fi * gr;
    around.angle[k] = angle;
    around.resistance[k] = resistance;
    around.reactance[k] = (antenna * (vi * ir - vr * ii)) / size;
    around.drive[k] = drive;
    around.power[k] = (current * current * antenna * kept) / (2 * size);
    around.loss[k] = 10 * Math.log10(flow / kept);
    around.held[k] = supply + (current * impedance) / sides;
    around.unheld[k] = supply + (fundamental * impedance) / sides;
    const direct = quiescent + (dcCurrent - quiescent) * drive;
    around.heat[k] = supply * direct - (current * current * resistance) / 2;
    around.gain[k] = kept / (jr * jr + ji * ji);
  }
  return around;
}
