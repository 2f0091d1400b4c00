import type { OverDrive } from './powerAnswer.ts';

/**
 * Mean heat of speech without a pause, all transistors together: the heat over the drive, each
 * level as often as a Rayleigh-distributed envelope has it, cut off at full drive.
 *
 * @param mean mean power of speech over its peak, fraction
 * @param standing heat without drive, W
 * @return W. Source: closed form, 1 − exp(−x²/d) of the time the envelope is below x.
 */
export function speechHeat(curve: OverDrive, mean: number, standing: number): number {
  const below = (x: number) => 1 - Math.exp((-x * x) / mean);
  let x = 0;
  let heat = standing;
  let sum = 0;
  curve.drive.forEach((db, i) => {
    const next = 10 ** (db / 20);
    const there = curve.dissipation[i] ?? 0;
    sum += ((heat + there) / 2) * (below(next) - below(x));
    x = next;
    heat = there;
  });
  return sum + heat * (1 - below(x));
}
