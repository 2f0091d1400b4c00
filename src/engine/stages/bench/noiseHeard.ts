import { noiseRise } from '../../circuit/noiseRise.ts';
import { type NoiseClassKey, noiseClasses } from '../../data/noiseClasses.ts';
import { dbOfPowerRatio, powerRatioOfDb } from '../../quantity/decibel.ts';
import { format } from '../../quantity/format.ts';

/** Deciles of man-made noise where the class has none, dB. Source: common practice, no source. */
const USUAL_SPREAD = { upper: 10, lower: 6 } as const;

/** From here up the rise tells of the place alone, dB. Source: common practice, no source. */
const DEAF = 4;

/** How far the noise of a kind of place strays from its median, dB up and down. */
export const spreadOf = (place: NoiseClassKey) => ({
  upper: noiseClasses[place].upper ?? USUAL_SPREAD.upper,
  lower: noiseClasses[place].lower ?? USUAL_SPREAD.lower,
});

/**
 * The noise figure at which the noise would rise by so much, the place being as noisy as its
 * median: F = (fa − 1)/(r − 1).
 *
 * @param rise dB
 * @param external noise figure of the place, dB
 * @return dB; null where no noise figure does it
 */
export function noiseFigureOf(rise: number, external: number): number | null {
  const factor = (powerRatioOfDb(external) - 1) / (powerRatioOfDb(rise) - 1);
  return rise > 0 && factor >= 1 ? dbOfPowerRatio(factor) : null;
}

/**
 * Rises to expect for eight hours in ten, dB: the noise of the place at its deciles.
 *
 * @param external noise figure at the receiver, dB
 * @param noiseFigure of the receiver, dB
 */
export function usualRises(external: number, noiseFigure: number, place: NoiseClassKey) {
  const { upper, lower } = spreadOf(place);
  return {
    from: noiseRise(external - lower, noiseFigure),
    to: noiseRise(external + upper, noiseFigure),
  };
}

/**
 * What the rise that was heard says.
 *
 * @param read dB
 * @param expected dB
 * @param usual rises to expect, dB
 */
export function riseMeans(
  read: number,
  expected: number,
  usual: ReturnType<typeof usualRises>,
): string {
  const deaf =
    read < DEAF
      ? ' At so little the receiver does not hear the band: look for the loss before its first amplifier.'
      : '';
  const off = format(Math.abs(read - expected), 'dB', 2);
  if (read > usual.to) {
    return `${off} more than the place should bring: a noisy neighbour, or supplies and lamps of your own. Run from a battery and switch things off one by one.`;
  }
  if (read < usual.from) {
    return `${off} less than the place should bring: a quiet spot, a poor antenna or line, or loss in the receiver. Take the supply off the first amplifier: if the noise from the dummy load falls by 10 dB and more, what follows it is sound, and the loss lies before it.${deaf}`;
  }
  return `As it should be: between ${format(usual.from, 'dB', 2)} and ${format(usual.to, 'dB', 2)} for eight hours in ten at a middling place of this kind; places differ by some decibels more.${deaf}`;
}
