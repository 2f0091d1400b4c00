import { expect, test } from 'vitest';
import { crystalOf, parallelResonance, seriesResonance } from '../../src/engine/circuit/crystal.ts';
import { crystalFit } from '../../src/engine/circuit/crystalFit.ts';
import {
  crystalSweepAt,
  NEPER,
  SWEEP,
  SWEEP_POINT,
  SWEEP_SIZE,
} from '../../src/engine/circuit/crystalSweep.ts';
import { loadedWidth, noisy, seededNormal } from '../reference/sweep/simulatedSweep.ts';

const TIMES = 800;
const NOISE = 0.05;

/** A number between 0 and 1, from a normal one: any will do that spreads the cases. */
const between = (x: number) => 0.5 + Math.atan(x) / Math.PI;

// The closed form that makes the sweeps is checked against the simulator (crystalFit.test.ts); what a
// standard error means is statistics.
test('any crystal, fixture and sweep: the fit rests on the noise, and its errors are honest', () => {
  const squares = [0, 0, 0, 0];
  let count = 0;
  for (let seed = 1; seed <= TIMES; seed += 1) {
    const normal = seededNormal(seed);
    const u = () => between(normal());
    const fs = 1.8e6 * (21 / 1.8) ** u();
    const cm = (5 + 20 * u()) * 1e-15;
    const lm = 1 / ((2 * Math.PI * fs) ** 2 * cm);
    const crystal = crystalOf(fs, lm, 1e4 * 30 ** u(), cm * (180 + 150 * u()));
    const rt = 12.5 * 8 ** u();
    const width = loadedWidth(crystal, rt);
    const gap = parallelResonance(crystal) - fs;
    const points = Math.round(80 + 400 * u());
    const from = fs - (u() < 0.5 ? (1 + 4 * u()) * width : 0.6 * gap * u() + width);
    const to = u() < 0.6 ? fs + gap * (1.05 + u()) : fs + width * (1.5 + 10 * u());
    const made = sweep(crystal, rt, from, to, points);
    const { frequency, level, phase } = noisy(made, NOISE, seed);
    const peak = level.indexOf(Math.max(...level));
    if (peak < 2 || peak > points - 3) continue;
    const fit = crystalFit({
      frequency,
      level,
      phase: seed % 3 === 0 ? phase : null,
      rt,
      c0: 4e-12,
      c0Spread: 1.5e-12,
      c0From: 'fit',
      shunt: 0,
      freeShunt: false,
      freeLevel: false,
    });
    const at = `seed ${seed}`;
    expect(fit.rest, at).toBe(true);
    expect(fit.rms, at).toBeLessThan(1.6 * NOISE);
    if (fit.c0Held) continue;
    count += 1;
    const truth = [seriesResonance(crystal), Math.log(lm), crystal.rm, crystal.c0];
    [fit.fs, Math.log(fit.lm), fit.rm, fit.c0].forEach((x, i) => {
      const z = (x - (truth[i] ?? 0)) / Math.sqrt(fit.covariance[i * (SWEEP_SIZE + 1)] ?? 0);
      expect(Math.abs(z), at).toBeLessThan(6);
      squares[i] = (squares[i] ?? 0) + z * z;
    });
  }
  expect(count).toBeGreaterThan(0.8 * TIMES);
  // The mean of so many squares of a standard normal is 1, give or take √(2/count).
  for (const sum of squares) {
    expect(Math.abs(sum / count - 1)).toBeLessThan(4 * Math.sqrt(2 / count));
  }
});

function sweep(
  crystal: ReturnType<typeof crystalOf>,
  rt: number,
  from: number,
  to: number,
  points: number,
) {
  const p = new Float64Array(SWEEP_SIZE);
  p[SWEEP.lnLm] = Math.log(crystal.lm);
  p[SWEEP.rm] = crystal.rm;
  p[SWEEP.c0] = crystal.c0;
  const reference = seriesResonance(crystal);
  const out = new Float64Array(SWEEP_POINT);
  const frequency = Float64Array.from(
    { length: points },
    (_, i) => from + ((to - from) * i) / (points - 1),
  );
  const [level, phase] = [new Float64Array(points), new Float64Array(points)];
  frequency.forEach((f, i) => {
    crystalSweepAt(p, reference, f - reference, rt, out);
    level[i] = (out[0] ?? 0) * NEPER;
    phase[i] = out[1] ?? 0;
  });
  return { frequency, level, phase };
}
