import type { Work } from '../../fields/stage.ts';
import { budget, stateRows, total } from './budget.ts';
import { supplyCautions } from './cautions.ts';
import type { supplyFields } from './fields.ts';
import { lasting } from './lasting.ts';
import type { SupplySeen } from './seen.ts';
import { wiring } from './wiring.ts';

/** Currents by stage and state, the battery's hours, fuse and leads. */
export function workSupply(seen: SupplySeen): Work<typeof supplyFields> {
  const rows = budget(seen);
  const receiving = total(rows, 'receiving');
  const listening = total(rows, 'listening');
  const speech = total(rows, 'speech');
  const tone = total(rows, 'tone');
  const mean = (1 - seen.talking) * listening + seen.talking * speech;
  const results = {
    budget: rows,
    states: stateRows(rows, seen.supplyVoltage),
    receiving,
    listening,
    silent: total(rows, 'silent'),
    speech,
    tone,
    power: tone * seen.supplyVoltage,
    mean,
    ...lasting(seen, mean),
    ...wiring(seen, tone),
    limit: 2 * receiving,
  };
  return {
    results,
    problems: supplyCautions(seen, results),
    origins: { strung: seen.cells === null ? 'worked' : 'typed' },
  };
}
