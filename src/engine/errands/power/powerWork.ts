import { biasFor } from '../../circuit/power/biasFor.ts';
import { balanceBench } from '../../circuit/power/harmonicBalance.ts';
import { powerBudget } from '../../circuit/power/powerBudget.ts';
import { powerFigures, powerWaves } from '../../circuit/power/powerFigures.ts';
import { format } from '../../quantity/format.ts';
import { assumed } from './assumed.ts';
import { driveFor } from './driveFor.ts';
import { harmonicsFound } from './harmonicsFound.ts';
import { overDrive } from './overDrive.ts';
import { overSupply } from './overSupply.ts';
import type { Assumption, PowerAnswer } from './powerAnswer.ts';
import { mostDrive, powerCircuitOf } from './powerCircuitOf.ts';
import type { PowerSeen } from './seen.ts';

/** Where in the whole work each part begins. */
const BEGINS = { drive: 0, levels: 0.4, supply: 0.8 } as const;

const how =
  'The transistor’s currents and charges (Gummel–Poon) with the driver’s resistance at its base and the output network at its collector, at twenty harmonics at once, so that Kirchhoff’s law holds for each. Two tones: from size and phase of the output over the drive, slow against supply and bias.';

/** The final's steady state at full power, over its drive and over the supply. */
export function* powerWork(seen: PowerSeen): Generator<number, PowerAnswer, void> {
  const bench = balanceBench();
  const blank = powerCircuitOf(seen, bench.fine.harmonics);
  const assumptions = assumptionsOf(seen);
  const nothing = (says: string): PowerAnswer => ({
    reached: 'none',
    says,
    how,
    assumptions,
    found: null,
  });
  if (!blank) return nothing('There is no output network that could be reckoned with.');
  const bias = biasFor(bench, blank, seen.quiescent);
  if (bias === null) return nothing('No bias lets the standing current wanted flow.');
  const circuit = { ...blank, bias: { ...blank.bias, voltage: bias } };
  const most = mostDrive(seen);
  const x = new Float64Array(2 * bench.fine.width);
  const driven = yield* between(
    driveFor(bench, circuit, seen.pep, most, x),
    BEGINS.drive,
    BEGINS.levels,
  );
  if (!driven || powerBudget(circuit, driven.state).fundamental <= 0) {
    return nothing('No steady state was found: with drive, bias or load so far off, the sum ends.');
  }
  const { state, full } = driven;
  const budget = powerBudget(circuit, state);
  const waves = powerWaves(bench.fine, state);
  const figures = powerFigures(circuit, state, budget, waves);
  const harmonics = harmonicsFound(seen, figures);
  const levels = yield* between(overDrive(bench, circuit, state), BEGINS.levels, BEGINS.supply);
  const supplies = yield* between(overSupply(bench, circuit, state.drive, x), BEGINS.supply, 1);
  return {
    reached: full ? 'full' : 'short',
    says: full
      ? `Full power takes ${format(figures.driven, 'W', 2)} into the base.`
      : `The driver brings ${format(figures.power, 'W', 2)} to the antenna and no more.`,
    how,
    assumptions,
    found: {
      residual: state.residual,
      bias,
      figures,
      budget,
      waves,
      harmonics,
      worstMargin: Math.min(...harmonics.map(({ margin }) => margin)),
      overDrive: levels?.curve ?? null,
      twoTones: levels?.tones ?? null,
      overSupply: supplies,
    },
  };
}

const assumptionsOf = (seen: PowerSeen): readonly Assumption[] => [
  { what: 'Emitter resistor', value: assumed.ballast, unit: 'Ω' },
  { what: 'Inductance from emitter to ground', value: assumed.lead, unit: 'H' },
  { what: 'Resistor from base to ground', value: assumed.shunt, unit: 'Ω' },
  { what: 'Resistance of the bias source', value: assumed.bias, unit: 'Ω' },
  { what: 'Resistance of the collector’s winding', value: assumed.feed, unit: 'Ω' },
  { what: 'Driver’s source resistance, at every harmonic', value: seen.driverOutput, unit: 'Ω' },
  { what: 'Junction', value: seen.junction, unit: 'K' },
];

/** Part of the work, its progress between two shares of the whole. */
function* between<A>(
  part: Generator<number, A, void>,
  from: number,
  to: number,
): Generator<number, A, void> {
  for (;;) {
    const step = part.next();
    if (step.done) return step.value;
    yield from + (to - from) * step.value;
  }
}
