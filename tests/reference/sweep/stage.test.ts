import { describe, expect, test } from 'vitest';
import { crystalOf, seriesResonance } from '../../../src/engine/circuit/crystal.ts';
import type { Work } from '../../../src/engine/fields/stage.ts';
import { emptyRig } from '../../../src/engine/rig/document.ts';
import { createEvaluator } from '../../../src/engine/rig/evaluate.ts';
import { exampleSweeps } from '../../../src/engine/rig/exampleSweeps.ts';
import { dimensionsOff, reckon } from '../../../src/engine/rig/reckon.ts';
import { stages } from '../../../src/engine/rig/stages.ts';
import { unfold, workingCount } from '../../../src/engine/rig/unfold.ts';
import type { sweepFields } from '../../../src/engine/stages/sweep/fields.ts';
import { sweep as sweepStage } from '../../../src/engine/stages/sweep/stage.ts';
import {
  across,
  loadedWidth,
  noisy,
  type SimulatedSweep,
  simulatedSweep,
} from './simulatedSweep.ts';

const evaluator = createEvaluator(stages);

function worked(texts: Record<string, string>) {
  const entries = Object.fromEntries(Object.entries(texts).map(([path, text]) => [path, { text }]));
  const whole = evaluator({ ...emptyRig('swept'), entries });
  const stage = whole.stages.sweep;
  if (!stage) throw new Error('no stage');
  return {
    whole,
    results: stage.results as Work<typeof sweepFields>['results'],
    problems: stage.problems,
  };
}

const says = (texts: Record<string, string>) =>
  worked(texts)
    .problems.map(({ field, says, try: help }) => `${field}: ${says} ${help}`)
    .join('\n');

const number = (x: number | null): number => x ?? Number.NaN;

/** A sweep as a text in Hz and dB. */
const written = ({ frequency, level }: SimulatedSweep) =>
  `Hz,dB\n${[...frequency].map((f, i) => `${f.toFixed(2)},${(level[i] ?? 0).toFixed(3)}`).join('\n')}`;

const crystal = crystalOf(9e6, 14e-3, 60e3, 3.5e-12);
const fs = seriesResonance(crystal);
const plan = { 'plan.marking': '9.003M' };
const swept = async (rt: number, sweep: { from: number; to: number; points: number }, db = 0.05) =>
  noisy(await simulatedSweep(crystal, rt, sweep), db, 11);

describe('the example sweeps', () => {
  // Source: the circuit simulator was given these crystals (see the maker of the examples).
  test.each([
    ['forty', '7.2M', 7.2e6, 30e-3, 70e3, 4e-12, {}],
    ['twenty', '14.318M', 14.318e6, 7.5e-3, 80e3, 3e-12, { 'sweep.rt': '50' }],
    ['eighty', '3.6864M', 3.6864e6, 0.13, 90e3, 5.8e-12, {}],
  ] as const)('%s', (key, marking, f, lm, qu, c0, other) => {
    const { results, problems } = worked({
      'plan.marking': marking,
      'sweep.file': exampleSweeps[key],
      ...other,
    });
    expect(problems).toEqual([]);
    expect(Math.abs(number(results.fs) - f)).toBeLessThan(4 * number(results.fsError));
    expect(Math.abs(number(results.lm) - lm)).toBeLessThan(4 * number(results.lmError));
    expect(Math.abs(number(results.qu) - qu)).toBeLessThan(4 * number(results.quError));
    expect(Math.abs(number(results.c0) - c0)).toBeLessThan(4 * number(results.c0Error));
    expect(Math.abs(number(results.lm) / lm - 1)).toBeLessThan(0.005);
    expect(Math.abs(number(results.c0) / c0 - 1)).toBeLessThan(0.02);
    expect(results.c0From).toBe('sweep');
    expect(results.sweep?.frequency.length).toBeLessThanOrEqual(300);
  });
});

