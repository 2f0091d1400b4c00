import { type NoiseClassKey, noiseClasses } from '../../data/noiseClasses.ts';
import { format } from '../../quantity/format.ts';
import { pathFields } from './fields.ts';
import type { SpeechGrade } from './speechGrade.ts';

const said = pathFields.results.speech.options;

/**
 * Whether speech gets through, in a sentence.
 *
 * @param low grade at the low end of the spread
 * @param likely grade at the estimate
 * @param high grade at the high end
 */
export function verdict(low: SpeechGrade, likely: SpeechGrade, high: SpeechGrade): string {
  if (low === likely && high === likely) return `${sentence(likely)}, good day or poor.`;
  const others = [
    ...(low === likely ? [] : [`on a poor day ${said[low]}`]),
    ...(high === likely ? [] : [`on a good one ${said[high]}`]),
  ];
  return `${sentence(likely)}; ${others.join(', ')}.`.replace('; on a good one', '; on a good day');
}

const sentence = (grade: SpeechGrade) =>
  grade === 'none' ? 'Speech is too weak' : `Speech gets through, ${said[grade]}`;

/** Within this much both hear one another alike, dB: half an S-unit. */
const ALIKE = 3;

/**
 * How well each hears the other, in a sentence.
 *
 * @param balance signal over noise there less that here, dB
 */
export function balanceWords(balance: number): string {
  if (Math.abs(balance) < ALIKE) return 'Both hear one another about alike.';
  const by = format(Math.abs(balance), 'dB', 2);
  return balance > 0
    ? `They hear this station ${by} better than it hears them.`
    : `They are heard here ${by} better than they hear this station: a call that goes unanswered is no fault of the receiver.`;
}

/**
 * Why the estimate spreads, in words.
 *
 * @param route way the signal goes
 * @param place noise class at the other end, or null where it is not known
 * @param spread dB
 */
export function cause(route: string, place: NoiseClassKey | null, spread: number): string {
  const band = format(spread, 'dB', 3);
  const noise = noiseOf(place);
  if (route === 'skyWave') {
    return `±${band} or more: the layer’s critical frequency and absorption change from day to day, the signal fades within seconds, antennas differ with height and ground, and ${noise}.`;
  }
  if (route === 'groundWave') {
    return `±${band} or more: the ground changes along the way and with rain, hills and houses stand in it, antennas near the ground differ, and ${noise}.`;
  }
  if (route === 'twoRay') {
    return `±${band} or more: real ground is neither flat nor even, so the depth of every null is a guess, obstacles and the surface wave are left out, and ${noise}.`;
  }
  return `±${band} or more: the ground and every obstacle are left out, and ${noise}.`;
}

function noiseOf(place: NoiseClassKey | null): string {
  const row = place === null ? null : noiseClasses[place];
  if (!row || row.upper === null || row.lower === null) return 'man-made noise differs by place';
  return `eight hours in ten the noise of such a place lies within ${row.upper} dB above and ${row.lower} dB below its median (ITU-R P.372 deciles)`;
}
