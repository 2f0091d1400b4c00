import { bench, describe } from 'vitest';
import { crystalOf } from '../../src/engine/circuit/crystal.ts';
import { crystalFit } from '../../src/engine/circuit/crystalFit.ts';
import {
  crystalSweepAt,
  NEPER,
  SWEEP_POINT,
  SWEEP_SIZE,
} from '../../src/engine/circuit/crystalSweep.ts';
import { emptyRig } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { exampleSweeps } from '../../src/engine/rig/exampleSweeps.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { readSweepText } from '../../src/engine/stages/sweep/readSweepText.ts';
import { across, noisy } from '../reference/sweep/simulatedSweep.ts';

const crystal = crystalOf(9e6, 14e-3, 100e3, 3.5e-12);
const [small, usual, coarse] = [sweep(201), sweep(401), sweep(61)];
const given = {
  rt: 12.5,
  c0: 4e-12,
  c0Spread: 1.5e-12,
  c0From: 'fit',
  shunt: 0,
  freeShunt: false,
  freeLevel: false,
} as const;

// To be shown: 8 ms at most for 401 points.
describe('fitting a crystal to a sweep', () => {
  bench('401 points, level', () => {
    crystalFit({ ...given, ...usual, phase: null });
  });
  bench('401 points, level and phase', () => {
    crystalFit({ ...given, ...usual });
  });
  bench('201 points, level', () => {
    crystalFit({ ...given, ...small, phase: null });
  });
  bench('61 points, coarse', () => {
    crystalFit({ ...given, ...coarse, phase: null });
  });
});

describe('the sweep stage', () => {
  const evaluate = createEvaluator(
    stages.filter(({ fields }) => /plan|measure|sweep/.test(fields.key)),
  );
  const rig = (through: number) => ({
    ...emptyRig('swept'),
    entries: {
      'plan.marking': { text: '7.2M' },
      'sweep.file': { text: exampleSweeps.forty },
      'sweep.through': { text: `${through}` },
    },
  });
  const rigs = [rig(0), rig(0.01)];
  let turn = 0;
  bench('reading a Touchstone text of 185 rows', () => {
    readSweepText(exampleSweeps.forty);
  });
  bench('one of its own fields changed: read, fitted, judged', () => {
    turn += 1;
    evaluate(rigs[turn % 2] ?? rig(0));
  });
});

/** By the closed form: the simulator would still be at work beside the benchmark. */
function sweep(points: number) {
  const { from, to } = across(crystal, 0.3, 1.3, points);
  const p = new Float64Array(SWEEP_SIZE);
  p.set([0, Math.log(crystal.lm), crystal.rm, crystal.c0]);
  const out = new Float64Array(SWEEP_POINT);
  const [frequency, level, phase] = [0, 1, 2].map(() => new Float64Array(points));
  if (!frequency || !level || !phase) throw new Error();
  for (let i = 0; i < points; i += 1) {
    frequency[i] = from + ((to - from) * i) / (points - 1);
    crystalSweepAt(p, 9e6, (frequency[i] ?? 0) - 9e6, 12.5, out);
    level[i] = (out[0] ?? 0) * NEPER;
    phase[i] = out[1] ?? 0;
  }
  return noisy({ frequency, level, phase }, 0.05, 1);
}