describe('workings of a sweep', () => {
  const checked = (texts: Record<string, string>) => {
    const { whole } = worked(texts);
    let count = 0;
    for (const key of Object.keys(sweepStage.workings)) {
      const rows = workingCount(whole, sweepStage, key);
      for (let index = 0; index < rows; index += Math.max(1, Math.floor(rows / 12))) {
        const one = unfold(whole, sweepStage, key, index);
        if (one === null || 'rule' in one.working) continue;
        count += 1;
        const reckoned = reckon(one);
        const value = 'left' in one.working ? reckoned?.right : one.value;
        const off = Math.abs(Number(reckoned?.value) - Number(value));
        expect(off, `${key}[${index}]`).toBeLessThanOrEqual(
          1e-9 * Math.max(Math.abs(Number(value)), 1e-300),
        );
        expect(dimensionsOff(one), key).toBeNull();
      }
    }
    return count;
  };
  test.each([
    ['level and angle', { 'sweep.file': exampleSweeps.forty }],
    ['level alone', { 'sweep.file': exampleSweeps.twenty }],
    ['level freed', { 'sweep.file': exampleSweeps.twenty, 'sweep.levelFree': 'free' }],
    [
      'fixture freed, stray taken off',
      { 'sweep.file': exampleSweeps.eighty, 'sweep.shuntFree': 'free', 'measure.beside': '0.4p' },
    ],
    ['a fixture given', { 'sweep.file': exampleSweeps.eighty, 'sweep.shunt': '12p' }],
    ['no file, but a marking', {}],
  ])('%s', (_, texts) => {
    expect(checked({ ...plan, ...texts })).toBeGreaterThan(7);
  });
  test('C0 held', async () => {
    const w = loadedWidth(crystal, 50);
    const text = written(await swept(50, { from: fs - 3 * w, to: fs + 3 * w, points: 80 }, 0.2));
    expect(checked({ ...plan, 'sweep.file': text })).toBeGreaterThan(30);
    expect(checked({ ...plan, 'sweep.file': text, 'sweep.c0Known': '3.6p' })).toBeGreaterThan(30);
  });
});

