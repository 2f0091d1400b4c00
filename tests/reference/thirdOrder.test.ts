import { describe, expect, test } from 'vitest';
import { bentCurrents } from '../../src/engine/circuit/amplifier/bentCurrents.ts';
import { biasPoint } from '../../src/engine/circuit/amplifier/biasPoint.ts';
import { biasOf } from '../../src/engine/circuit/amplifier/commonEmitter.ts';
import { hybridPi, hybridPiOff } from '../../src/engine/circuit/amplifier/hybridPi.ts';
import { closeStage } from '../../src/engine/circuit/amplifier/stageFigures.ts';
import { thirdOrder } from '../../src/engine/circuit/amplifier/thirdOrder.ts';
import {
  type TwoWayAmplifier,
  twoWayAmplifier,
} from '../../src/engine/circuit/amplifier/twoWayAmplifier.ts';
import { cards, modelLine } from './nodalCards.ts';
import { simulateAc, simulateProduct, value } from './simulator.ts';
import { END, halfByHand, SUPPLY, usualTwoWay } from './twoWayByHand.ts';

const T0 = 290;
const base: TwoWayAmplifier = { ...usualTwoWay, asleep: 'nothing' };

const circuitOf = (parts: TwoWayAmplifier, card: keyof typeof cards) => `
vs s 0 ${SUPPLY}
vin in0 0 dc 0 ac 1 distof1 1 0 distof2 1 0
rs in0 p1 ${END}
ck1 p1 b1 ${value(parts.coupling)}
${halfByHand(parts, '1', 'b1', 'c1', 's')}
co1 c1 p2 ${value(parts.coupling)}
rl p2 0 ${END}
${modelLine('q', cards[card])}`;

/** Output intercept, dBm: ours, and by the simulator's Volterra series. */
async function both(
  change: Partial<TwoWayAmplifier>,
  card: keyof typeof cards,
  f: number,
  over: number,
) {
  const parts = { ...base, ...change };
  const options = `temp=${T0 - 273.15} tnom=${T0 - 273.15} reltol=1e-9 abstol=1e-15 vntol=1e-9`;
  const elements = circuitOf(parts, card);
  const linear = await simulateAc(`${elements}\n.options ${options}`, {
    from: f,
    to: f,
    points: 1,
  });
  const bent = await simulateProduct(elements, f, over, options);
  const watts = ({ re, im }: { re: Float64Array; im: Float64Array }) =>
    ((re[0] ?? Number.NaN) ** 2 + (im[0] ?? Number.NaN) ** 2) / (2 * END);
  const [tone, product] = [watts(linear.node('p2')), watts(bent.node('p2'))];
  const theirs = 10 * Math.log10((tone * Math.sqrt(tone / product)) / 1e-3);

  const point = biasPoint(biasOf(parts, SUPPLY), cards[card], T0);
  const circuit = twoWayAmplifier(
    parts,
    hybridPi(cards[card], T0, point),
    hybridPiOff(cards[card]),
  );
  const two = closeStage(circuit, [END, END]);
  const found = thirdOrder(circuit, two, bentCurrents(cards[card], T0, point), f, (1 - over) * f);
  return { ours: 10 * Math.log10((found?.intercept ?? Number.NaN) / 1e-3), theirs };
}

// ngspice’s `.disto`: Volterra series with every capacitance and the Early effect bent as well.
describe('third-order intercept of the two-way amplifier against the simulator', () => {
  test.each([
    [{}, 'switching', 7e6],
    [{}, 'full', 7e6],
    [{}, 'full', 1e6],
    [{ emitter: 10 }, 'full', 7e6],
    [{ emitter: 5 }, 'full', 3.6e6],
    [{ emitter: 47, bridged: 100 }, 'full', 7e6],
    [{ feedback: 1500 }, 'switching', 14e6],
    [{ bridged: 470 }, 'audio', 3.6e6],
  ] as const)('%j %s %f Hz', async (change, card, f) => {
    const { ours, theirs } = await both(change, card, f, 0.99);
    expect(Math.abs(ours - theirs)).toBeLessThan(0.35);
  });
});
