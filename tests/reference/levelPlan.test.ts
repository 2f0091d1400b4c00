import { expect, test } from 'vitest';
import { withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';
import { levelPlan } from '../../src/engine/stages/transmit/levelPlan.ts';

// Common practice, no source: the usual plan of a 5 W rig with diode mixers, level and gain of each
// stage as builders note them, whole decibels.
const plan = [
  ['crystal filter', -3, -25],
  ['two-way amplifier', 16, -9],
  ['mixer', -7, -16],
  ['band-pass filter', -3, -19],
  ['first pre-driver', 16, -3],
  ['second pre-driver', 14, 11],
  ['driver', 12, 23],
  ['final', 14.3, 37.3],
  ['low-pass filter', -0.3, 37],
] as const;

test('the usual plan of a 5 W rig closes: −22 dBm at the modulator, 59 dB to +37 dBm', () => {
  const { onward, levels } = levelPlan(
    plan.map(([, gain]) => gain),
    37,
  );
  expect(onward[0]).toBeCloseTo(59, 9);
  expect(levels[0]).toBeCloseTo(-22, 9);
  plan.forEach(([name, , level], i) => {
    expect(levels[i + 1], name).toBeCloseTo(level, 9);
  });
});

interface Row {
  readonly point: string;
  readonly level: number;
  readonly gain: number;
  readonly clip: number | null;
  readonly forward: number;
  readonly carrier: number | null;
}

const worked = examples.map((rig) => createEvaluator(stages)(rig));
const rowsOf = (one: (typeof worked)[number]) => valueAt(one, 'transmit.chain') as readonly Row[];

// By hand: decibels add up along the chain whichever way it is gone.
test('forwards and backwards meet where the volume is turned down by what there is to spare', () => {
  for (const one of worked) {
    const rows = rowsOf(one);
    const spare = Number(valueAt(one, 'transmit.volumeDown'));
    let sum = rows[0]?.level ?? Number.NaN;
    rows.slice(0, -1).forEach(({ gain }, i) => {
      sum += gain;
      expect(sum).toBeCloseTo(rows[i + 1]?.level ?? Number.NaN, 8);
      const { clip, forward } = rows[i + 1] ?? { clip: null, forward: Number.NaN };
      // As built, nothing passes a limit, and nothing is more than the gain to spare above the plan.
      if (clip !== null) expect(forward).toBeLessThanOrEqual(clip + 1e-9);
      expect(forward).toBeLessThanOrEqual(sum + Math.max(0, spare) + 1e-9);
    });
  }
});

test('the carrier in the last row is null and filter below the power, and so many watts', () => {
  for (const one of worked) {
    const last = rowsOf(one).at(-1);
    const below = Number(valueAt(one, 'transmit.carrierSuppression'));
    const watts = Number(valueAt(one, 'transmit.carrierPower'));
    expect((last?.level ?? 0) - (last?.carrier ?? 0)).toBeCloseTo(below, 9);
    expect(10 * Math.log10(watts / 1e-3)).toBeCloseTo(last?.carrier ?? 0, 9);
  }
});

const byTitle = (part: string) => {
  const rig = examples.find(({ title }) => title.includes(part));
  if (!rig) throw new Error(part);
  return rig;
};
const converting = byTitle('nine-megahertz');
const direct = byTitle('Forty-metre evening');
const workedWith = (rig: typeof converting, entries: Readonly<Record<string, string>>) =>
  createEvaluator(stages)(
    Object.entries(entries).reduce((now, [path, text]) => withEntry(now, path, text), rig),
  );

// By hand: from the modulator on −pad − mismatch + 2 amplifiers − filter − mixer − band-pass + third
// amplifier + driver + final − network, and the audio is what is left for it.
test('a rig with conversion pays for mixer and band-pass, and a third amplifier brings it back', () => {
  const one = workedWith(converting, {});
  const at = (path: string) => Number(valueAt(one, path));
  const points = rowsOf(one).map(({ point }) => point);
  expect(points.slice(10, 15)).toEqual([
    'Mixer, input',
    'Mixer, output',
    'Band-pass, output',
    'Third amplifier, input',
    'Third amplifier, collector',
  ]);
  const rows = rowsOf(one);
  const gain = (point: string) => rows.find((row) => row.point === point)?.gain;
  expect(gain('Mixer, input')).toBeCloseTo(-at('convert.mixerLoss'), 12);
  expect(gain('Mixer, output')).toBeCloseTo(-at('front.loss'), 12);
  expect(gain('Third amplifier, input')).toBeCloseTo(at('transmit.thirdGain'), 12);
  const without = workedWith(converting, { 'transmit.thirdAmplifier': 'no' });
  expect(Number(valueAt(without, 'transmit.netGain'))).toBeCloseTo(
    at('transmit.netGain') - at('transmit.thirdGain'),
    9,
  );
  // The mixer's limit lies 6 dB under its oscillator.
  expect(rows.find(({ point }) => point === 'Mixer, input')?.clip).toBeCloseTo(
    at('convert.oscillatorLevel') - 6,
    12,
  );
});

// By hand: so many decibels below the peak envelope power.
test('what else the mixer makes is told in watts at the antenna', () => {
  const one = workedWith(converting, {});
  const rows = valueAt(one, 'transmit.unwanted') as readonly { below: number; power: number }[];
  expect(rows).toHaveLength(4);
  for (const { below, power } of rows) {
    expect(10 * Math.log10(power / Number(valueAt(one, 'plan.pep')))).toBeCloseTo(below, 9);
  }
});

test('a direct rig knows nothing of mixer, band-pass and third amplifier', () => {
  const one = workedWith(direct, {});
  const other = workedWith(direct, {
    'convert.mixerLoss': '12',
    'transmit.thirdAmplifier': 'no',
    'front.end': '200',
  });
  expect(rowsOf(other)).toEqual(rowsOf(one));
  expect(valueAt(one, 'transmit.unwanted')).toBeNull();
  expect(valueAt(one, 'transmit.thirdGain')).toBeNull();
});

// The two beside the filter work at its frequency, the third at the operating one: moved to where both
// are the same, all three are one.
test('small stages are worked at the frequency that they are used at', () => {
  const near = workedWith(converting, { 'plan.frequency': '8.9M' });
  const far = workedWith(converting, { 'plan.frequency': '28.4M' });
  const at = (one: typeof near, path: string) => Number(valueAt(one, path));
  expect(at(near, 'transmit.amplifierGain')).toBeCloseTo(at(far, 'transmit.amplifierGain'), 9);
  expect(at(far, 'transmit.thirdGain')).toBeLessThan(at(far, 'transmit.amplifierGain') - 0.5);
  expect(
    Math.abs(at(near, 'transmit.thirdGain') - at(near, 'transmit.amplifierGain')),
  ).toBeLessThan(0.3);
});
