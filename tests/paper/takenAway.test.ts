import { describe, expect, test } from 'vitest';
import { couplings } from '../../src/engine/circuit/couplings.ts';
import { crystalOf } from '../../src/engine/circuit/crystal.ts';
import type { Ladder } from '../../src/engine/circuit/ladder.ts';
import { ladderForWidth } from '../../src/engine/circuit/ladderForWidth.ts';
import { gainAt } from '../../src/engine/circuit/ladderGain.ts';
import { readTouchstone } from '../../src/engine/stages/sweep/readTouchstone.ts';
import { netlist } from '../../src/paper/netlist.ts';
import { responseCsv } from '../../src/paper/responseCsv.ts';
import { touchstoneOf } from '../../src/paper/touchstoneOf.ts';
import { ladderNetlist } from '../reference/filter/ladderNetlist.ts';
import { simulateAc, simulateNetlist } from '../reference/simulator.ts';

const lossless = { capacitorQ: Number.POSITIVE_INFINITY, stray: 0 };
const made = ladderForWidth(
  crystalOf(7.2e6, 30e-3, 70e3, 4e-12),
  couplings('chebyshev', 6, 0.1),
  lossless,
  2400,
);
const { low, high } = made.band;
const plain = made.ladder;
const ends = plain.source[0];

/** Crystals to ground, the dual: four of them, no design, only a circuit. */
const dual: Ladder = {
  form: 'shunt',
  lm: Float64Array.of(30e-3, 30.01e-3, 30e-3, 29.99e-3),
  cm: new Float64Array(4).fill(1 / ((2 * Math.PI * 7.2e6) ** 2 * 30e-3)),
  rm: new Float64Array(4).fill(19),
  c0: new Float64Array(4).fill(4e-12),
  series: Float64Array.of(20e-12, 0, 0, 22e-12),
  coupling: Float64Array.of(3e-12, 2.5e-12, 3e-12),
  stray: Float64Array.of(1e-12, 1e-12, 0, 1e-12),
  capacitorQ: 1500,
  endC: [5e-12, 0],
  leakage: 0,
  source: [800, 0],
  load: [1200, 0],
};

const cases: [string, Ladder][] = [
  ['as designed', plain],
  [
    'lossy capacitors and strays',
    { ...plain, capacitorQ: 800, stray: new Float64Array(5).fill(1.5e-12) },
  ],
  [
    'unequal ends, capacitors there, leakage',
    { ...plain, source: [50, 0], load: [2000, 0], endC: [9e-12, 3e-12], leakage: 4e-15 },
  ],
  ['reactive ends', { ...plain, source: [200, 60], load: [500, -150] }],
  ['crystals to ground', dual],
];

describe('the netlist', () => {
  // Source: ngspice, run here and now on the netlist as it is saved, title, analysis and all.
  test.each(cases)('%s: the simulator’s gain is the kernel’s', async (_, ladder) => {
    const from = low - 1500;
    const to = high + 1500;
    const text = netlist(ladder, { title: 'Forty metres:\n six crystals', from, to, points: 201 });
    expect(text.startsWith('* Forty metres: six crystals\n')).toBe(true);
    const run = await simulateNetlist(text);
    const level = run.level('out');
    const middle = (from + to) / 2;
    let compared = 0;
    run.frequency.forEach((f, i) => {
      // An end’s reactance is a coil or capacitor in the netlist.
      const turn = (x: number) => (x >= 0 ? (x * f) / middle : (x * middle) / f);
      const here: Ladder = {
        ...ladder,
        source: [ladder.source[0], turn(ladder.source[1])],
        load: [ladder.load[0], turn(ladder.load[1])],
      };
      const gain = gainAt(here, f);
      if (gain < -80) return;
      compared += 1;
      expect(Math.abs((level[i] ?? Number.NaN) - gain), `${f} Hz, ${gain} dB`).toBeLessThan(2e-4);
    });
    expect(compared).toBeGreaterThan(60);
  });

  test('a title that is blank is none, and every element has a name of its own', () => {
    const text = netlist(dual, { title: ' \n', from: 7e6, to: 7.3e6, points: 3 });
    const lines = text.split('\n');
    expect(lines[0]).toBe('* crystal filter');
    const names = lines
      .slice(1)
      .filter((line) => /^[a-z]/i.test(line))
      .map((l) => l.split(' ')[0]);
    expect(new Set(names).size).toBe(names.length);
    expect(lines.at(-2)).toBe('.end');
  });
});

