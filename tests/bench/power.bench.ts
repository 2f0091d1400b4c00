import { bench, describe } from 'vitest';
import { lowpassFromPrototype } from '../../src/engine/circuit/lowpassFromPrototype.ts';
import { capacitor, coil } from '../../src/engine/circuit/outputLadder.ts';
import { collectorNetwork } from '../../src/engine/circuit/power/collectorNetwork.ts';
import { driveSweep } from '../../src/engine/circuit/power/driveSweep.ts';
import { envelopeDrives } from '../../src/engine/circuit/power/envelopeProducts.ts';
import { gummelPoonAt } from '../../src/engine/circuit/power/gummelPoonAt.ts';
import { balanceBench } from '../../src/engine/circuit/power/harmonicBalance.ts';
import type { PowerCircuit } from '../../src/engine/circuit/power/powerCircuit.ts';
import { powerState } from '../../src/engine/circuit/power/powerState.ts';
import { chebyshev } from '../../src/engine/circuit/prototype.ts';
import { transistorModels } from '../../src/engine/data/transistorModels.ts';
import { finish } from '../../src/engine/errands/drive.ts';
import type { Errand } from '../../src/engine/errands/errand.ts';
import { mismatchedErrand } from '../../src/engine/errands/mismatched/errand.ts';
import { pick, seenBy } from '../../src/engine/errands/pick.ts';
import { powerErrand } from '../../src/engine/errands/power/errand.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';

const [rig] = examples;

const desk = balanceBench();
const { harmonics, width } = desk.fine;
const load = 30;
const none = Number.POSITIVE_INFINITY;
const values = lowpassFromPrototype(chebyshev(7, 0.044).g.slice(1, 8), load, 8.4e6);
const circuit: PowerCircuit = {
  frequency: 7e6,
  model: gummelPoonAt(transistorModels.d139, 330),
  supply: 12,
  feed: { l: 3.4e-6, r: 0.1 },
  emitter: { r: 0.5, l: 5e-9 },
  bias: { voltage: 0.68, resistance: 10, across: none },
  shunt: 33,
  driver: Float64Array.from({ length: 2 * (harmonics + 1) }, (_, i) => (i % 2 === 0 ? 10 : 0)),
  network: collectorNetwork(
    {
      branches: values.map((v, i) =>
        i % 2 === 0 ? capacitor('shunt', v, 1000) : coil('series', v, 150, 2e-12),
      ),
      ratio: 1,
      sourceResistance: none,
      sourceCapacitance: 0,
      load,
      reference: 7e6,
    },
    7e6,
    harmonics,
  ),
};
const x = new Float64Array(2 * width);

// To be shown: at most 30 ms from nothing, aim 10 ms.
describe('steady state of a power stage, 20 harmonics', () => {
  for (const drive of [0.5, 1, 2, 3, 4]) {
    bench(`drive ${drive} V`, () => {
      if (!powerState(desk, circuit, drive, x).converged) throw new Error('did not converge');
    });
  }
  const pair = { ...circuit, pushPull: { leakage: 5e-8, unlike: 0.05 } };
  bench('push-pull, drive 3 V a side', () => {
    if (!powerState(desk, pair, 3, x).converged) throw new Error('did not converge');
  });
  bench('fifteen levels of drive, one from the other', () => {
    finish(driveSweep(desk, circuit, envelopeDrives(3, 15)));
  });
});

// To be shown: well below a second in a worker.
describe('errands of the final, first example', () => {
  const worked = rig ? createEvaluator(stages)(rig) : null;
  const seenOf = (errand: Errand) => (worked ? seenBy(errand, pick(worked, errand)) : null);
  for (const errand of [powerErrand, mismatchedErrand] as const) {
    const seen = seenOf(errand);
    bench(errand.key, () => {
      finish(errand.work(seen, { index: 0, of: 1 }));
    });
  }
});
