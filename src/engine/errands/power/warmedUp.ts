import { biasFor } from '../../circuit/power/biasFor.ts';
import type { BalanceBench } from '../../circuit/power/harmonicBalance.ts';
import { type PowerBudget, powerBudget } from '../../circuit/power/powerBudget.ts';
import type { CollectorNetwork, PowerCircuit } from '../../circuit/power/powerCircuit.ts';
import type { PowerState } from '../../circuit/power/powerState.ts';
import { between } from './between.ts';
import { type Driven, driveFor } from './driveFor.ts';
import { overDrive } from './overDrive.ts';
import type { ExactJunction, OverDrive, TwoTones } from './powerAnswer.ts';
import { mostDrive, powerCircuitOf, within } from './powerCircuitOf.ts';
import type { PowerSeen } from './seen.ts';
import { speechHeat } from './speechHeat.ts';

/** Rounds of heat and temperature, and the change in kelvins that ends them. */
const ROUNDS = 4;
const ENOUGH = 1;

/** The stage at its power, as warm as it makes itself. */
export interface WarmedUp {
  readonly circuit: PowerCircuit;
  readonly state: PowerState;
  readonly full: boolean;
  readonly budget: PowerBudget;
  readonly levels: { readonly curve: OverDrive; readonly tones: TwoTones } | null;
  readonly junction: ExactJunction;
}

/** Why there is no answer. */
export type Refused = 'bias' | 'state';

/**
 * Bias, drive and steady state for the power wanted, at the temperature that the heat of that state
 * keeps up; yields the share done.
 *
 * @param x receives the state
 */
export function* warmedUp(
  bench: BalanceBench,
  seen: PowerSeen,
  network: CollectorNetwork,
  x: Float64Array,
): Generator<number, WarmedUp | Refused, void> {
  const { sides, gang } = seen.arrangement;
  const most = mostDrive(seen);
  let temperature = within(seen.junction);
  let guess: number | null = null;
  for (let round = 1; ; round += 1) {
    const [from, middle, to] = [(round - 1) / ROUNDS, (round - 0.5) / ROUNDS, round / ROUNDS];
    const blank = powerCircuitOf(seen, temperature, network);
    const voltage = biasFor(bench, blank, seen.quiescent / sides);
    if (voltage === null) return 'bias';
    const circuit = { ...blank, bias: { ...blank.bias, voltage } };
    const search = driveFor(bench, circuit, seen.pep, most, x, guess);
    const driven: Driven | null = yield* between(search, from, middle);
    if (!driven) return 'state';
    const { state, full } = driven;
    const budget = powerBudget(circuit, state);
    if (budget.fundamental <= 0) return 'state';
    const levels = yield* between(overDrive(bench, circuit, state, x), middle, to);
    const speech =
      levels && speechHeat(levels.curve, seen.speechMean, seen.supply * seen.quiescent);
    const heat =
      (seen.warmth === 'speech' && speech !== null ? speech : budget.transistor) / (sides * gang);
    const warmed = seen.ambient + seen.heatPath * heat;
    const settled = Math.abs(warmed - temperature) < ENOUGH;
    if (settled || round === ROUNDS) {
      const tone = seen.ambient + (seen.heatPath * budget.transistor) / (sides * gang);
      const junction = {
        warmth: seen.warmth,
        temperature: warmed,
        heat,
        rounds: round,
        settled,
        tone,
      };
      return { circuit, state, full, budget, levels, junction };
    }
    temperature = within(warmed);
    guess = full ? state.drive : null;
  }
}
