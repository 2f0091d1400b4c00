import { describe, expect, test } from 'vitest';
import { lBandwidth } from '../../src/engine/circuit/matching/lBandwidth.ts';
import { lMatch } from '../../src/engine/circuit/matching/lMatch.ts';
import { minimumLossPad } from '../../src/engine/circuit/matching/minimumLossPad.ts';
import { seenThrough } from '../../src/engine/circuit/matching/seenThrough.ts';
import { emptyRig } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { passbandBetween } from '../../src/engine/stages/ends/between.ts';
import { ladderNetlist } from './filter/ladderNetlist.ts';
import { bleeders, simulateAc, value } from './simulator.ts';

const evaluate = createEvaluator(stages);

/** Six crystals of 9 MHz: 14 mH, 3.5 pF, Q 100 000, 2.4 kHz. */
const nine = {
  'plan.marking': '9M',
  'quartz.fsGiven': '9M',
  'quartz.lmGiven': '14m',
  'quartz.c0Given': '3.5p',
  'quartz.quGiven': '100k',
  'filter.crystals': '6',
  'filter.bandwidth': '2400',
  'filter.ripple': '0.1',
};

function work(texts: Readonly<Record<string, string>> = {}) {
  const said = { ...nine, ...texts };
  const entries = Object.fromEntries(Object.entries(said).map(([path, text]) => [path, { text }]));
  const worked = evaluate({ ...emptyRig('ends'), entries });
  const figure = (path: string) => {
    const [stage = '', key = ''] = path.split('.');
    return worked.stages[stage]?.results[key] as number;
  };
  return { worked, figure, problems: worked.stages.ends?.problems ?? [] };
}

const between = (r: number) => ({
  'ends.sourceIs': 'own',
  'ends.sourceOwn': `${r}`,
  'ends.sourceBy': 'straight',
  'ends.loadIs': 'own',
  'ends.loadOwn': `${r}`,
  'ends.loadBy': 'straight',
});

describe('L match', () => {
  // Source: closed form by hand: 50 to 200 Ω has Q √3, 86.6 Ω in series and 115.5 Ω across.
  test('50 to 200 Ω at 9 MHz', () => {
    const match = lMatch(50, 200, 9e6);
    expect(match?.q).toBeCloseTo(Math.sqrt(3), 12);
    expect(match?.seriesX).toBeCloseTo(86.6, 1);
    expect(match?.shuntX).toBeCloseTo(115.5, 1);
    expect((match?.lowpass.l ?? 0) * 1e6).toBeCloseTo(1.531, 3);
    expect((match?.lowpass.c ?? 0) * 1e12).toBeCloseTo(153.1, 1);
  });
  test.each([
    [50, 200],
    [50, 3023],
    [450, 50],
  ])('%f to %f Ω: the simulator finds all of the power behind both forms', async (from, to) => {
    const match = lMatch(from, to, 9e6);
    if (match === null) throw new Error('nothing to match');
    const forms = [
      [`ls in out ${value(match.lowpass.l)}`, `cs %n 0 ${value(match.lowpass.c)}`],
      [`cs in out ${value(match.highpass.c)}`, `ls %n 0 ${value(match.highpass.l)}`],
    ];
    for (const [series = '', shunt = ''] of forms) {
      const run = await simulateAc(
        `v1 e 0 dc 0 ac 1
         rs e in ${value(from)}
         ${series}
         ${shunt.replace('%n', from < to ? 'out' : 'in')}
         rl out 0 ${value(to)}
         ${bleeders(['in', 'out'])}`,
        { from: 9e6, to: 9e6, points: 1 },
      );
      // Power in the load over what the source can give: |V|²·4·Rs/Rl.
      const gain = (run.level('out')[0] ?? 0) + 10 * Math.log10((4 * from) / to);
      expect(gain).toBeCloseTo(0, 6);
    }
  });
  test.each([2, 4, 16, 100])('ratio %f is good to 0.1 dB over at least the band given', (ratio) => {
    const [low, high, f] = [50, 50 * ratio, 9e6];
    const match = lMatch(low, high, f);
    if (match === null) throw new Error('nothing to match');
    const half = lBandwidth(f, match.q, 0.1) / 2;
    for (const at of [f - half, f + half]) {
      const w = 2 * Math.PI * at;
      const { r, x } = seenThrough(low, 0, [
        { place: 'series', r: 0, x: w * match.lowpass.l },
        { place: 'across', g: 0, b: w * match.lowpass.c },
      ]);
      const loss = -10 * Math.log10((4 * r * high) / ((r + high) ** 2 + x * x));
      expect(loss).toBeLessThan(0.11);
      if (ratio >= 16) expect(loss).toBeGreaterThan(0.085);
    }
  });
});

