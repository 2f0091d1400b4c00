import { describe, expect, test } from 'vitest';
import { bestSplit, criticalValue, hasTwoHumps } from '../../src/engine/stages/bag/humps.ts';
import { readBag } from '../../src/engine/stages/bag/readBag.ts';
import { closest, meanOf, medianOf, rmsAbout } from '../../src/engine/stages/bag/statistics.ts';

const fsOf = (text: string) => readBag(text).rows.map(({ fs }) => fs);

describe('styles of frequency that builders and counters write', () => {
  // The styles are those found in builders’ notes and counters’ logs; the value is what they mean.
  test.each([
    ['9991974', 9991974],
    ['9.991974M', 9991974],
    ["9.991'974M", 9991974],
    ['9.991 974 MHz', 9991974],
    ['9,991974 MHz', 9991974],
    ['9991.974', 9991974],
    ['9991,974 kHz', 9991974],
    ['9.991.974', 9991974],
    ['9,991,974', 9991974],
    ['9 991 974', 9991974],
    ['9 991 974 Hz', 9991974],
    ['11.055.500', 11055500],
    ['8 998 412', 8998412],
    ['7M16', 7160000],
    ['7160k', 7160000],
    ['7,198', 7198000],
    ['  7.198612 mhz  ', 7198612],
    ['7.198612E6', 7198612],
  ])('%s', (text, hertz) => {
    expect(fsOf(text)).toEqual([hertz]);
  });

  test('one a line, blank lines and remarks between', () => {
    expect(fsOf('# counter, gate 10 s\n7198612\n\n7198590.5\r\n! end\n7198601')).toEqual([
      7198612, 7198590.5, 7198601,
    ]);
  });
});

describe('columns', () => {
  const wanted = { label: 'A1', fs: 7198612, lm: 0.0302, rm: 21.5, c0: 4.1e-12 };
  test.each([
    ['tabs, no heading', 'A1\t7198612\t30.2\t21.5\t4.1\nA2\t7198590\t30.1\t22\t4.0'],
    ['semicolons, decimal commas', 'A1;7198,612;30,2;21,5;4,1\nA2;7198,590;30,1;22;4,0'],
    ['commas', 'A1,7198612,30.2,21.5,4.1\nA2,7198590,30.1,22,4.0'],
    ['commas and spaces', 'A1, 7198612, 30.2, 21.5, 4.1\nA2, 7198590, 30.1, 22, 4.0'],
    [
      'single spaces with units',
      'A1 7198.612 kHz 30.2 mH 21.5 ohm 4.1 pF\nA2 7198.59 kHz 30.1 mH 22 ohm 4 pF',
    ],
    ['aligned by spaces', 'A1   7198612   30.2   21.5   4.1\nA2   7198590   30.1   22   4.0'],
    ['single spaces', 'A1 7198612 30.2 21.5 4.1\nA2 7198590 30.1 22 4.0'],
    [
      'a heading with units',
      'Label\tfs (kHz)\tLm/mH\tRm [Ω]\tC0 pF\nA1\t7198.612\t30.2\t21.5\t4.1',
    ],
    [
      'a heading in another order',
      'xtal;C0 (pF);Rm;Lm (H);freq (MHz)\nA1;4.1;21.5;0.0302;7.198612',
    ],
    ['quoted', '"No","fs","Lm","Rm","C0"\n"A1","7198612","30.2m","21.5","4.1p"'],
    ['grouped digits', 'A1\t7 198 612\t30.2\t21.5\t4.1\nA2\t7 198 590\t30.1\t22\t4.0'],
    ['bars', 'A1 | 7.198612 MHz | 30.2 mH | 21.5 | 4.1 pF'],
    ['a remark as heading', '# label, fs, Lm, Rm, C0\nA1, 7198612, 30.2, 21.5, 4.1'],
  ])('%s', (_, text) => {
    const [first] = readBag(text).rows;
    expect(first).toMatchObject({ label: wanted.label, fs: wanted.fs, rm: wanted.rm, note: '' });
    expect(first?.lm).toBeCloseTo(wanted.lm, 12);
    expect(first?.c0).toBeCloseTo(wanted.c0, 20);
  });

  // Lm = 1/((2πfs)²Cm), Rm = 2πfsLm/Qu: closed forms of a series resonant circuit.
  test('Cm and Q instead of Lm and Rm', () => {
    const [row] = readBag('name\tfs\tCm (fF)\tQu\nx\t9000000\t21.6\t100000').rows;
    const omega = 2 * Math.PI * 9e6;
    const lm = 1 / (omega * omega * 21.6e-15);
    expect((row?.lm ?? 0) / lm).toBeCloseTo(1, 12);
    expect((row?.rm ?? 0) / ((omega * lm) / 1e5)).toBeCloseTo(1, 12);
  });

  test('a counter’s log with numbers before the frequency', () => {
    const rows = readBag('1 7 198 612\n2 7 198 590\n10 7 198 601').rows;
    expect(rows.map(({ label, fs }) => [label, fs])).toEqual([
      ['1', 7198612],
      ['2', 7198590],
      ['10', 7198601],
    ]);
  });

  test('a label after the frequency', () => {
    const rows = readBag('7.198612 MHz\tblue\n7.198590 MHz\tred').rows;
    expect(rows.map(({ label }) => label)).toEqual(['blue', 'red']);
  });
});

