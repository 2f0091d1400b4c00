import { describe, expect, test } from 'vitest';
import { BLOCKS_BELOW, harmlessTone, thirdProduct } from '../../src/engine/circuit/cubic.ts';
import type { OutputLadder } from '../../src/engine/circuit/outputLadder.ts';
import { nearestBroadcast } from '../../src/engine/data/broadcastBands.ts';
import { withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';
import { networkBackwards, takenBeyond } from '../../src/engine/stages/strong/selectivity.ts';
import { simulateAc, value } from './simulator.ts';

const evaluate = createEvaluator(stages);
const at = (rig: (typeof examples)[number], path: string) => valueAt(evaluate(rig), path);
const num = (rig: (typeof examples)[number], path: string) => Number(at(rig, path));

// Source: an amplifier y = x − c·x³ written out in time and taken apart by Fourier's sum.
describe('a cubic, in time', () => {
  const N = 4096;
  const through = (x: (t: number) => number, c: number, bin: number) => {
    let [re, im] = [0, 0];
    for (let n = 0; n < N; n += 1) {
      const t = (2 * Math.PI * n) / N;
      const v = x(t);
      const y = v - c * v ** 3;
      re += y * Math.cos(bin * t);
      im -= y * Math.sin(bin * t);
    }
    return (2 * Math.hypot(re, im)) / N;
  };
  const dB = (ratio: number) => 20 * Math.log10(ratio);
  // Peak voltage at the intercept: where A = (3/4)·c·A³.
  const c = 1e-3;
  const intercept = dB(Math.sqrt(4 / (3 * c)));

  test('two tones make the product that the intercept says', () => {
    const a = 0.1;
    const product = through((t) => a * Math.cos(100 * t) + a * Math.cos(103 * t), c, 97);
    expect(dB(product)).toBeCloseTo(thirdProduct(dB(a), intercept), 6);
    expect(harmlessTone(intercept, dB(product))).toBeCloseTo(dB(a), 6);
  });

  test('a strong signal takes a decibel off a weak one where it is said to', () => {
    const strong = 10 ** ((intercept - BLOCKS_BELOW) / 20);
    const weak = 1e-4;
    const left = through((t) => weak * Math.cos(100 * t) + strong * Math.cos(117 * t), c, 100);
    expect(dB(left / weak)).toBeCloseTo(-1, 5);
  });
});

// Source: two-thirds rule of receiver tests, ARRL Handbook (from memory): intercept +10 dBm over a
// floor of −130 dBm is 93.3 dB.
test('range free of products', () => {
  const tone = harmlessTone(10, -130);
  expect(tone + 130).toBeCloseTo(93.33, 2);
});

// By hand: the reciprocals of the intercepts at the antenna, in milliwatts, add up.
test('the chain’s intercept is that of its blocks together', () => {
  for (const rig of examples) {
    const blocks = at(rig, 'strong.blocks') as readonly { block: string; referred: number }[];
    const sum = (upTo: string) =>
      blocks
        .slice(0, blocks.findIndex(({ block }) => block === upTo) + 1)
        .reduce((s, { referred }) => s + 1 / 10 ** (referred / 10), 0);
    expect(num(rig, 'strong.interceptOutside')).toBeCloseTo(10 * Math.log10(1 / sum('filter')), 9);
    expect(num(rig, 'strong.interceptInside')).toBeCloseTo(10 * Math.log10(1 / sum('detector')), 9);
  }
});

// Source: ITU Radio Regulations, Article 5 (from memory).
test.each([
  [3.7e6, 3.9e6, 4e6],
  [7.1e6, 7.2e6, 7.45e6],
  [7.2e6, 7.2e6, 7.45e6],
  [7.3e6, 7.2e6, 7.45e6],
  [14.2e6, 13.57e6, 13.87e6],
  [21.2e6, 21.45e6, 21.85e6],
])(
  'the nearest broadcaster of %f Hz lies between %f and %f Hz, beside the channel',
  (f, from, to) => {
    const { place } = nearestBroadcast(f);
    expect(place).toBeGreaterThan(from);
    expect(place).toBeLessThan(to);
    expect(Math.abs(place - f)).toBeGreaterThanOrEqual(20e3);
  },
);

/** The output network fed from the antenna's side, written down branch after branch. */
function backwards(ladder: OutputLadder, side: number): string {
  const lines = ['vin a 0 dc 0 ac 1', `rs a n0 ${value(ladder.load)}`];
  let at = 'n0';
  [...ladder.branches].reverse().forEach(({ place, l, c }, k) => {
    const to = place === 'shunt' ? '0' : `n${k + 1}`;
    if (l > 0) lines.push(`l${k} ${at} ${to} ${value(l)}`);
    if (c > 0) lines.push(`c${k} ${at} ${to} ${value(c)}`);
    if (place === 'series') at = to;
  });
  lines.push(`rl ${at} 0 ${value(side * ladder.ratio ** 2)}`);
  return `${lines.join('\n')}\n.save v(${at})`;
}

// Source: ngspice on the network turned round, without loss. Reciprocity is not used there.
test.each([0, 1, 3])('output network from the antenna’s side, example %d', async (index) => {
  const rig = examples[index];
  if (!rig) throw new Error('no such example');
  const built = at(rig, 'output.ladder') as OutputLadder;
  const lossless: OutputLadder = {
    ...built,
    branches: built.branches.map((branch) => ({
      ...branch,
      ql: Number.POSITIVE_INFINITY,
      qc: Number.POSITIVE_INFINITY,
    })),
  };
  const side = num(rig, 'output.inputResistance');
  const nominal = num(rig, 'plan.nominal');
  const last = backwards(lossless, side).match(/\.save v\((.*)\)/)?.[1] ?? '';
  const level = async (f: number) =>
    (await simulateAc(backwards(lossless, side), { from: f, to: f, points: 1 })).level(last)[0] ??
    Number.NaN;
  const signal = await level(nominal);
  for (const f of [0.3, 0.8, 1.03, 1.9, 3.1].map((share) => share * nominal)) {
    const theirs = signal - (await level(f));
    expect(takenBeyond(networkBackwards(lossless, side), f, nominal)).toBeCloseTo(theirs, 6);
  }
});

const direct = examples[0];
const converts = examples[3];
if (!direct || !converts) throw new Error('no examples');

// By hand, from the definitions.
describe('what the leaf says follows from what is typed', () => {
  test('a decibel more of the broadcaster is a decibel less in hand, and heard', () => {
    const louder = withEntry(direct, 'strong.level', '-19');
    expect(num(louder, 'strong.blockMargin')).toBeCloseTo(num(direct, 'strong.blockMargin') - 1, 9);
    expect(num(louder, 'strong.broadcasterMost')).toBeCloseTo(
      num(direct, 'strong.broadcasterMost'),
      9,
    );
    const over = (rig: typeof direct) => (at(rig, 'strong.ways') as { over: number }[])[0]?.over;
    expect(over(louder)).toBeCloseTo((over(direct) ?? Number.NaN) + 1, 9);
  });

  test('on the image the band-pass counts for as much as its own leaf says', () => {
    const rows = at(converts, 'strong.ways') as readonly { way: string; bandPass: number }[];
    const image = rows.find(({ way }) => way === 'image');
    expect(image?.bandPass).toBeCloseTo(num(converts, 'front.imageRejection'), 9);
  });

  test('a weak attenuator: each decibel takes three off the product, less what the noise loses', () => {
    const spare = num(direct, 'receive.attenuator');
    const [floor, band] = [num(direct, 'receive.floor'), num(direct, 'receive.bandHere')];
    const power = (dbm: number) => 10 ** (dbm / 10);
    const noise = 10 * Math.log10(power(floor) + power(band - spare));
    expect(num(direct, 'strong.productSpared')).toBeCloseTo(
      num(direct, 'strong.product') - 3 * spare - noise,
      9,
    );
  });
});
