import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { Network } from './network.ts';
import type { OutputSeen } from './seen.ts';

/** Why there is no such network, and what would do. */
export function refusals(
  seen: OutputSeen,
  { refusal, least }: Extract<Network, { refusal: string }>,
): Problem[] {
  const stops = (field: string, says: string, advice: string): Problem[] => [
    { field: `output.${field}`, weight: 'stops', says, try: advice },
  ];
  switch (refusal) {
    case 'piQ':
      return stops(
        'loadedQ',
        `A pi match from ${ohms(seen.collectorLoad)} to ${ohms(seen.antenna)} needs a loaded Q of at least ${least.toFixed(2)}; ${seen.loadedQ} is too low.`,
        `Ask for ${(Math.ceil(least * 10 + 1) / 10).toFixed(1)} or more, or use a transformer.`,
      );
    case 'evenChebyshev':
      return stops(
        'order',
        `A Chebyshev filter of ${seen.order} elements has unequal ends: straight on it would not fit ${ohms(seen.antenna)} on both sides.`,
        `Take ${least} elements, or let a transformer or a pi match make up for it.`,
      );
    case 'ellipticOrder':
      return stops(
        'order',
        `An elliptic filter of ${seen.order} elements is not worked out here: only 3, 5 or 7, with equal ends.`,
        `Take ${least} elements.`,
      );
    case 'notchTooNear':
      return stops(
        'cutoffRatio',
        `With the cutoff at ${seen.cutoffRatio} times the operating frequency the second harmonic lies in the passband: no notch can be put on it.`,
        `A cutoff of ${least} or less, or set the stop band by its edge.`,
      );
    case 'tooSteep':
      return stops(
        seen.stopBy === 'edge'
          ? 'stopRatio'
          : seen.stopBy === 'notch'
            ? 'cutoffRatio'
            : 'stopWanted',
        `The stop band would begin at ${format(least, '1', 4)} times the cutoff: with ${seen.order} elements and so little ripple no ladder of real parts does that.`,
        'A stop-band edge further out, more ripple, or another number of elements.',
      );
    default:
      return stops(
        'traps',
        `Two traps need a filter of ${least} coils; this one has a single coil.`,
        'One trap, or a filter of five elements or more.',
      );
  }
}

const ohms = (value: number) => format(value, 'Ω', 3);
