import { collectorNetwork } from '../../../src/engine/circuit/power/collectorNetwork.ts';
import { gummelPoonAt } from '../../../src/engine/circuit/power/gummelPoonAt.ts';
import type { PowerCircuit } from '../../../src/engine/circuit/power/powerCircuit.ts';
import type { BuiltStage } from './transientStage.ts';

/** The same stage as the balance of harmonics wants it. */
export function circuitOf(built: BuiltStage, harmonics: number): PowerCircuit {
  const driver = new Float64Array(2 * (harmonics + 1));
  for (let k = 1; k <= harmonics; k += 1) {
    const w = 2 * Math.PI * built.frequency * k;
    driver[2 * k] = built.driver.r;
    driver[2 * k + 1] = w * built.driver.l - 1 / (w * built.driver.c);
  }
  return {
    frequency: built.frequency,
    model: gummelPoonAt(built.card, built.temperature + 273.15),
    supply: built.supply,
    feed: built.feed,
    emitter: built.emitter,
    bias: { ...built.bias, across: built.bias.resistance },
    shunt: built.shunt,
    driver,
    network: collectorNetwork(built.ladder, built.frequency, harmonics),
  };
}
