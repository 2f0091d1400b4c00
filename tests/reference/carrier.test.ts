import { describe, expect, test } from 'vitest';
import { gainAt } from '../../src/engine/circuit/ladderGain.ts';
import type { CarrierSeen } from '../../src/engine/stages/carrier/seen.ts';
import { workCarrier } from '../../src/engine/stages/carrier/work.ts';
import { printedFilter, printedFilterAtSix, type ReadFilter } from './carrierFilter.ts';
import { bleeders, simulateAc, value } from './simulator.ts';

const seenWith = (filter: ReadFilter, given: Partial<CarrierSeen>): CarrierSeen => ({
  wantedSideband: 'lower',
  ambient: 300,
  fs: 7.2e6,
  lm: 30e-3,
  rm: (2 * Math.PI * 7.2e6 * 30e-3) / 70_000,
  c0: 4e-12,
  ...filter,
  rule: 'attenuation',
  attenuationGiven: 20,
  offsetGiven: 300,
  frequencyGiven: null,
  c1: 220e-12,
  c2: 220e-12,
  standing: 1e-3,
  ft: 150e6,
  ccb: 4e-12,
  stray: 3e-12,
  coilQ: 50,
  crystals: 1,
  crystalOffset: 0,
  chosen: null,
  bag: null,
  inFilter: null,
  ...given,
});

const forty = printedFilter(7.2e6, 30e-3, 70_000, 4e-12, 6, 2400);

// Source: the 7.2 MHz filter worked beforehand with an independent circuit solver.
describe('carrier of the 7.2 MHz filter, 6 crystals, 2400 Hz', () => {
  const lower = workCarrier(seenWith(forty, {})).results;
  const upper = workCarrier(seenWith(forty, { wantedSideband: 'upper' })).results;
  const within = (value: number | null, expected: number, off: number) =>
    expect(Math.abs((value ?? Number.NaN) - expected)).toBeLessThanOrEqual(off);

  test('lower sideband: 3010 Hz above fs, 15.5 pF', () => {
    within(lower.aboveFs, 3010, 1);
    within((lower.loadCapacitance ?? 0) / 1e-12, 15.5, 0.05);
    within(lower.attenuation, 20, 1e-6);
    expect(lower.sideband).toBe('lower');
  });
  test('lower sideband: heard from 308 to 2590 Hz at −3 dB', () => {
    within(lower.audioLow3, 308, 1);
    within(lower.audioHigh3, 2590, 1);
  });
  test('lower sideband: the other one is down 32 dB at 300 Hz, 60 dB at 1 kHz', () => {
    within(lower.suppression300, 32, 0.5);
    within(lower.suppression1k, 60, 0.5);
    within(lower.suppressionWorst, 32, 0.5);
  });
  test('upper sideband: 5 Hz above fs, 23 dB and 46 dB', () => {
    within(upper.aboveFs, 5, 1);
    within(upper.suppression300, 23, 0.5);
    within(upper.suppression1k, 46, 0.5);
    expect(upper.sideband).toBe('upper');
  });
  test('a capacitor raises to the one, a coil lowers to the other', () => {
    expect(lower.part).toBe('capacitor');
    expect(upper.part).toBe('coil');
    expect(lower.frequency).toBeGreaterThan(lower.bare ?? Number.NaN);
    expect(upper.frequency).toBeLessThan(upper.bare ?? 0);
  });
});