describe('resistors', () => {
  // Source: the usual pad between 50 and 75 Ω, any handbook on attenuators: 43.3 and 86.6 Ω, 5.72 dB.
  test('minimum-loss pad 75 to 50 Ω', () => {
    const pad = minimumLossPad(50, 75);
    expect(pad?.series).toBeCloseTo(43.3, 1);
    expect(pad?.shunt).toBeCloseTo(86.6, 1);
    expect(pad?.loss).toBeCloseTo(5.72, 2);
    const seen = seenThrough(50, 0, [
      { place: 'across', g: 1 / (pad?.shunt ?? 1), b: 0 },
      { place: 'series', r: pad?.series ?? 0, x: 0 },
    ]);
    expect(seen.r).toBeCloseTo(75, 9);
    expect(-10 * Math.log10(seen.passes)).toBeCloseTo(pad?.loss ?? 0, 9);
  });
  test('loss through parts beside a reactive device, as a source and as a load, in the simulator', async () => {
    const [r, x, f] = [80, 60, 9e6];
    const steps = [
      { place: 'across', g: 1 / 300, b: 0 },
      { place: 'series', r: 120, x: 0 },
    ] as const;
    const seen = seenThrough(r, x, steps);
    const coil = value(x / (2 * Math.PI * f));
    // A conjugate load on the far side takes all that is to be had there.
    const c = value(1 / (2 * Math.PI * f * seen.x));
    const forward = await simulateAc(
      `v1 e 0 dc 0 ac 1
       rd e a ${value(r)}
       ld a b ${coil}
       r2 b 0 300
       r1 b d 120
       cc d out ${c}
       rl out 0 ${value(seen.r)}
       ${bleeders(['out', 'd'])}`,
      { from: f, to: f, points: 1 },
    );
    const taken = (forward.level('out')[0] ?? 0) + 10 * Math.log10((4 * r) / seen.r);
    expect(taken).toBeCloseTo(10 * Math.log10(seen.passes), 6);
    const backward = await simulateAc(
      `i1 0 d dc 0 ac 1
       r1 d b 120
       r2 b 0 300
       ld b a ${coil}
       rd a 0 ${value(r)}
       ${bleeders(['d'])}`,
      { from: f, to: f, points: 1 },
    );
    const into = (backward.node('d').re[0] ?? 0) * 1;
    const inDevice = 10 ** ((backward.level('a')[0] ?? 0) / 10) / r;
    expect(inDevice / into).toBeCloseTo(seen.passes, 9);
    expect(into).toBeCloseTo(seen.r, 6);
  });
});

// Source: a 6-crystal filter at 9 MHz worked beforehand with another model, figures rounded there.
describe('wrong ends', () => {
  const right = work().figure;
  const r = right('filter.ends');
  test('the filter is the one meant', () => {
    expect(r).toBeGreaterThan(190);
    expect(r).toBeLessThan(210);
  });
  test.each([
    [0.5, 2, 5],
    [2, 2, -6],
  ])('× %f: about %f dB of ripple, width %f %%', (times, ripple, percent) => {
    const { figure } = work(between(r * times));
    expect(Math.abs(figure('ends.realRipple') - ripple)).toBeLessThan(0.15);
    const change = 100 * (figure('ends.realWidth') / figure('ends.rightWidth') - 1);
    expect(Math.abs(change - percent)).toBeLessThan(0.6);
  });
  test('a quarter of it: 5.2 dB', () => {
    expect(work(between(r / 4)).figure('ends.realRipple')).toBeCloseTo(5.2, 1);
  });
  test('straight into 50 Ω: humps of 5 dB, 1.6 dB more loss, wider and steeper', () => {
    const { figure, problems } = work({
      ...between(50),
      'filter.sourceResistance': '50',
      'filter.loadResistance': '50',
    });
    expect(figure('ends.realRipple')).toBeCloseTo(5.0, 1);
    expect(Math.abs(figure('ends.realLoss') - figure('ends.rightLoss') - 1.6)).toBeLessThan(0.1);
    expect(figure('ends.realWidth') / figure('ends.rightWidth')).toBeGreaterThan(1.045);
    expect(figure('filter.shape')).toBeLessThan(2.0);
    expect(figure('ends.verdict')).toBe('fails');
    expect(problems.map(({ field }) => field)).toEqual(['ends.sourceBy', 'ends.loadBy']);
  });
  test('right ends cost nothing, and say so', () => {
    const { figure, problems } = work(between(r));
    expect(Math.abs(figure('ends.rippleCost'))).toBeLessThan(1e-6);
    expect(figure('ends.verdict')).toBe('holds');
    expect(problems).toEqual([]);
  });
  test('complex ends: loss and edges as in the simulator', async () => {
    const { worked, figure } = work();
    const ladder = worked.stages.filter?.results.ladder as Parameters<typeof ladderNetlist>[0];
    // The netlist's capacitors have no loss.
    const lossless = { ...ladder, capacitorQ: Number.POSITIVE_INFINITY };
    const [low3, high3] = [figure('filter.low3'), figure('filter.high3')];
    const found = passbandBetween(lossless, [120, 60], [120, -40], low3, high3);
    for (const [f, down] of [
      [found.band.low, 3],
      [found.band.peak, 0],
      [found.band.high, 3],
      [found.dip.at ?? 0, found.dip.depth],
    ] as const) {
      const run = await simulateAc(ladderNetlist(found.ladder, f), { from: f, to: f, points: 1 });
      const gain = (run.level('out')[0] ?? 0) + 10 * Math.log10(4);
      expect(gain).toBeCloseTo(found.band.gain - down, 6);
    }
  });
});

