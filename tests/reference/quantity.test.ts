import { describe, expect, test } from 'vitest';
import { parse } from '../../src/engine/quantity/parse.ts';
import {
  dbmOfVolts,
  dbmOfWatts,
  voltsOfDbm,
  voltsOfWatts,
  wattsOfDbm,
  wattsOfVolts,
} from '../../src/engine/quantity/power.ts';
import {
  bestPair,
  decadeOf,
  nearest,
  preferredBetween,
} from '../../src/engine/quantity/preferred.ts';
import type { Unit } from '../../src/engine/quantity/units.ts';

const read = (text: string, unit: Unit, across?: number): number => {
  const reading = parse(text, unit, across === undefined ? {} : { across });
  if (reading.kind !== 'value') throw new Error(JSON.stringify(reading));
  return reading.value;
};

describe('Preferred values: IEC 60063', () => {
  // IEC 60063:2015, tables of the E series, written out.
  const e24 = [
    10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91,
  ];
  const e96 =
    '100 102 105 107 110 113 115 118 121 124 127 130 133 137 140 143 147 150 154 158 162 165 169 174 178 182 187 191 196 200 205 210 215 221 226 232 237 243 249 255 261 267 274 280 287 294 301 309 316 324 332 340 348 357 365 374 383 392 402 412 422 432 442 453 464 475 487 499 511 523 536 549 562 576 590 604 619 634 649 665 681 698 715 732 750 768 787 806 825 845 866 887 909 931 953 976'
      .split(' ')
      .map(Number);
  const hundreds = (values: readonly number[]) => values.map((value) => Math.round(value * 100));

  test('E24 and the coarser series taken from it', () => {
    expect(hundreds(decadeOf('E24'))).toEqual(e24.map((value) => value * 10));
    expect(hundreds(decadeOf('E12'))).toEqual(
      [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82].map((value) => value * 10),
    );
    expect(hundreds(decadeOf('E6'))).toEqual([100, 150, 220, 330, 470, 680]);
    expect(hundreds(decadeOf('E3'))).toEqual([100, 220, 470]);
  });

  test('E24 departs from the rounded powers at 27 30 33 36 39 43 47 82 only', () => {
    const departs = e24.filter((value, index) => value !== Math.round(10 ** (1 + index / 24)));
    expect(departs).toEqual([27, 30, 33, 36, 39, 43, 47, 82]);
  });

  test('E96, and E48 as every second of it', () => {
    expect(hundreds(decadeOf('E96'))).toEqual(e96);
    expect(hundreds(decadeOf('E48'))).toEqual(e96.filter((_, index) => index % 2 === 0));
  });

  test('E192 holds E96 and has 9.20, its one departure from the rounded powers', () => {
    const e192 = hundreds(decadeOf('E192'));
    expect(e192).toHaveLength(192);
    expect(e192.filter((_, index) => index % 2 === 0)).toEqual(e96);
    expect(e192).toContain(920);
    expect(e192).not.toContain(919);
  });

  test('decades are exact decimals', () => {
    expect(preferredBetween(1e-12, 1e-11, 'E6')).toEqual([
      1e-12, 1.5e-12, 2.2e-12, 3.3e-12, 4.7e-12, 6.8e-12, 1e-11,
    ]);
    expect(nearest(39.4e-12, 'E12')).toBe(39e-12);
    expect(nearest(9.9, 'E6')).toBe(10);
  });

  // Worst departures of one part and of two in parallel, from a separate computation: one of E6
  // 20 %, E12 11 %, E24 7 %; a pair of E6 4.3 %, of E12 1.8 %, of E24 0.5 %.
  test.each([
    ['E6', 20, 4.3],
    ['E12', 11, 1.8],
    ['E24', 7, 0.5],
  ] as const)('%s: worst single %s %%, worst pair %s %%', (series, single, pair) => {
    let [worstSingle, worstPair] = [0, 0];
    for (let step = 0; step <= 20_000; step += 1) {
      const wanted = 100 * 10 ** (step / 20_000);
      worstSingle = Math.max(worstSingle, Math.abs(nearest(wanted, series) / wanted - 1));
      worstPair = Math.max(worstPair, Math.abs(bestPair(wanted, series).error));
    }
    expect(Math.abs(worstSingle * 100 - single)).toBeLessThan(1);
    expect(Math.abs(worstPair * 100 - pair)).toBeLessThan(0.15);
  });
});

