import { ROUND } from '../../circuit/mismatch/aroundCircle.ts';
import { WAVES_SIZE } from '../../circuit/mismatch/chainWaves.ts';
import type { Work } from '../../fields/stage.ts';
import type { mismatchFields } from './fields.ts';
import { type Followed, follow, rhoOf } from './followed.ts';
import { goRound, type Round } from './goRound.ts';
import { problems } from './problems.ts';
import type { MismatchSeen } from './seen.ts';

/** Ratios that stand in the table whatever is typed. */
export const USUAL = [1, 1.5, 2, 3] as const;

/** One step of the round, rad. */
const STEP = (2 * Math.PI) / ROUND;

/** The antenna's reflection once round: the worst of margins, loss, power, collector and heat. */
export function workMismatch(seen: MismatchSeen): Work<typeof mismatchFields> {
  const network = follow(seen);
  const rounds = ratios(seen.swr).map((swr) => goRound(seen, network, swr));
  const typed = rounds.find(({ swr }) => swr === seen.swr) ?? goRound(seen, network, seen.swr);
  const rho = rhoOf(seen.swr);
  const row = worstRow(typed);
  const results: Work<typeof mismatchFields>['results'] = {
    reflection: rho,
    reflected: rho * rho,
    margin: row.margin,
    verdict:
      row.margin === null || row.margin >= seen.marginWanted
        ? 'holds'
        : row.margin < 0
          ? 'fails'
          : 'close',
    marginSame: row.marginSame,
    marginAny: row.marginAny,
    marginOrder: row.marginOrder,
    power: row.power,
    loss: row.loss,
    collector: row.collector,
    collectorHeld: typed.around.held[typed.at.held] ?? 0,
    heat: row.heat,
    worst: rounds.map(worstRow),
    harmonics: typed.levels.map(({ order, rise }) => ({
      order,
      back: rise.back,
      same: rise.same,
      any: rise.any,
    })),
    around: aroundCurve(typed),
    marginAround: marginCurve(typed),
    waves: waveRows(seen, network),
  };
  return { results, problems: problems(seen, results) };
}

/** The usual ratios and the one typed, rising. */
export function ratios(swr: number): number[] {
  return [...new Set<number>([...USUAL, swr])].sort((a, b) => a - b);
}

function worstRow({ swr, around, margins, at }: Round) {
  const angle = (k: number) => (swr === 1 ? null : k * STEP);
  const finite = (value: number | undefined) =>
    value !== undefined && Number.isFinite(value) ? value : null;
  const margin = finite(margins.plain[at.margin]);
  return {
    swr,
    margin,
    marginOrder: margin === null ? null : (margins.order[at.margin] ?? null),
    marginAngle: margin === null ? null : angle(at.margin),
    marginSame: finite(margins.same[at.same]),
    marginAny: finite(margins.any[at.any]),
    loss: around.loss[at.loss] ?? 0,
    lossAngle: angle(at.loss),
    power: around.power[at.power] ?? 0,
    powerAngle: angle(at.power),
    collector: around.unheld[at.collector] ?? 0,
    collectorAngle: angle(at.collector),
    heat: around.heat[at.heat] ?? 0,
    heatAngle: angle(at.heat),
  };
}

function aroundCurve({ around }: Round) {
  const { angle, resistance, reactance, power, loss, held, unheld, heat } = around;
  return { angle, resistance, reactance, power, loss, held, unheld, heat };
}

/** Null where the current has no harmonics. */
function marginCurve({ swr, around: { angle }, margins, levels }: Round) {
  if (levels.length === 0) return null;
  const steps = swr === 1 ? 1 : ROUND;
  return { angle, margin: angle.map((_, k) => margins.plain[k % steps] ?? 0) };
}

function waveRows(seen: MismatchSeen, { alone, orders }: Followed) {
  return Array.from({ length: orders }, (_, i) => {
    const w = (k: number) => alone[i * WAVES_SIZE + k] ?? 0;
    return {
      order: i + 1,
      frequency: (i + 1) * seen.nominal,
      ar: w(0),
      ai: w(1),
      br: w(2),
      bi: w(3),
      cr: w(4),
      ci: w(5),
      dr: w(6),
      di: w(7),
    };
  });
}
