import {
  type Crystal,
  parallelResonance,
  seriesResonance,
} from '../../../src/engine/circuit/crystal.ts';
import { bleeders, simulateAc, value } from '../simulator.ts';

/** A crystal between two resistances as the simulator sees it. */
export interface SimulatedSweep {
  readonly frequency: Float64Array;
  /** dB against a through connection. */
  readonly level: Float64Array;
  /** rad */
  readonly phase: Float64Array;
}

/** Sweeps a crystal in a fixture with the circuit simulator. */
export async function simulatedSweep(
  crystal: Crystal,
  rt: number,
  sweep: { from: number; to: number; points: number },
  shunt = 0,
): Promise<SimulatedSweep> {
  const { lm, cm, rm, c0 } = crystal;
  const run = await simulateAc(
    [
      'v1 e 0 dc 0 ac 2',
      `rs e in ${value(rt)}`,
      // In this order Rm and Cm share no node, where a sum of 1/Rm and ωCm would lose digits.
      `rm in a ${value(rm)}`,
      `lm a b ${value(lm)}`,
      `cm b out ${value(cm)}`,
      `c0 in out ${value(c0)}`,
      ...(shunt > 0 ? [`ci in 0 ${value(shunt)}`, `co out 0 ${value(shunt)}`] : []),
      `rl out 0 ${value(rt)}`,
      bleeders(['in', 'out']),
    ].join('\n'),
    sweep,
  );
  const { re, im } = run.node('out');
  return {
    frequency: run.frequency,
    level: run.level('out'),
    phase: re.map((x, i) => Math.atan2(im[i] ?? 0, x)),
  };
}

/** Width of the loaded peak, Hz. */
export const loadedWidth = ({ lm, rm }: Crystal, rt: number): number =>
  (2 * rt + rm) / (2 * Math.PI * lm);

/** A sweep from below fs to beyond fp, in parts of the distance between the two. */
export function across(crystal: Crystal, below: number, beyond: number, points: number) {
  const fs = seriesResonance(crystal);
  const gap = parallelResonance(crystal) - fs;
  return { from: fs - below * gap, to: fs + beyond * gap, points };
}

/** Numbers of a normal distribution that come again for the same seed (mulberry32, Box and Muller). */
export function seededNormal(seed: number): () => number {
  let state = seed >>> 0;
  const uniform = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}

/** The sweep as read with noise: so many dB rms, and as much in the phase. */
export function noisy(sweep: SimulatedSweep, db: number, seed: number): SimulatedSweep {
  const normal = seededNormal(seed);
  const radian = (db * Math.LN10) / 20;
  return {
    frequency: sweep.frequency,
    level: sweep.level.map((x) => x + db * normal()),
    phase: sweep.phase.map((x) => x + radian * normal()),
  };
}