describe('it says when it cannot, and why', () => {
  const w = loadedWidth(crystal, 50);
  test('the peak is not in the sweep', async () => {
    const above = written(await swept(50, { from: fs + 2 * w, to: fs + 30e3, points: 101 }));
    expect(says({ ...plan, 'sweep.file': above })).toContain('The peak is not in the sweep');
    const below = written(await swept(50, { from: fs - 20 * w, to: fs - w, points: 101 }));
    const { results, problems } = worked({ ...plan, 'sweep.file': below });
    expect(problems[0]?.try).toBe('Sweep further up.');
    expect(results.lm).toBeNull();
  });

  test('rows too far apart', async () => {
    const coarse = written(await swept(12.5, across(crystal, 0.5, 1.3, 51)));
    const { results } = worked({ ...plan, 'sweep.file': coarse, 'sweep.rt': '12.5' });
    expect(says({ ...plan, 'sweep.file': coarse, 'sweep.rt': '12.5' })).toMatch(
      /rows at the peak are .* apart, the peak is .* wide/,
    );
    // Still right, by its skirts: within what it says itself.
    expect(Math.abs(number(results.lm) - 14e-3)).toBeLessThan(4 * number(results.lmError));
  });

  test('C0 is not told', async () => {
    const narrow = written(await swept(50, { from: fs - w, to: fs + w, points: 41 }, 0.3));
    expect(says({ ...plan, 'sweep.file': narrow })).toMatch(
      /does not tell C0: 4\.0\spF, as is usual/,
    );
    const { results } = worked({ ...plan, 'sweep.file': narrow, 'sweep.c0Known': '3.4p' });
    expect(results.c0From).toBe('known');
    expect(results.c0).toBeCloseTo(3.4e-12, 16);
  });

  test('the capacitance measured with a meter is used, and the fixture’s stray taken off', async () => {
    const narrow = written(await swept(50, { from: fs - w, to: fs + w, points: 41 }, 0.3));
    const { results } = worked({
      ...plan,
      'sweep.file': narrow,
      'measure.c0Read': '3.9p',
      'measure.meterStray': '0.5p',
      'measure.beside': '0.3p',
    });
    expect(results.c0From).toBe('known');
    expect(results.c0All).toBeCloseTo(3.7e-12, 16);
    expect(results.c0).toBeCloseTo(3.4e-12, 16);
  });

  test('the analyser is too fast', () => {
    const file = { ...plan, 'plan.marking': '7.2M', 'sweep.file': exampleSweeps.forty };
    expect(says({ ...file, 'sweep.ifBandwidth': '100' })).toBe('');
    expect(says({ ...file, 'sweep.ifBandwidth': '300' })).toContain('only a few ring times');
    expect(says({ ...file, 'sweep.ifBandwidth': '1k' })).toContain('smeared and shifted');
  });

  test('a unit that is missing or wrong', () => {
    const without = exampleSweeps.forty.replace('# MHz S', '# S');
    expect(says({ ...plan, 'sweep.file': without })).toMatch(
      /sweep\.unit: The rows would lie about 7\.2\d*\sGHz, where no crystal is; the text names no unit\. Choose MHz/,
    );
    const chosen = worked({ 'plan.marking': '7.2M', 'sweep.file': without, 'sweep.unit': 'MHz' });
    expect(number(chosen.results.lm)).toBeCloseTo(30e-3, 4);
    expect(chosen.problems).toEqual([]);
  });

  test('more than a wire passes', async () => {
    const sweep = await swept(50, across(crystal, 0.3, 1.3, 301));
    const louder = written({ ...sweep, level: sweep.level.map((x) => x - 10) });
    const text = { ...plan, 'sweep.file': louder, 'sweep.through': '-13' };
    expect(says(text)).toContain('more comes through at the peak than through a wire');
    const right = worked({ ...text, 'sweep.through': '-10' });
    expect(Math.abs(number(right.results.rm) - crystal.rm)).toBeLessThan(
      4 * number(right.results.rmError),
    );
  });

  test('volts without those of a wire leave the level free', async () => {
    const sweep = await swept(50, across(crystal, 0.3, 1.3, 301), 0.02);
    const volts = `MHz;mV\n${[...sweep.frequency]
      .map((f, i) => `${f / 1e6};${800 * 10 ** ((sweep.level[i] ?? 0) / 20)}`)
      .join('\n')}`;
    const text = { ...plan, 'sweep.file': volts };
    const free = worked(text);
    expect(says(text)).toContain('the level is found by the fit');
    expect(Math.abs(number(free.results.levelFound) - 20 * Math.log10(0.8))).toBeLessThan(
      4 * number(free.results.levelError),
    );
    const held = worked({ ...text, 'sweep.throughVolts': '0.8' });
    expect(held.results.levelFound).toBeNull();
    expect(Math.abs(number(held.results.lm) - 14e-3)).toBeLessThan(
      4 * number(held.results.lmError),
    );
  });

  test('a reflection of the crystal at the end of a line is as good', async () => {
    // The crystal to ground: S11 = 1 − 2·S21 of a fixture of 25 Ω, by the closed form.
    const sweep = await swept(25, across(crystal, 0.3, 1.3, 301), 0.02);
    const rows = [...sweep.frequency].map((f, i) => {
      const size = 10 ** ((sweep.level[i] ?? 0) / 20);
      const [re, im] = [Math.cos(sweep.phase[i] ?? 0), Math.sin(sweep.phase[i] ?? 0)];
      return `${f} ${1 - 2 * size * re} ${-2 * size * im}`;
    });
    const text = { ...plan, 'sweep.file': `# Hz S RI R 50\n${rows.join('\n')}` };
    const { results } = worked(text);
    expect(results.resistance).toBe(25);
    expect(Math.abs(number(results.lm) - 14e-3)).toBeLessThan(4 * number(results.lmError));
    expect(Math.abs(number(results.rm) - crystal.rm)).toBeLessThan(4 * number(results.rmError));
  });

  test('nothing that can be read', () => {
    expect(says({ 'sweep.file': 'hello' })).toContain('No rows of numbers');
    expect(says({ 'sweep.file': '1 2\n3 4' })).toContain('2 rows are too few');
    const flat = Array.from({ length: 40 }, (_, i) => `${9e6 + i} -3`).join('\n');
    expect(says({ 'sweep.file': flat })).toContain('there is no peak');
    const noise = Array.from({ length: 60 }, (_, i) => `${9e6 + i} -${(i * 7919) % 61}`).join('\n');
    expect(worked({ 'sweep.file': noise }).problems.some(({ weight }) => weight === 'stops')).toBe(
      true,
    );
  });
});

test('without a file it says how to sweep a crystal of the marking', () => {
  const { results, problems } = worked({ 'plan.marking': '10M', 'sweep.rt': '12.5' });
  expect(problems).toEqual([]);
  // Typical 10 MHz crystal: 11.4 mH, 9.5 Ω (table of the makers’ data, from memory):
  // (25 + 9.5)/(2π · 11.4 mH) is 482 Hz.
  expect(number(results.width)).toBeGreaterThan(470);
  expect(number(results.width)).toBeLessThan(490);
  expect(number(results.peakFrom)).toBeLessThan(number(results.peakTo));
});