describe('Marking codes with a letter for the point: IEC 60062', () => {
  test.each<[string, Unit, number]>([
    ['R47', 'Ω', 0.47],
    ['4R7', 'Ω', 4.7],
    ['8R2', 'Ω', 8.2],
    ['4K7', 'Ω', 4700],
    ['3k3', 'Ω', 3300],
    ['1M0', 'Ω', 1e6],
    ['p47', 'F', 0.47e-12],
    ['p10', 'F', 0.1e-12],
    ['4p7', 'F', 4.7e-12],
    ['4n7', 'F', 4.7e-9],
    ['1u0', 'F', 1e-6],
    ['0p5', 'F', 0.5e-12],
  ])('%s in %s', (text, unit, value) => {
    expect(read(text, unit)).toBe(value);
  });

  test('three digits are a number; the note gives what they mean on a part (472 = 4.7 nF)', () => {
    expect(parse('472', 'F')).toEqual({
      kind: 'value',
      value: 472,
      note: '472 printed on a capacitor means 4700 pF',
    });
  });
});

describe('Styles in use among constructors (collected from their writing; common practice)', () => {
  test.each<[string, Unit, number]>([
    ['4u7', 'H', 4.7e-6],
    ['4.7u', 'H', 4.7e-6],
    ['4,7u', 'H', 4.7e-6],
    ['470p', 'F', 470e-12],
    ['1n', 'F', 1e-9],
    ['27f', 'F', 27e-15],
    ['39pF', 'F', 39e-12],
    ['39 pf', 'F', 39e-12],
    ['10\u00b5', 'F', 10e-6],
    ['10\u03bc', 'F', 10e-6],
    ['10\u00a0\u2126', 'Ω', 10],
    ['10\u2009\u03a9', 'Ω', 10],
    ['10 ohms', 'Ω', 10],
    ['10 kOhm', 'Ω', 10e3],
    ['7.16M', 'Hz', 7.16e6],
    ['7M16', 'Hz', 7.16e6],
    ['7m16', 'Hz', 7.16e6],
    ['7160k', 'Hz', 7.16e6],
    ['7160K', 'Hz', 7.16e6],
    ['7.16 MHz', 'Hz', 7.16e6],
    ['7.16 mhz', 'Hz', 7.16e6],
    ["9.991'974M", 'Hz', 9_991_974],
    ['11.055.500', 'Hz', 11_055_500],
    ['11,984,800', 'Hz', 11_984_800],
    ['7 160 000', 'Hz', 7.16e6],
    ['1.234,56', 'Hz', 1234.56],
    ['1,234.56', 'Hz', 1234.56],
    ['0,160', 'Hz', 0.16],
    ['12 V', 'V', 12],
    ['13V8', 'V', 13.8],
    ['250m', 'A', 0.25],
    ['\u221223,4 dB', 'dB', -23.4],
    ['5%', '%', 0.05],
    ['5', '%', 0.05],
    ['25', '°C', 298.15],
    ['25 °C', '°C', 298.15],
    ['298 K', '°C', 298],
    ['90°', '°', Math.PI / 2],
    ['0.5 mm', 'm', 0.5e-3],
    ['50 gauss', 'T', 5e-3],
    ['4.9', 'H/t²', 4.9e-9],
    ['49 µH/100t', 'H/t²', 4.9e-9],
    ['70k', '1', 70_000],
    ['7 Ah', 'Ah', 25_200],
    ['100p+47p', 'F', 147e-12],
    ['100p||47p', 'F', 147e-12],
    ['1k+220', 'Ω', 1220],
    ['1k||1k', 'Ω', 500],
    ['2u2 // 2u2', 'H', 1.1e-6],
  ])('%s in %s', (text, unit, value) => {
    expect(Math.abs(read(text, unit) - value)).toBeLessThanOrEqual(1e-14 * Math.abs(value));
  });

  test('m is milli and M is mega, but before hertz', () => {
    expect(read('1m', 'H')).toBe(1e-3);
    expect(read('1M', 'Ω')).toBe(1e6);
    expect(read('1m', 'Ω')).toBe(1e-3);
  });

  test.each<[string, Unit, RegExp]>([
    ['7,160', 'Hz', /did you mean 7\.160 or 7160\? Write 7\.160 or 7160/],
    ['7,160 MHz', 'Hz', /did you mean 7\.160 MHz or 7160 MHz/],
    ['9.991,974M', 'Hz', /9991\.974 M or 9\.991974 M/],
    ['39 pF', 'Hz', /pF is a capacitance; this field is in Hz/],
    ['7.16 MHz', 'F', /frequency; this field is in F/],
    ['5 V', 'W', /peak to peak, peak or rms/],
    ['0 W', 'dBm', /no level/],
    ['−5 W', 'dBm', /not negative/],
    ['100||47', 'Hz', /parallel/],
    ['3 foo', 'H', /“foo” is not known here/],
    ['hello', 'H', /Write for instance/],
    ['12 13', 'V', /one number/],
    ['1e999', 'V', /finite/],
    ['3 dBm + 3 dBm', 'dBm', /don't add up/],
  ])('%s in %s is answered in words', (text, unit, says) => {
    const reading = parse(text, unit);
    expect(reading.kind === 'wrong' ? reading.says : reading).toMatch(says);
  });

  test('what was taken for granted is said', () => {
    expect(parse('44.7 V pp', 'W')).toMatchObject({ note: 'in 50\u00a0Ω' });
    expect(parse('44.7 Vpp', 'W', { across: 75 })).toMatchObject({ note: 'in 75\u00a0Ω' });
    expect(parse('100p||47p', 'F')).toMatchObject({ note: 'capacitors in parallel add' });
    expect(parse('10 Vpk', 'Vpp')).toMatchObject({ value: 20, note: 'taken as a sine' });
  });

  test.each(['', '  ', '\u00a0\t'])('blank is blank', (text) => {
    expect(parse(text, 'Hz')).toEqual({ kind: 'blank' });
  });

  test.each(['2*47p', '12 V/2', '1/(2*pi*sqrt(30m*17f))', '100p+2*47p'])(
    '%s is left to the reader of expressions',
    (text) => {
      expect(parse(text, 'F')).toEqual({ kind: 'expression' });
    },
  );
});

describe('Power, level and voltage in 50 Ω', () => {
  // P = Vrms²/R and dBm = 10·log10(P/1 mW); the rounded table is common handbook practice.
  test.each([
    [1e-6, -30, 7.1e-3, 10e-3, 20e-3],
    [1e-4, -10, 71e-3, 100e-3, 200e-3],
    [1e-3, 0, 0.224, 0.316, 0.632],
    [10e-3, 10, 0.71, 1.0, 2.0],
    [0.1, 20, 2.24, 3.16, 6.32],
    [1, 30, 7.07, 10, 20],
    [5, 37, 15.8, 22.4, 44.7],
    [10, 40, 22.4, 31.6, 63.2],
    [25, 44, 35.4, 50, 100],
  ])('%s W is %s dBm, %s V rms, %s V peak, %s V pp', (watts, dbm, rms, peak, pp) => {
    const close = (found: number, wanted: number) =>
      expect(Math.abs(found / wanted - 1)).toBeLessThan(0.006);
    expect(Math.abs(dbmOfWatts(watts) - dbm)).toBeLessThan(0.03);
    expect(Math.abs(wattsOfDbm(dbm) / watts - 1)).toBeLessThan(0.006);
    close(voltsOfWatts(watts, 'Vrms', 50), rms);
    close(voltsOfWatts(watts, 'Vpk', 50), peak);
    close(voltsOfWatts(watts, 'Vpp', 50), pp);
    close(read(`${pp} Vpp`, 'W') ** 0.5, watts ** 0.5);
    close(read(`${watts} W`, 'Vpp', 50), pp);
    expect(Math.abs(read(`${peak} Vpk`, 'dBm') - dbm)).toBeLessThan(0.06);
  });

  test('there and back', () => {
    expect(wattsOfVolts(voltsOfDbm(33, 'Vpp', 75), 'Vpp', 75)).toBeCloseTo(1.99526, 5);
    expect(dbmOfVolts(voltsOfDbm(-17.5, 'Vpk', 300), 'Vpk', 300)).toBeCloseTo(-17.5, 12);
  });
});