// Source: carrier placement with Qu 100 000 near 9 MHz, worked beforehand with another model.
// Their ripple isn't stated; 0.05 to 0.2 dB move the figures by 2 dB at the carrier and 2.5 dB on the
// other sideband, so to that. The other sideband is given there against the passband.
describe('offsets from the −6 dB edge', () => {
  const rows: [4 | 6 | 8, number, number, number, number, readonly number[], readonly number[]][] =
    [
      [4, 2380, 200, 11.5, 12.4, [19, 23, 31], [21, 26, 36]],
      [4, 2380, 300, 14.1, 15.6, [21, 25, 33], [24, 28, 38]],
      [4, 2380, 400, 16.6, 18.5, [23, 26, 34], [26, 30, 39]],
      [6, 2360, 200, 15.4, 16.7, [27, 34, 46], [31, 38, 54]],
      [6, 2360, 300, 19.8, 21.9, [31, 37, 49], [35, 42, 56]],
      [6, 2360, 400, 23.8, 26.6, [34, 39, 51], [38, 45, 59]],
      [8, 2340, 200, 20.5, 22.8, [39, 48, 65], [44, 54, 75]],
      [8, 2340, 300, 27.3, 30.6, [43, 52, 68], [49, 59, 79]],
      [8, 2340, 400, 33.2, 37.4, [48, 55, 71], [54, 63, 82]],
    ];
  test.each(rows)('%i crystals, %i Hz wide at −6 dB, %i Hz out', (n, width, out, ...expected) => {
    const [below, above, otherBelow, otherAbove] = expected;
    const filter = printedFilterAtSix(9e6, 14e-3, 100_000, 3.5e-12, n, width);
    const crystal = { fs: 9e6, lm: 14e-3, rm: (2 * Math.PI * 9e6 * 14e-3) / 1e5, c0: 3.5e-12 };
    const place = (wantedSideband: 'lower' | 'upper') =>
      workCarrier(
        seenWith(filter, { ...crystal, wantedSideband, rule: 'offset', offsetGiven: out }),
      ).results;
    const level = (f: number) => -filter.loss - gainAt(filter.ladder, f);
    const [usb, lsb] = [place('upper'), place('lower')];
    expect(Math.abs((usb.attenuation ?? 0) - below)).toBeLessThan(2);
    expect(Math.abs((lsb.attenuation ?? 0) - above)).toBeLessThan(2);
    [300, 500, 1000].forEach((tone, i) => {
      const low = level((usb.frequency ?? 0) - tone);
      const high = level((lsb.frequency ?? 0) + tone);
      expect(Math.abs(low - (otherBelow[i] ?? 0))).toBeLessThan(2.5);
      expect(Math.abs(high - (otherAbove[i] ?? 0))).toBeLessThan(2.5);
    });
    expect(usb.audioLow6).toBeCloseTo(out, 6);
    expect(lsb.audioLow6).toBeCloseTo(out, 6);
  });

  // Source: the same model: the two rules coincide at six crystals only.
  test.each<[4 | 6 | 8, number, number]>([
    [4, 550, 450],
    [6, 300, 260],
    [8, 190, 160],
  ])('with %i crystals −20 dB lies about %i Hz out below, %i Hz above', (n, low, high) => {
    const filter = printedFilterAtSix(9e6, 14e-3, 100_000, 3.5e-12, n, 2360);
    const out = (wantedSideband: 'lower' | 'upper') =>
      workCarrier(seenWith(filter, { fs: 9e6, wantedSideband })).results.outside ?? 0;
    expect(Math.abs(out('upper') / low - 1)).toBeLessThan(0.12);
    expect(Math.abs(out('lower') / high - 1)).toBeLessThan(0.12);
  });
});

// Source: circuit simulator, run live.
test('suppression at 300 Hz, 500 Hz and 1 kHz as in the simulator', async () => {
  const { ladder } = forty;
  const { results } = workCarrier(seenWith(forty, {}));
  const carrier = results.frequency ?? 0;
  const n = ladder.lm.length;
  const lines = [`v1 s 0 dc 0 ac 1`, `rs s n0 ${value(ladder.source[0])}`];
  for (let k = 0; k < n; k += 1) {
    const out = ladder.series[k] ? `y${k}` : `n${k + 1}`;
    lines.push(
      `lm${k} n${k} a${k} ${value(ladder.lm[k] ?? 0)}`,
      `rm${k} a${k} b${k} ${value(ladder.rm[k] ?? 0)}`,
      `cm${k} b${k} ${out} ${value(ladder.cm[k] ?? 0)}`,
      `c0${k} n${k} ${out} ${value(ladder.c0[k] ?? 0)}`,
    );
    if (ladder.series[k]) lines.push(`cs${k} ${out} n${k + 1} ${value(ladder.series[k] ?? 0)}`);
    if (ladder.series[k]) lines.push(bleeders([out]));
    if (k < n - 1) lines.push(`cc${k} n${k + 1} 0 ${value(ladder.coupling[k] ?? 0)}`);
    if (k < n - 1) lines.push(bleeders([`n${k + 1}`]));
  }
  lines.push(`rl n${n} 0 ${value(ladder.load[0])}`);
  const netlist = lines.join('\n');
  const level = async (f: number) => {
    const run = await simulateAc(netlist, { from: f, to: f, points: 1 });
    return run.level(`n${n}`)[0] ?? 0;
  };
  for (const [tone, ours] of [
    [300, results.suppression300],
    [500, results.audio?.suppression[8]],
    [1000, results.suppression1k],
  ] as const) {
    const theirs = (await level(carrier - tone)) - (await level(carrier + tone));
    expect(Math.abs((ours ?? 0) - theirs)).toBeLessThan(1e-6);
  }
});