// Source: series resistors R − 50 at both ends cost so much, worked beforehand and by hand: 20 log(R/50).
describe('an analyser of 50 Ω with resistors', () => {
  test.each([
    [100, 6],
    [200, 12],
    [500, 20],
    [1000, 26],
    [2000, 32],
  ])('a filter of %f Ω costs %f dB of range', (r, cost) => {
    const seen = seenThrough(50, 0, [{ place: 'series', r: r - 50, x: 0 }]);
    expect(-20 * Math.log10(seen.passes)).toBeCloseTo(cost, 1);
  });
  test('what it reads at the best point, in the simulator', async () => {
    const { figure, worked } = work({ 'filter.capacitorQ': '100k' });
    const ladder = worked.stages.filter?.results.ladder as Parameters<typeof ladderNetlist>[0];
    const r = figure('filter.ends');
    const peak = figure('ends.rightPeak');
    expect(figure('ends.trickSource')).toBeCloseTo(r - 50, 9);
    const { source: _, load: __, ...parts } = ladder;
    // The receiver is the last 50 Ω of the load; straight through it would show half of the volt.
    const netlist = ladderNetlist(
      { ...parts, capacitorQ: Number.POSITIVE_INFINITY, source: [r, 0], load: [r, 0] },
      peak,
    );
    const run = await simulateAc(netlist, { from: peak, to: peak, points: 1 });
    const reading = (run.level('out')[0] ?? 0) + 20 * Math.log10((50 / r) * 2);
    expect(Math.abs(reading - figure('ends.trickReading'))).toBeLessThan(1e-3);
    expect(figure('ends.trickDepth')).toBeCloseTo(70 + reading, 1);
  });
  test('is no help where the filter wants less than the ports have', () => {
    expect(work({ 'ends.port': '600' }).figure('ends.trickSource')).toBeNull();
  });
});

describe('ways to match', () => {
  test('each brings a device of 50 Ω to what the filter wants', () => {
    const { worked, figure } = work({ 'ends.sourceIs': 'fifty' });
    const rows = worked.stages.ends?.results.sourceWays as readonly {
      way: string;
      seen: number;
      turns: string | null;
      loss: number;
    }[];
    const r = figure('filter.ends');
    for (const { way, seen, loss } of rows) {
      if (way === 'straight') expect(seen).toBe(50);
      else if (way === 'transformer') expect(Math.abs(seen / r - 1)).toBeLessThan(0.08);
      else expect(seen).toBeCloseTo(r, 6);
      if (way !== 'resistor' && way !== 'pad') expect(Math.abs(loss)).toBe(0);
    }
    expect(rows.find(({ way }) => way === 'transformer')?.turns).toBe('1 : 2');
    // A resistor in series: 10 log(R/50).
    expect(rows.find(({ way }) => way === 'resistor')?.loss).toBeCloseTo(
      10 * Math.log10(r / 50),
      9,
    );
  });
  test('the whole loss counts the resistors at both ends', () => {
    const { figure } = work({
      'ends.sourceIs': 'fifty',
      'ends.sourceBy': 'resistor',
      'ends.loadIs': 'fifty',
      'ends.loadBy': 'resistor',
    });
    expect(figure('ends.wholeLoss')).toBeCloseTo(-figure('ends.trickReading'), 6);
  });
});
