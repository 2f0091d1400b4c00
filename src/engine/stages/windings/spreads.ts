import { bunchedRise } from '../../circuit/winding/bunchedRise.ts';
import { SPREAD } from '../../circuit/winding/toroidCoil.ts';
import { quantity, table, words } from '../../fields/declare.ts';
import type { ShelfCore } from '../cores/fields.ts';

/** One coil with its turns spread, half together, and pushed together. */
export const spreads = table({
  label: 'The same turns, spread and squeezed',
  help: 'For the first coil: what moving its turns does. A planning figure, within a half of the rise.',
  columns: {
    label: words({ label: 'Turns', help: 'How they stand.' }),
    share: quantity({
      label: 'Over',
      symbol: 'c_s',
      unit: '%',
      digits: 2,
      help: 'Share of the circumference.',
    }),
    l: quantity({
      label: 'Inductance',
      symbol: 'L_s',
      unit: 'H',
      digits: 3,
      help: 'On a core of nominal factor.',
    }),
    rise: quantity({
      label: 'Against spread out',
      symbol: 'e_s',
      unit: '%',
      digits: 2,
      help: 'What squeezing adds.',
    }),
  },
});

/** The first coil in three ways; two where its turns nearly fill the core. */
export function spreadRows(
  coil: { readonly lAt: number; readonly coverage: number } | undefined,
  core: ShelfCore | undefined,
) {
  if (!coil || !core || coil.coverage >= SPREAD) return [];
  const ring = { permeability: core.mix.permeability, size: core.size };
  const middle = (SPREAD + coil.coverage) / 2;
  const ways = [
    ['spread out', SPREAD],
    ['half-way', middle],
    ['pushed together', coil.coverage],
  ] as const;
  return ways.map(([label, share]) => {
    const rise = bunchedRise(share, ring) / bunchedRise(SPREAD, ring);
    return { label, share, l: coil.lAt * rise, rise: rise - 1 };
  });
}