describe('the Touchstone file', () => {
  const frequency = Float64Array.from({ length: 41 }, (_, i) => low - 1000 + 110 * i);
  const read = (ladder: Ladder, reference: number) => {
    const text = touchstoneOf(ladder, { title: 'A filter', frequency, reference });
    const { columns, reference: r, notes } = readTouchstone(text);
    expect(notes).toEqual([]);
    expect(r).toBe(reference);
    return columns.map(({ values }) => values);
  };

  test.each([
    ['between 50 Ω', 50],
    ['between its own ends', ends],
  ])('%s: S21 is the kernel’s gain', (_, reference) => {
    for (const ladder of [plain, { ...plain, leakage: 3e-15 }, dual]) {
      const [f, , , re, im, re12, im12] = read(ladder, reference);
      f?.forEach((at, i) => {
        const db = 20 * Math.log10(Math.hypot(re?.[i] ?? 0, im?.[i] ?? 0));
        const ended: Ladder = { ...ladder, source: [reference, 0], load: [reference, 0] };
        expect(Math.abs(db - gainAt(ended, at))).toBeLessThan(1e-5);
        expect([re12?.[i], im12?.[i]]).toEqual([re?.[i], im?.[i]]);
      });
    }
  });

  test('all four parameters are the simulator’s, from either side', async () => {
    // 1 V behind the reference: S11 = 2·V(in) − 1, S21 = 2·V(out), for equal references.
    const uneven = {
      ...plain,
      endC: [12e-12, 2e-12] as const,
      source: [150, 0] as const,
      load: [150, 0] as const,
    };
    const turned: Ladder = {
      ...uneven,
      lm: uneven.lm.toReversed(),
      cm: uneven.cm.toReversed(),
      rm: uneven.rm.toReversed(),
      c0: uneven.c0.toReversed(),
      series: uneven.series.toReversed(),
      coupling: uneven.coupling.toReversed(),
      stray: uneven.stray.toReversed(),
      endC: [2e-12, 12e-12],
    };
    const [, r11, i11, r21, i21, r12, i12, r22, i22] = read(uneven, 150);
    const sweep = { from: frequency[0] ?? 0, to: frequency.at(-1) ?? 0, points: 41 };
    for (const [ladder, back, through] of [
      [uneven, [r11, i11], [r21, i21]],
      [turned, [r22, i22], [r12, i12]],
    ] as const) {
      const run = await simulateAc(ladderNetlist(ladder, (low + high) / 2), sweep);
      const [near, far] = [run.node('in'), run.node('out')];
      frequency.forEach((_, i) => {
        expect(back[0]?.[i]).toBeCloseTo(2 * (near.re[i] ?? 0) - 1, 5);
        expect(back[1]?.[i]).toBeCloseTo(2 * (near.im[i] ?? 0), 5);
        expect(through[0]?.[i]).toBeCloseTo(2 * (far.re[i] ?? 0), 5);
        expect(through[1]?.[i]).toBeCloseTo(2 * (far.im[i] ?? 0), 5);
      });
    }
  });
});

test('the response as columns: units in the titles, blanks where there is no figure', () => {
  const text = responseCsv({
    frequency: [7200100, 7200200],
    gain: [-1.23456, Number.NEGATIVE_INFINITY],
    delay: [0.0012, Number.NaN],
    returnLoss: [20, 0],
  });
  expect(text.split('\r\n')).toEqual([
    'Frequency (Hz),Gain (dB),Group delay (µs),Return loss (dB)',
    '7200100,-1.2346,1200,20',
    '7200200,,,0',
    '',
  ]);
});
