import type { Problem, Work } from '../../fields/stage.ts';
import { arrangementOf } from './arrangement.ts';
import { ballastAdvice, ballastProblems } from './ballastAdvice.ts';
import { cardOf } from './cardOf.ts';
import { cardProblems } from './cardProblems.ts';
import { cardRows, cardSource } from './cardRows.ts';
import type { powerFields } from './fields.ts';
import { handSupply } from './handSupply.ts';
import { BOLTZMANN, CHARGE, runaway, steadyOf } from './runaway.ts';
import type { PowerStageSeen } from './seen.ts';

type Results = Work<typeof powerFields>['results'];

/** What stands round the final, and whether it stays calm as it warms. */
export function workPower(seen: PowerStageSeen): Work<typeof powerFields> {
  const arrangement = arrangementOf(seen.finalForm, seen.finalDevices, seen.evenBalance);
  const { sides, gang } = arrangement;
  const devices = sides * gang;
  const chosen = cardOf(seen.finalDevice, seen.transition, seen.card);
  const steadiness = steadinessOf(seen, sides, devices, chosen.card.bf);
  const problems: Problem[] = [...cardProblems(chosen.read), ...ballastProblems(seen, steadiness)];
  return {
    results: {
      devices,
      arrangement,
      ...steadiness,
      ballastStanding: seen.ballast * steadiness.standingEach,
      ballastCrest: (seen.ballast * seen.peakCurrent) / gang,
      ballastAdvice: ballastAdvice(seen, steadiness),
      feedUsed:
        seen.feed ??
        (seen.reactanceTimes * seen.collectorLoad) / (sides * 2 * Math.PI * seen.nominal),
      driverUsed:
        seen.driverLead ??
        (seen.driverLeakage * seen.driverWinding * seen.finalInput) / seen.driverLoad,
      overSupply: handSupply(seen),
      cardSource: cardSource(seen.finalDevice, chosen.read),
      cardRows: cardRows(chosen),
      modelCard: chosen.card,
    } satisfies Results,
    problems,
    origins: {
      ...(seen.feed === null ? {} : { feedUsed: 'typed' }),
      ...(seen.driverLead === null ? {} : { driverUsed: 'typed' }),
    },
  };
}

/** Ways of the heat, and what the standing current does on them. */
function steadinessOf(seen: PowerStageSeen, sides: number, devices: number, gain: number) {
  const standingEach = seen.quiescent / devices;
  const bare = seen.cooling === 'free' || seen.toCase === null;
  const toSink = (seen.toCase ?? 0) + seen.contact;
  const heatPath = bare ? seen.toAmbient : toSink + devices * seen.sink;
  const drift = seen.tracking === 'sink' && !bare ? toSink : heatPath;
  const source = 1 / (1 / seen.biasSource + sides / seen.shunt);
  const { loop, from, needed } = runaway({
    supply: seen.supply,
    drift,
    ballast: seen.ballast,
    bias: (devices * source) / (gain + 1),
    standing: standingEach,
    thermalVoltage: (BOLTZMANN * seen.ambient) / CHARGE,
  });
  return {
    standingEach,
    heatPath,
    drift,
    thermalLoop: loop,
    runawayCurrent: from,
    ballastNeeded: needed,
    steady: steadyOf(loop),
  };
}

export type Steadiness = ReturnType<typeof steadinessOf>;
