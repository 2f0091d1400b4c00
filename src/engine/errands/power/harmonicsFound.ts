import type { PowerFigures } from '../../circuit/power/powerFigures.ts';
import { ruleSets } from '../../data/ruleSets.ts';
import { outcomeOf } from '../../stages/output/harmonicRows.ts';
import type { ExactHarmonic } from './powerAnswer.ts';
import type { PowerSeen } from './seen.ts';

/** Highest harmonic that is told. */
const HIGHEST = 10;

/** Second to tenth harmonic of a steady state against the rules. */
export function harmonicsFound(seen: PowerSeen, figures: PowerFigures): ExactHarmonic[] {
  return figures.harmonics.slice(0, HIGHEST - 1).map((level, i) => {
    const order = i + 2;
    const frequency = order * seen.nominal;
    const limit = -ruleSets[seen.rules].limit({
      frequency,
      fundamental: seen.nominal,
      power: figures.power,
      own: seen.ownLimit,
      ownLines: seen.ownRows,
    });
    const margin = limit - level;
    return {
      order,
      frequency,
      collectorVoltage: figures.collectorVoltageHarmonics[i] ?? 0,
      collectorCurrent: figures.collectorCurrentHarmonics[i] ?? 0,
      level,
      limit,
      margin,
      outcome: outcomeOf(margin, seen.marginWanted),
    };
  });
}