describe('what is wrong is kept and said', () => {
  test('a line that is not understood', () => {
    const { rows } = readBag('a\t7198612\nb\tbroken\nc\t7198590');
    expect(rows).toHaveLength(3);
    expect(rows[1]).toMatchObject({ label: 'b', fs: null });
    expect(rows[1]?.note).toContain('“broken” is not understood');
  });

  test('a label that stands twice', () => {
    const { rows } = readBag('a\t7198612\na\t7198590\na.2\t7198601');
    expect(rows.map(({ label }) => label)).toEqual(['a', 'a.3', 'a.2']);
    expect(rows[1]?.note).toContain('stands already in line 1');
  });

  test('figures that no crystal has', () => {
    const { rows } = readBag(
      'a\t7198612\t30 H\t25\t4.1\nb\t7198.6 MHz\t30\t25\t4.1\nc\t7198590\t30\t25\t4\nd\t7198590\t30\t26\t4',
    );
    expect(rows[0]).toMatchObject({ fs: 7198612, lm: null });
    expect(rows[0]?.note).toContain('none of a crystal');
    expect(rows[1]?.fs).toBeNull();
  });

  test('labels of several words, and none', () => {
    const { rows } = readBag('the blue one\t7198612\n\t7198590\nx\t7198601');
    expect(rows.map(({ label }) => label)).toEqual(['the-blue-one', '2', 'x']);
  });

  test('more lines than a bag has', () => {
    const text = Array.from({ length: 230 }, (_, i) => `${7_198_000 + i}`).join('\n');
    const read = readBag(text);
    expect(read.rows).toHaveLength(200);
    expect(read.tooMany).toBe(30);
  });
});

describe('figures of a lot', () => {
  // Worked by hand from the definitions: mean 5, squares 9+1+1+1+0+0+4+16 = 32.
  test('mean, deviation, median', () => {
    const values = [2, 4, 4, 4, 5, 5, 7, 9];
    expect(meanOf(values)).toBe(5);
    expect(rmsAbout(values, 5)).toBe(2);
    expect(medianOf(values)).toBe(4.5);
    expect(medianOf([1, 2, 10])).toBe(2);
  });

  test('the closest neighbours', () => {
    expect(closest([0, 10, 11, 30, 32, 33], 2)).toBe(1);
    expect(closest([0, 10, 11, 30, 32, 33], 3)).toBe(3);
    expect(closest([0, 1], 2)).toBe(0);
  });
});

describe('two humps', () => {
  const drawn = generator(7);
  const normal = () => Math.sqrt(-2 * Math.log(1 - drawn())) * Math.cos(2 * Math.PI * drawn());
  const lot = (n: number, one: () => number) =>
    Array.from({ length: n }, one).sort((a, b) => a - b);
  const flagged = (runs: number, make: () => number[]) => {
    let found = 0;
    for (let i = 0; i < runs; i += 1) {
      const sorted = make();
      if (hasTwoHumps(sorted, bestSplit(sorted))) found += 1;
    }
    return found / runs;
  };

  // The best division of a large normal lot is at its mean and leaves 1 − 2/π of the variance
  // (closed form of the half-normal distribution).
  test('a large normal lot divides in its middle', () => {
    const { whole, within, below } = bestSplit(lot(40_000, normal));
    expect((within / whole) ** 2).toBeCloseTo(1 - 2 / Math.PI, 2);
    expect(below / 40_000).toBeCloseTo(0.5, 1);
  });

  // Engelman and Hartigan's 5 % point, tried on normal lots.
  test.each([12, 20, 30, 60])(
    'the test alone errs in about one of twenty normal lots of %i',
    (n) => {
      let over = 0;
      for (let i = 0; i < 4000; i += 1) {
        const { whole, within } = bestSplit(lot(n, normal));
        if (2 * Math.log(whole / within) > criticalValue(n)) over += 1;
      }
      expect(over / 4000).toBeGreaterThan(0.02);
      expect(over / 4000).toBeLessThan(0.08);
    },
  );

  test('normal and even lots are one', () => {
    expect(flagged(1000, () => lot(30, normal))).toBeLessThan(0.05);
    expect(flagged(1000, () => lot(100, drawn))).toBeLessThan(0.05);
  });

  test('two lots in one bag are two', () => {
    const two = () => normal() + (drawn() < 0.4 ? 5 : 0);
    expect(flagged(500, () => lot(30, two))).toBeGreaterThan(0.9);
  });
});

/** Park and Miller's minimal standard generator, CACM 31, 1988: independent of the program's own. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}
