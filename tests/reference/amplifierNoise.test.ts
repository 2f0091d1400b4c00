import { expect, test } from 'vitest';
import { biasPoint } from '../../src/engine/circuit/amplifier/biasPoint.ts';
import { biasOf } from '../../src/engine/circuit/amplifier/commonEmitter.ts';
import { hybridPi, hybridPiOff } from '../../src/engine/circuit/amplifier/hybridPi.ts';
import { closeStage } from '../../src/engine/circuit/amplifier/stageFigures.ts';
import { twoWayAmplifier } from '../../src/engine/circuit/amplifier/twoWayAmplifier.ts';
import { noiseShares } from '../../src/engine/circuit/nodal/noiseFigure.ts';
import { scattering } from '../../src/engine/circuit/nodal/scattering.ts';
import { cards, modelLine } from './nodalCards.ts';
import { simulateReal, value } from './simulator.ts';
import { END, halfByHand, SUPPLY, usualTwoWay } from './twoWayByHand.ts';

const T0 = 290;
const parts = usualTwoWay;

/** Both halves by hand; the sleeping one is fed from ground. */
const byHand = (asleep: 'all' | 'nothing') => `
vs s 0 ${SUPPLY}
vin in0 0 dc 0 ac 1
rs in0 p1 ${END}
ck1 p1 b1 ${value(parts.coupling)}
${halfByHand(parts, '1', 'b1', 'c1', 's')}
co1 c1 p2 ${value(parts.coupling)}
${
  asleep === 'all'
    ? `${halfByHand(parts, '2', 'b2', 'c2', '0')}
ck2 p2 b2 ${value(parts.coupling)}
co2 c2 p1 ${value(parts.coupling)}`
    : ''
}
rl p2 0 ${END} noisy=0
${modelLine('q', cards.switching)}`;

// ngspice’s .noise at 290 K on the whole circuit with the whole transistor, the load’s own noise
// switched off. F is the noise at the input over that of the source, 4kT0·R.
test.each([
  ['nothing', 1e6],
  ['nothing', 7e6],
  ['all', 7e6],
  ['all', 30e6],
  ['nothing', 30e6],
] as const)('noise figure of the two-way amplifier, asleep %s, %f Hz', async (asleep, f) => {
  const run = await simulateReal(
    byHand(asleep),
    `.noise v(p2) vin lin 1 ${value(f)} ${value(f)} 1`,
    `temp=${T0 - 273.15} tnom=${T0 - 273.15} reltol=1e-9 abstol=1e-15 vntol=1e-9`,
  );
  const [input = Number.NaN] = run.vector('inoise_spectrum');
  const theirs = input ** 2 / (4 * 1.380649e-23 * T0 * END);
  // Measured at 290 K: the simulator moves the capacitances with temperature, the engine doesn’t.
  const card = cards.switching;
  const point = biasPoint(biasOf(parts, SUPPLY), card, T0);
  const circuit = twoWayAmplifier(
    { ...parts, asleep },
    hybridPi(card, T0, point),
    hybridPiOff(card),
  );
  const two = closeStage(circuit, [END, END]);
  scattering(two, f);
  const { inner, collector, emitter } = circuit.device;
  const { shares } = noiseShares(
    circuit.net,
    two,
    [
      { name: 'I_B', from: inner, to: emitter, current: point.baseCurrent },
      { name: 'I_C', from: collector, to: emitter, current: point.collectorCurrent },
    ],
    T0,
  );
  const factor = 1 + shares.reduce((sum, { share }) => sum + share, 0);
  expect(Math.abs(10 * Math.log10(factor / theirs))).toBeLessThan(1e-4);
});
