import { collectorNetwork } from '../../circuit/power/collectorNetwork.ts';
import { balanceBench } from '../../circuit/power/harmonicBalance.ts';
import { powerFigures, powerWaves } from '../../circuit/power/powerFigures.ts';
import { format } from '../../quantity/format.ts';
import { assumptionsOf } from './assumptionsOf.ts';
import { between } from './between.ts';
import { harmonicsFound } from './harmonicsFound.ts';
import { overSupply } from './overSupply.ts';
import type { OverDrive, PowerAnswer } from './powerAnswer.ts';
import { sagging } from './sagging.ts';
import type { PowerSeen } from './seen.ts';
import { warmedUp } from './warmedUp.ts';

/** Where in the whole work each part begins. */
const BEGINS = { warm: 0, supply: 0.6 } as const;

const how =
  'The transistor’s currents and charges (Gummel–Poon) with the driver at its base and the output network at its collector, at twenty harmonics at once, so that Kirchhoff’s law holds for each; its junction as warm as its own heat makes it. Two tones: from size and phase of the output over the drive, slow against supply and bias.';

const refusals = {
  bias: 'No bias lets the standing current wanted flow.',
  state: 'No steady state was found: with drive, bias or load so far off, the sum ends.',
} as const;

/** Loss of gain at full drive from which a stage counts as saturated, dB. */
const SATURATED = 2;

/** Why there is less power than wanted. */
function shortOf(power: number, curve: OverDrive | null): string {
  const most = format(power, 'W', 2);
  // The gain of the curve is against that at full drive.
  const lost = curve === null ? 0 : Math.max(...curve.gain);
  return lost > SATURATED
    ? `The final saturates: supply and load allow ${most} at the antenna and no more. A lower collector load or a higher supply gives more.`
    : `The driver brings ${most} to the antenna and no more. It is the driver, or the gain of the final, that is lacking.`;
}

/** The final's steady state at full power, over its drive and over the supply. */
export function* powerWork(seen: PowerSeen): Generator<number, PowerAnswer, void> {
  const assumptions = assumptionsOf(seen);
  const nothing = (says: string): PowerAnswer => ({
    reached: 'none',
    says,
    how,
    assumptions,
    found: null,
  });
  const bench = balanceBench();
  const network = collectorNetwork(seen.ladder, seen.nominal, bench.fine.harmonics);
  const x = new Float64Array(2 * bench.fine.width);
  const warm = yield* between(warmedUp(bench, seen, network, x), BEGINS.warm, BEGINS.supply);
  if (typeof warm === 'string') return nothing(refusals[warm]);
  const { circuit, state, full, budget, levels, junction } = warm;
  const waves = powerWaves(bench.fine, state);
  const figures = powerFigures(circuit, state, budget, waves);
  const harmonics = harmonicsFound(seen, figures);
  const { sides, gang } = seen.arrangement;
  const supplies = yield* between(
    overSupply(bench, circuit, state.drive, seen.supplies.supply, x),
    BEGINS.supply,
    1,
  );
  return {
    reached: full ? 'full' : 'short',
    says: full
      ? `Full power takes ${format(figures.driven, 'W', 2)} into the base.`
      : shortOf(figures.power, levels?.curve ?? null),
    how,
    assumptions,
    found: {
      residual: state.residual,
      bias: circuit.bias.voltage,
      figures,
      budget,
      waves,
      harmonics,
      worstMargin: Math.min(...harmonics.map(({ margin }) => margin)),
      each: {
        count: sides * gang,
        standing: seen.quiescent / (sides * gang),
        peakCurrent: figures.peakCurrent / gang,
        dissipation: budget.transistor / (sides * gang),
        ballast: budget.emitter / (sides * gang),
      },
      junction,
      overDrive: levels?.curve ?? null,
      twoTones: levels?.tones ?? null,
      overSupply: supplies,
      sag: sagging(bench, circuit, state.drive, seen.supplyResistance, budget.fundamental, x),
    },
  };
}
