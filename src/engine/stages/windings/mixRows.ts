import { formerOf } from './former.ts';
import type { WindingsSeen } from './seen.ts';
import { transformerRow } from './transformerRows.ts';
import { transformersWanted } from './transformersWanted.ts';

/** The output transformer, or the first there is, on the same size of core in each mix. */
export function mixRows(seen: WindingsSeen) {
  const [wanted] = transformersWanted(seen);
  if (!wanted) return [];
  const size = (wanted.power ?? 0) > 5 ? 'FT82' : (wanted.power ?? 0) > 1 ? 'FT50' : 'FT37';
  return ['61', '43', '77'].flatMap((mix) => {
    const former = formerOf(`${size}-${mix}`);
    if (!former) return [];
    const row = transformerRow(wanted, former, seen);
    const { label, core, first, second, power, al, stores, loses, turnsExact, turnsFlux } = row;
    const { turns, secondTurns, inductance, shuntR, shuntX, loss, taken, rise } = row;
    return [
      {
        label,
        core,
        first,
        second,
        power,
        al,
        stores,
        loses,
        turnsExact,
        turnsFlux,
        turns,
        secondTurns,
        inductance,
        shuntR,
        shuntX,
        loss,
        taken,
        rise,
      },
    ];
  });
}
