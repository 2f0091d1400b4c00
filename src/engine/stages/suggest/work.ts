import type { Problem, Work } from '../../fields/stage.ts';
import { familyAllowed } from './allowed.ts';
import { candidates, type Family } from './candidates.ts';
import type { suggestFields } from './fields.ts';
import type { SuggestSeen } from './seen.ts';

/** Kinds of network in words, in the order of the table. */
export const families: Readonly<Record<Family, string>> = {
  none: 'No filter behind the match',
  halfWave: 'Half-wave sections',
  prototypes: 'Butterworth and Chebyshev',
  traps: 'With traps',
  elliptic: 'Elliptic',
};

/** What is to be looked through; the networks themselves are worked on an errand. */
export function workSuggest(seen: SuggestSeen): Work<typeof suggestFields> {
  const all = candidates(seen.collectorLoad, seen.antenna);
  const kinds = (Object.keys(families) as Family[]).flatMap((family) => {
    const number = all.filter((one) => one.family === family).length;
    const allowed = familyAllowed(family, seen) ? ('yes' as const) : ('no' as const);
    return number === 0 ? [] : [{ kind: families[family], allowed, number }];
  });
  return {
    results: { looked: all.length, kinds },
    problems: problems(seen),
  };
}

function problems(seen: SuggestSeen): Problem[] {
  const none = (['halfWave', 'prototypes', 'traps', 'elliptic'] as const).every(
    (family) => seen[family] === 'no',
  );
  if (!none) return [];
  return [
    {
      field: 'suggest.prototypes',
      weight: 'warns',
      says: 'Every kind of filter is left out.',
      try: 'Allow at least one: a match alone keeps hardly any rule.',
    },
  ];
}
