import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { FittedParts } from './fitParts.ts';
import type { OwnedParts } from './ownedParts.ts';
import type { FilterSeen } from './seen.ts';

/** An owned capacitor further off than this is worth a word, by ratio. */
const FAR = 1.25;

/** A departure that is worth a word, dB rms. */
const MUCH = 0.5;

/** What was not understood of the list of owned capacitors, and what the filter lacks of them. */
export function stockProblems(
  { fitted }: FilterSeen,
  { parts, wrong }: OwnedParts,
  found: FittedParts | null,
  weights: number,
): Problem[] {
  const field = 'filter.owned';
  const say = (weight: Problem['weight'], says: string, help: string): Problem => ({
    field,
    weight,
    says,
    try: help,
  });
  const problems = wrong
    .slice(0, 3)
    .map((says) => say('warns', says, 'Each value with how many there are: 100p 5, 82p x3, 47p.'));
  if (fitted !== 'own' || !found) return problems;
  const places = [
    ...found.coupling.map((one, i) => ({ one, at: `junction ${i + 1}` })),
    ...found.series.flatMap((one, i) => (one ? [{ one, at: `mesh ${i + 1}` }] : [])),
  ];
  const owned = parts.reduce((sum, { count }) => sum + count, 0);
  if (found.missing > 0) {
    const bare = places.filter(({ one }) => one.chosen.parts.length === 0);
    const all = new Map<string, string[]>();
    for (const { one, at } of bare) {
      const value = format(one.exact, 'F', 3);
      all.set(value, [...(all.get(value) ?? []), at]);
    }
    const missing = [...all].map(
      ([value, at]) => `${at.length} of about ${value} (${at.join(', ')})`,
    );
    const short = say(
      'stops',
      `Not enough: ${places.length} capacitors are needed, ${owned} ${owned === 1 ? 'is' : 'are'} listed. Missing: ${missing.join(', ')}. The sheet shows exact values there.`,
      'Buy those, or list more.',
    );
    return [short, ...problems];
  }
  const far = places.filter(({ one }) => ratio(one.chosen.value, one.exact) > FAR);
  if (far.length > 0 && Math.sqrt(found.sums.chosen / weights) > MUCH) {
    problems.push(
      say(
        'warns',
        `Nothing near is left: ${far
          .slice(0, 4)
          .map(
            ({ one, at }) =>
              `${format(one.chosen.value, 'F', 3)} has to do for ${format(one.exact, 'F', 3)} at ${at}`,
          )
          .join(', ')}.`,
        'A few of these values would help most.',
      ),
    );
  }
  return problems;
}

const ratio = (a: number, b: number) => Math.max(a / b, b / a);
