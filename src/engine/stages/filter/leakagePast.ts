import type { Ladder } from '../../circuit/ladder.ts';

/**
 * The capacitance past a filter whose crystals are taken out, from the attenuation between its
 * ends, F; null where the ends alone attenuate more.
 *
 * A capacitance C between source and load passes 4·Rs·Rl/|Zs + Zl + 1/(jωC)|² of the source's
 * power, which is solved for C.
 *
 * @param attenuation dB, above 0
 * @param f Hz
 */
export function leakagePast(
  source: Ladder['source'],
  load: Ladder['load'],
  attenuation: number,
  f: number,
): number | null {
  const r = source[0] + load[0];
  const square = 4 * source[0] * load[0] * 10 ** (attenuation / 10) - r * r;
  const x = source[1] + load[1] + Math.sqrt(square);
  return square >= 0 && x > 0 ? 1 / (2 * Math.PI * f * x) : null;
}

/** Attenuation of a capacitance alone between the ends, dB. The inverse of `leakagePast`. */
export function attenuationPast(
  source: Ladder['source'],
  load: Ladder['load'],
  c: number,
  f: number,
): number {
  const r = source[0] + load[0];
  const x = source[1] + load[1] - 1 / (2 * Math.PI * f * c);
  return 10 * Math.log10((r * r + x * x) / (4 * source[0] * load[0]));
}
