import { besideEachOther, shuntLoss } from '../../circuit/broadbandTransformer.ts';
import { ferritePermeability } from '../../circuit/ferritePermeability.ts';
import { bandAt } from '../../data/bands.ts';
import { formerTitled } from './former.ts';
import type { transformerRows } from './transformerRows.ts';

/** Each transformer at the edges of its band; none where the frequency lies in no band. */
export function edgeRows(rows: ReturnType<typeof transformerRows>, nominal: number) {
  const band = bandAt(nominal);
  if (!band) return [];
  return rows.flatMap(({ label, core, first, turns }) => {
    const former = formerTitled(core);
    if (!former) return [];
    return (['low', 'high'] as const).map((edge) => {
      const frequency = band[edge];
      const { stores, loses } = ferritePermeability(former.ferrite.curve, frequency);
      const reactance = 2 * Math.PI * frequency * former.al * turns ** 2;
      const { r, x } = besideEachOther(reactance, former.ferrite.permeability, stores, loses);
      return {
        label,
        edge: edge === 'low' ? 'lower edge' : 'upper edge',
        frequency,
        stores,
        loses,
        shuntR: r,
        shuntX: x,
        loss: shuntLoss(first, r, x),
      };
    });
  });
}
