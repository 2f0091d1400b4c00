import { besideEachOther, shuntLoss } from '../../circuit/broadbandTransformer.ts';
import { ferritePermeability } from '../../circuit/ferritePermeability.ts';
import { formerTitled } from './former.ts';
import type { mixRows } from './mixRows.ts';

/** Frequencies of the curve, Hz: 1 to 30 MHz. */
const frequency = Float64Array.from({ length: 59 }, (_, i) => 1e6 + i * 0.5e6);

/** Mixes of the table of mixes, in its order. */
export const MIXES = ['61', '43', '77'] as const;

/** Loss of one transformer in each mix over frequency; null where there is none. */
export function lossCurve(rows: ReturnType<typeof mixRows>) {
  if (rows.length < MIXES.length) return null;
  const [in61, in43, in77] = rows.map(({ core, first, turns }) => losses(core, first, turns));
  return in61 && in43 && in77 ? { frequency, in61, in43, in77 } : null;
}

function losses(core: string, first: number, turns: number): Float64Array {
  const former = formerTitled(core);
  if (!former) return frequency.map(() => 0);
  const { permeability } = former.ferrite;
  const parts = partsOf(core);
  return frequency.map((f, i) => {
    const reactance = 2 * Math.PI * f * former.al * turns ** 2;
    const { stores, loses } = parts[i] ?? { stores: 1, loses: 1 };
    const { r, x } = besideEachOther(reactance, permeability, stores, loses);
    return shuntLoss(first, r, x);
  });
}

/** Permeabilities at the frequencies of the curve, worked once for each core. */
const known = new Map<string, readonly { stores: number; loses: number }[]>();

function partsOf(core: string) {
  const before = known.get(core);
  if (before) return before;
  const curve = formerTitled(core)?.ferrite.curve ?? [];
  const parts = Array.from(frequency, (f) => ferritePermeability(curve, f));
  known.set(core, parts);
  return parts;
}
