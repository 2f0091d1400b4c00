import { collectorNetwork } from '../../circuit/power/collectorNetwork.ts';
import { type BalanceBench, balanceBench } from '../../circuit/power/harmonicBalance.ts';
import { mismatchedNetwork } from '../../circuit/power/mismatchedNetwork.ts';
import { powerBudget } from '../../circuit/power/powerBudget.ts';
import type { PowerCircuit } from '../../circuit/power/powerCircuit.ts';
import { powerFigures, powerWaves } from '../../circuit/power/powerFigures.ts';
import { type PowerState, powerState } from '../../circuit/power/powerState.ts';
import type { Seen } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { mismatchFields } from '../../stages/mismatch/fields.ts';
import type { transmitFields } from '../../stages/transmit/fields.ts';
import { between } from '../power/between.ts';
import { harmonicsFound } from '../power/harmonicsFound.ts';
import type { PowerSeen } from '../power/seen.ts';
import { warmedUp } from '../power/warmedUp.ts';
import type { MismatchedAnswer, MismatchedPoint, MismatchedRound } from './mismatchedAnswer.ts';

export type MismatchedSeen = PowerSeen &
  Seen<
    typeof mismatchFields | typeof transmitFields,
    { readonly swr: 'mismatch.swr'; readonly limitVce: 'transmit.limitVce' }
  >;

/** Ratios that are always gone round, and angles of a round. */
const USUAL = [1.5, 2, 3] as const;
const ANGLES = 12;
/** Where in the whole work the rounds begin. */
const BEGINS = 0.4;

const how =
  'The same steady state as of the final into its right load, with the drive, bias and warmth of that, at twelve angles of the reflection for each ratio. The antenna reflects at the fundamental; harmonics find its nominal resistance.';

/** The final once round each standing wave ratio. */
export function* mismatchedWork(seen: MismatchedSeen): Generator<number, MismatchedAnswer, void> {
  const { limitVce } = seen;
  const nothing = (says: string) => ({ says, how, limitVce, matched: null, rounds: [] });
  const bench = balanceBench();
  const matched = collectorNetwork(seen.ladder, seen.nominal, bench.fine.harmonics);
  const x = new Float64Array(2 * bench.fine.width);
  const warm = yield* between(warmedUp(bench, seen, matched, x), 0, BEGINS);
  if (typeof warm === 'string')
    return nothing('No steady state was found even into the right load.');
  const { circuit, state } = warm;
  const ratios = [...new Set<number>([...USUAL, seen.swr])].filter((swr) => swr > 1);
  ratios.sort((a, b) => a - b);
  const rounds: MismatchedRound[] = [];
  for (const [i, swr] of ratios.entries()) {
    const share = (n: number) => BEGINS + ((1 - BEGINS) * (i + n)) / ratios.length;
    const turn = once(bench, seen, circuit, state.drive, swr, x);
    rounds.push(yield* between(turn, share(0), share(1)));
  }
  const highest = Math.max(0, ...rounds.map(({ worst }) => worst?.voltage.voltage ?? 0));
  return {
    says: `Up to ${format(highest, 'V', 2)} at the collector; its limit is ${format(limitVce, 'V', 2)}.`,
    how,
    limitVce,
    matched: pointOf(bench, seen, circuit, state, 0),
    rounds,
  };
}

/** One round, beginning each step from the one before; yields the share done. */
function* once(
  bench: BalanceBench,
  seen: MismatchedSeen,
  circuit: PowerCircuit,
  drive: number,
  swr: number,
  start: Float64Array,
): Generator<number, MismatchedRound, void> {
  const x = Float64Array.from(start);
  const points: MismatchedPoint[] = [];
  const turned = (ratio: number, angle: number) => ({
    ...circuit,
    network: mismatchedNetwork(circuit.network, seen.ladder, seen.nominal, ratio, angle),
  });
  for (let i = 0; i < ANGLES; i += 1) {
    const angle = (2 * Math.PI * i) / ANGLES;
    const there = turned(swr, angle);
    let state = powerState(bench, there, drive, x, 'only');
    if (!state.converged) {
      // Past a point where the state jumps: out from the right load, or from nothing.
      x.set(start);
      state = powerState(bench, there, drive, x, true);
    }
    if (state.converged) points.push(pointOf(bench, seen, there, state, angle));
    else x.set(start);
    yield (i + 1) / ANGLES;
  }
  return { swr, points, missing: ANGLES - points.length, worst: worstOf(points) };
}

function pointOf(
  bench: BalanceBench,
  seen: MismatchedSeen,
  circuit: PowerCircuit,
  state: PowerState,
  angle: number,
): MismatchedPoint {
  const { sides, gang } = seen.arrangement;
  const budget = powerBudget(circuit, state);
  const figures = powerFigures(circuit, state, budget, powerWaves(bench.fine, state));
  const harmonics = harmonicsFound(seen, figures);
  const worst = harmonics.reduce((a, b) => (b.margin < a.margin ? b : a));
  const dissipation = budget.transistor / (sides * gang);
  return {
    angle,
    power: figures.power,
    voltage: figures.peakVoltage,
    current: figures.peakCurrent / gang,
    supply: figures.collectorCurrent,
    dissipation,
    junction: seen.ambient + seen.heatPath * dissipation,
    order: worst.order,
    level: worst.level,
    margin: worst.margin,
  };
}

function worstOf(points: readonly MismatchedPoint[]): MismatchedRound['worst'] {
  const [first] = points;
  if (!first) return null;
  const most = (key: 'voltage' | 'current' | 'dissipation') =>
    points.reduce((a, b) => (b[key] > a[key] ? b : a), first);
  const least = (key: 'power' | 'margin') =>
    points.reduce((a, b) => (b[key] < a[key] ? b : a), first);
  return {
    voltage: most('voltage'),
    current: most('current'),
    dissipation: most('dissipation'),
    power: least('power'),
    margin: least('margin'),
  };
}
