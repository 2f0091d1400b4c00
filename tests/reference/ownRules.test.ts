import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ruleSets } from '../../src/engine/data/ruleSets.ts';
import { readOwnRules } from '../../src/engine/stages/plan/readOwnRules.ts';

const row = (text: string) => readOwnRules(text).rows[0];

describe('lines as people write them', () => {
  test.each([
    ['1.7 – 35 MHz: 40 dB or −36 dBm', 1.7e6, 35e6, 40, -36, 'less'],
    ['1.7-35 40dB', 1.7e6, 35e6, 40, null, null],
    ['from 1,7 MHz to 35 MHz  40 dB below PEP', 1.7e6, 35e6, 40, null, null],
    ['30 kHz – 1.7 MHz 60 dB', 30e3, 1.7e6, 60, null, null],
    ['9 – 150 kHz 0 dB', 9e3, 150e3, 0, null, null],
    ['above 50 MHz 60 dB', 50e6, 300e9, 60, null, null],
    ['up to 30 MHz: −43 dBc', 0, 30e6, 43, null, null],
    ['below 30 MHz 43 dB below the mean power', 0, 30e6, 43, null, null],
    ['50 dB', 0, 300e9, 50, null, null],
    ['-13 dBm', 0, 300e9, null, -13, null],
    ['50 dB or -13 dBm, whichever is less strict', 0, 300e9, 50, -13, 'less'],
    ['40 dB and 50 mW', 0, 300e9, 40, 16.9897, 'more'],
    ['30..225 MHz 40 dB and 25 µW', 30e6, 225e6, 40, -16.0206, 'more'],
    ['1 – 12.75 GHz: −30 dBm', 1e9, 12.75e9, null, -30, null],
  ])('%s', (text, from, to, below, absolute, whichever) => {
    const read = row(text);
    expect(read?.note).toBe('');
    expect(read?.from).toBeCloseTo(from, 3);
    expect(read?.to).toBeCloseTo(to, 3);
    expect(read?.below).toBe(below);
    if (absolute === null) expect(read?.absolute).toBeNull();
    else expect(read?.absolute).toBeCloseTo(absolute, 3);
    expect(read?.whichever).toBe(whichever);
  });

  test.each([
    ['30 – 1000 MHz', /has no limit/],
    ['43 + 10 log P', /−13/],
    ['35 – 1.7 MHz: 40 dB', /high to low/],
    ['in summer 40 dB', /no stretch of frequencies/],
    ['7 MHz 400 dB', /no limit/],
  ])('%s is left out, with a word', (text, says) => {
    expect(row(text)?.from).toBeNull();
    expect(row(text)?.note).toMatch(says);
  });

  test('blank lines and remarks are nothing; lines keep their numbers', () => {
    const { rows } = readOwnRules('# mine\n\n50 dB\nnonsense\n// end');
    expect(rows.map(({ line }) => line)).toEqual([3, 4]);
  });

  test('any text at all comes back without NaN', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        for (const read of readOwnRules(`${text}\n1 - 2: ${text} dB or 5 dBm`).rows) {
          for (const value of [read.from, read.to, read.below, read.absolute]) {
            expect(value === null || Number.isFinite(value)).toBe(true);
          }
        }
      }),
    );
  });
});

describe('a set of one’s own', () => {
  const own = (text: string, f: number, n: number, power: number) =>
    ruleSets.own.limit({
      frequency: n * f * 1e6,
      fundamental: f * 1e6,
      power,
      own: 33,
      ownLines: readOwnRules(text).rows,
    });
  const other = (key: 'itu' | 'cept' | 'us', f: number, n: number, power: number) =>
    ruleSets[key].limit({ frequency: n * f * 1e6, fundamental: f * 1e6, power, own: 0 });
  const powers = [0.05, 0.5, 1, 4, 5, 10, 25, 100];

  // Closed form: 43 + 10 log(P/W) below P is the level −13 dBm.
  test('written out, ITU, US and the European table come out as their own rows', () => {
    const cept = '0.15 – 1.6999 MHz 60 dB or −36 dBm\n1.7 – 35 MHz 40 dB or −36 dBm';
    for (const power of powers) {
      for (const n of [2, 3, 4, 5]) {
        expect(own('50 dB or −13 dBm', 7, n, power)).toBeCloseTo(other('itu', 7, n, power), 9);
        expect(own('43 dB', 7, n, power)).toBe(other('us', 7, n, power));
        expect(own(cept, 7, n, power)).toBeCloseTo(other('cept', 7, n, power), 9);
      }
    }
  });

  test('where lines overlap the strictest counts; where none holds, the single figure', () => {
    expect(own('up to 30 MHz 43 dB\n14 – 15 MHz 60 dB', 7.2, 2, 5)).toBe(60);
    expect(own('up to 30 MHz 43 dB\n14 – 15 MHz 60 dB', 7, 3, 5)).toBe(43);
    expect(own('up to 20 MHz 43 dB', 7, 3, 5)).toBe(33);
    expect(own('nonsense', 7, 3, 5)).toBe(33);
  });

  // Source: US 47 CFR 97.307(d), before 2003, from 5 W on: at most 50 mW and at least 40 dB.
  test('“and” asks for both', () => {
    for (const power of [5, 25, 100, 600, 1500]) {
      const law = { frequency: 14e6, fundamental: 7e6, power, own: 0 };
      expect(own('40 dB and 50 mW', 7, 2, power)).toBeCloseTo(ruleSets.usBefore2003.limit(law), 9);
    }
  });
});
