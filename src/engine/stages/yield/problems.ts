import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { YieldSeen } from './seen.ts';

/** What the mask asks in vain: no part however good can help there. */
export function problems(seen: YieldSeen): Problem[] {
  const { widthLeast, widthMost } = seen;
  if (widthLeast !== null && widthMost !== null && widthLeast > widthMost) {
    return [
      {
        field: 'yield.widthMost',
        weight: 'warns',
        says: `No filter is at least ${hertz(widthLeast)} and at most ${hertz(widthMost)} wide.`,
        try: 'The lesser figure goes first.',
      },
    ];
  }
  const already = 'With perfect parts it would be no better: change the design, or the mask.';
  const against = (
    key: string,
    limit: number | null,
    found: number | null,
    side: 'least' | 'most',
    says: (found: number) => string,
  ): Problem[] =>
    limit === null || found === null || (side === 'least' ? found >= limit : found <= limit)
      ? []
      : [{ field: `yield.${key}`, weight: 'warns', says: says(found), try: already }];
  const wide = (found: number) => `As designed, the filter is ${hertz(found)} wide.`;
  const down = (found: number) => format(found, 'dB', 3);
  return [
    ...against('widthLeast', widthLeast, seen.width, 'least', wide),
    ...against('widthMost', widthMost, seen.width, 'most', wide),
    ...against(
      'rippleMost',
      seen.rippleMost,
      seen.ripple,
      'most',
      (found) => `As designed, the ripple is ${format(found, 'dB', 4)}.`,
    ),
    ...against(
      'lossMost',
      seen.lossMost,
      seen.loss,
      'most',
      (found) => `As designed, the filter loses ${down(found)}.`,
    ),
    ...against(
      'carrierLeast',
      seen.carrierLeast,
      seen.carrier,
      'least',
      (found) => `As designed, the carrier is ${down(found)} down.`,
    ),
    ...against(
      'oppositeLeast',
      seen.oppositeLeast,
      seen.opposite,
      'least',
      (found) => `As designed, the other sideband is ${down(found)} down at the worst tone.`,
    ),
  ];
}

const hertz = (f: number) => format(f, 'Hz', 4);
