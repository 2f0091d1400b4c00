import { BOTH_ON_GROUND } from '../../stages/path/byGround.ts';
import { itemsOf, type SumRow, sumRows } from '../../stages/path/sumRows.ts';
import { type DayAnswer, ways } from './dayAnswer.ts';

/**
 * The sum of one cell, line by line, as Path would have it; empty where nothing arrives.
 *
 * @param at index of the cell: hour by hour, distances rising
 */
export function cellSum({ ends, terms, received, way }: DayAnswer, at: number): SumRow[] {
  if (!Number.isFinite(received[at] ?? Number.NaN)) return [];
  const route = ways[way[at] ?? 0] === 'ground' ? 'groundWave' : 'skyWave';
  const less = (loss: number | undefined) => 0 - (loss ?? 0);
  const adds = {
    power: ends.power,
    lineHere: less(ends.lineHere),
    antennaHere: terms.here[at] ?? null,
    spreading: less(terms.spreading[at]),
    absorption: less(terms.absorption[at]),
    touching: less(terms.touching[at]),
    doubling: -BOTH_ON_GROUND,
    surface: less(terms.surface[at]),
    antennaThere: terms.there[at] ?? null,
    lineThere: less(ends.lineThere),
  };
  return sumRows(itemsOf(route), adds, 'noise', ends.noise);
}
