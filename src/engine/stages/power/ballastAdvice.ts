import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { PowerStageSeen } from './seen.ts';
import type { Steadiness } from './work.ts';

/** Whether the standing current stays where it was set, in words. */
export function ballastAdvice(seen: PowerStageSeen, found: Steadiness): string {
  const { runawayCurrent, steady, standingEach, ballastNeeded } = found;
  const resistor =
    seen.ballast > 0
      ? `the emitter resistor of ${format(seen.ballast, 'Ω', 2)}`
      : 'a bare emitter lead';
  if (runawayCurrent === null) {
    return `No: ${resistor} holds the standing current however warm the junction gets.`;
  }
  const from = `${format(runawayCurrent, 'A', 2)} in each`;
  if (steady === 'fails') {
    return `Yes: with ${resistor} it runs away by itself at ${from}, and ${format(standingEach, 'A', 2)} is beyond that.`;
  }
  const enough = `${format(ballastNeeded, 'Ω', 2)} would hold it at any current`;
  return steady === 'close'
    ? `Perhaps: with ${resistor} it runs away from ${from}, not far from where it stands; ${enough}.`
    : `Hardly: with ${resistor} it would take ${from} before it does; ${enough}.`;
}

export function ballastProblems(
  seen: PowerStageSeen,
  { steady, thermalLoop, ballastNeeded, runawayCurrent }: Steadiness,
): Problem[] {
  if (steady !== 'fails' || runawayCurrent === null) return [];
  const lessCurrent = `set less than ${format(runawayCurrent / 2, 'A', 2)} in each transistor`;
  return [
    {
      field: 'power.ballast',
      weight: 'warns',
      says: `As it warms, the final’s standing current runs away: each kelvin brings ${format(thermalLoop, '1', 2)} more.`,
      try:
        seen.tracking === 'air'
          ? `Bolt the bias diode to the heat sink, take an emitter resistor towards ${format(ballastNeeded, 'Ω', 2)}, or ${lessCurrent}.`
          : `Take an emitter resistor towards ${format(ballastNeeded, 'Ω', 2)}, or ${lessCurrent}.`,
    },
  ];
}
