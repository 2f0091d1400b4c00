import type { Problem, Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { strongFields } from './fields.ts';
import type { StrongSeen } from './seen.ts';

type Results = Work<typeof strongFields>['results'];

/** Nearer than this it lies in the channel, Hz. Common practice, no source. */
const CHANNEL = 5e3;

/** What is too much for the receiver, and what would help. */
export function advice(seen: StrongSeen, results: Results): Problem[] {
  const out: Problem[] = [];
  const warn = (field: string, says: string, help: string) =>
    out.push({ field: `strong.${field}`, weight: 'warns', says, try: help });
  if (Math.abs((results.broadcaster ?? 0) - seen.nominal) < CHANNEL) {
    warn(
      'frequency',
      'A station in the channel itself cannot be kept out: the filter lets it through.',
      'A frequency some kilohertz away.',
    );
  }
  const { productOver, productSpared, blockMargin, ways } = results;
  if (productOver !== null && productOver > 0) {
    const spared = seen.attenuator !== null && (productSpared ?? 0) <= 0;
    warn(
      'pair',
      `Two such stations make a third that stands ${format(productOver, 'dB', 2)} over the noise.`,
      spared
        ? `An attenuator of ${format(seen.attenuator ?? 0, 'dB', 2)} takes it away, and no weak station with it.`
        : 'Less gain before the crystal filter, more current in the amplifiers, or an attenuator on loud evenings.',
    );
  }
  if (blockMargin !== null && blockMargin < 0) {
    warn(
      'level',
      `The broadcaster takes more than a decibel off weak stations: ${format(-blockMargin, 'dB', 2)} too strong.`,
      'A tuned circuit or trap at the antenna, an attenuator, or more current in the first amplifier.',
    );
  }
  for (const { way, over } of ways ?? []) {
    if (over === null || over <= 0) continue;
    const heard = `${format(over, 'dB', 2)} over the noise`;
    if (way === 'rectified') {
      warn(
        'balance',
        `The broadcaster is heard through the detector, ${heard}, wherever you listen.`,
        'Matched diodes and a trimmer for the null on receive, the filter in a tin, or a tuned circuit at the antenna.',
      );
    } else if (way === 'image') {
      warn(
        'level',
        `A station that strong on the image is heard ${heard}.`,
        'Three circuits in the band-pass, or an intermediate frequency further away.',
      );
    } else {
      warn(
        'level',
        `A station that strong on the intermediate frequency is heard ${heard}.`,
        'A trap for it at the antenna, or a mixer that is balanced for the signal, too.',
      );
    }
  }
  return out;
}