describe('what is said', () => {
  const said = (given: Partial<CarrierSeen>) => workCarrier(seenWith(forty, given));

  test('too far up: the nearest frequency in reach, and that two crystals would do', () => {
    const out = said({ rule: 'frequency', frequencyGiven: 7.2105e6, attenuationGiven: 20 });
    const nearest = out.results.rules?.find((row) => row.rule === 'nearest');
    expect(nearest?.frequency).toBe(out.results.reachHigh);
    expect(nearest?.seriesC ?? 0).toBeCloseTo(2e-12, 15);
    expect(out.results.seriesC).toBeNull();
    const problem = out.problems.find((p) => p.field === 'carrier.frequencyGiven');
    expect(problem?.weight).toBe('stops');
    expect(problem?.try).toContain('2 crystals in parallel');
  });

  test('too far down', () => {
    const out = said({ rule: 'frequency', frequencyGiven: 7.1975e6, wantedSideband: 'upper' });
    expect(out.problems[0]?.says).toContain('reaches down to');
    const nearest = out.results.rules?.find((row) => row.rule === 'nearest');
    expect(nearest?.frequency).toBe(out.results.reachLow);
  });

  test('no frequency given, or one that is not near the filter', () => {
    expect(said({ rule: 'frequency' }).problems[0]?.field).toBe('carrier.frequencyGiven');
    const far = said({ rule: 'frequency', frequencyGiven: 9e6 });
    expect(far.problems[0]?.weight).toBe('stops');
    expect(far.results.suppression300).toBeNull();
    expect(far.results.rules).toHaveLength(2);
  });

  test('on the wrong side the other sideband comes out', () => {
    const out = said({ rule: 'frequency', frequencyGiven: 7.2e6 });
    expect(out.results.sideband).toBe('upper');
    expect(out.problems.some((p) => p.says.includes('other sideband comes out'))).toBe(true);
  });

  test('too little current to start', () => {
    const out = said({ standing: 0.1e-3, c1: 470e-12, c2: 470e-12 });
    expect(out.results.startMargin).toBeLessThan(3);
    expect(out.problems.some((p) => p.field === 'carrier.standing')).toBe(true);
  });

  test('the drawer: E24, its frequency, a trimmer that covers the wanted value', () => {
    const { results } = said({});
    expect(results.stockC).toBe(18e-12);
    expect(Math.abs((results.stockFrequency ?? 0) - (results.frequency ?? 0))).toBeLessThan(60);
    expect(results.trimmer).toContain('trimmer of');
  });
});

describe('the carrier crystal out of the bag', () => {
  const row = (label: string, fs: number, lm: number | null = null) => ({
    line: 1,
    label,
    fs,
    off: 0,
    lm,
    rm: null,
    c0: null,
    standing: 'counts' as const,
    note: '',
  });
  const bag = [row('A', 7.2001e6), row('B', 7.2003e6, 31e-3), row('C', 7.2002e6, 29e-3)];
  const work = (chosen: string, given: Partial<CarrierSeen> = {}) =>
    workCarrier(seenWith(forty, { chosen, bag, ...given }));

  test('one named is as one so many hertz off', () => {
    const named = work('a').results;
    const off = workCarrier(seenWith(forty, { crystalOffset: 100 })).results;
    expect(named.seriesC).toBeCloseTo(off.seriesC ?? 0, 18);
    expect(named.crystalFs).toBe(7.2001e6);
  });

  // Two crystals in parallel, each with its own arm: their admittances, written out.
  test('two named, unlike, are pulled to where both together balance the load', () => {
    const { results } = work('B C');
    const { frequency, reactance, together } = results;
    expect(together).toBe(2);
    const w = 2 * Math.PI * (frequency ?? 0);
    const arm = (fs: number, lm: number) => {
      const x = w * lm * (1 - ((2 * Math.PI * fs) / w) ** 2);
      return -1 / x;
    };
    const b = arm(7.2003e6, 31e-3) + arm(7.2002e6, 29e-3) + w * 2 * 4e-12;
    expect(Math.abs((reactance ?? 0) / (-1 / b) - 1)).toBeLessThan(2e-3);
  });

  test('what is wrong with a name is said, and a crystal like the filter’s is taken', () => {
    const like = workCarrier(seenWith(forty, {})).results.seriesC;
    for (const chosen of ['Z', 'A A', 'A B C A']) {
      const { results, problems } = work(chosen);
      expect(problems[0]).toMatchObject({ field: 'carrier.chosen', weight: 'stops' });
      expect(results.seriesC).toBe(like);
    }
    expect(work('A', { bag: null }).problems[0]?.says).toContain('no bag');
    const inFilter = [{ position: 1, off: 0, label: 'A', fs: 7.2001e6, lm: 0, rm: 0, c0: 0 }];
    expect(work('A', { inFilter }).problems[0]?.says).toContain('stands in the filter as well');
  });
});
