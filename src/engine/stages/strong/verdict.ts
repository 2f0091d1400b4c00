import type { Outcome } from '../../fields/kinds.ts';
import type { Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { strongFields } from './fields.ts';

type Results = Work<typeof strongFields>['results'];

/** From here on there is enough in hand, dB. Common practice, no source. */
export const ENOUGH = 10;

/** How a margin is judged, dB. */
export const outcomeOf = (margin: number): Outcome =>
  margin >= ENOUGH ? 'holds' : margin >= 0 ? 'close' : 'fails';

/** What is in hand against each trouble, dB, and what it is called. */
function troubles({ productOver, blockMargin, ways }: Results) {
  const names = {
    rectified: 'the broadcaster, rectified in the detector',
    image: 'a station on the image',
    intermediate: 'a station on the intermediate frequency',
  } as const;
  return [
    { inHand: -(productOver ?? 0), of: 'the product of two stations beside the channel' },
    { inHand: blockMargin ?? 0, of: 'blocking by the broadcaster' },
    ...(ways ?? []).map(({ way, over }) => ({
      inHand: -(over ?? 0),
      of: names[way as keyof typeof names],
    })),
  ];
}

/** The worst of all, and which it is. */
export function verdictOf(results: Results): { verdict: Outcome; worst: string } {
  const worst = troubles(results).reduce((a, b) => (b.inHand < a.inHand ? b : a));
  const { inHand, of } = worst;
  const words =
    inHand < 0 ? `${format(-inHand, 'dB', 2)} too strong` : `${format(inHand, 'dB', 2)} in hand`;
  return { verdict: outcomeOf(inHand), worst: `${of[0]?.toUpperCase()}${of.slice(1)}: ${words}.` };
}
