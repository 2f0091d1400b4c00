import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readExpression } from '../../src/engine/quantity/expression.ts';
import { math } from '../../src/engine/quantity/expressionMath.ts';
import {
  format,
  formatParts,
  formatSame,
  formatTrimmed,
} from '../../src/engine/quantity/format.ts';
import { outOfRange } from '../../src/engine/quantity/outOfRange.ts';
import { parse, type Reading } from '../../src/engine/quantity/parse.ts';
import { bestPair, nearest, preferredBetween } from '../../src/engine/quantity/preferred.ts';
import { type Unit, unitRow, units } from '../../src/engine/quantity/units.ts';

const everyUnit = Object.keys(units) as Unit[];
const anyUnit = fc.constantFrom(...everyUnit);

// Sizes from a thousandth of a femto to thousands of giga, and zero, of either sign.
const size = fc
  .tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -18, max: 12 }))
  .map(([mantissa, power]) => mantissa * 10 ** power);
const shown = fc.oneof(
  fc.tuple(size, fc.constantFrom(1, -1)).map(([value, sign]) => value * sign),
  fc.constant(0),
);
const levels = fc.double({ min: -400, max: 400, noNaN: true });
const stored = anyUnit.chain((unit) => {
  const { figures, scale, zero } = unitRow(unit);
  const number = figures === 'decimals' ? levels : shown;
  return number.map((value) => ({ unit, value: value * scale + zero }));
});

function read(reading: Reading): number {
  if (reading.kind !== 'value') throw new Error(JSON.stringify(reading));
  return reading.value;
}

describe('N1: parse(format(x)) = x to the digits shown', () => {
  test('every unit, any size, two to seven digits', () => {
    fc.assert(
      fc.property(stored, fc.integer({ min: 2, max: 7 }), ({ unit, value }, digits) => {
        const text = format(value, unit, digits);
        const again = read(parse(text, unit));
        const { figures, scale, zero } = unitRow(unit);
        const half =
          figures === 'decimals'
            ? 0.5 * 10 ** -(digits - 2) * scale
            : 0.5 * 10 ** (1 - digits) * Math.abs(value - zero) * (1 + 1e-9);
        expect(Math.abs(again - value)).toBeLessThanOrEqual(half * 1.000001 + 1e-12 * zero);
        // What was read looks the same again: an entry echoed does not creep.
        expect(format(again, unit, digits)).toBe(text);
      }),
      { numRuns: 4000 },
    );
  });

  test('trimmed texts keep all twelve digits', () => {
    fc.assert(
      fc.property(stored, ({ unit, value }) => {
        const again = read(parse(formatTrimmed(value, unit), unit));
        const { zero } = unitRow(unit);
        const scale = Math.max(Math.abs(value - zero), zero);
        expect(Math.abs(again - value)).toBeLessThanOrEqual(1e-11 * scale);
      }),
      { numRuns: 3000 },
    );
  });

  test('a column reads back as its values', () => {
    fc.assert(
      fc.property(
        anyUnit,
        fc.array(fc.double({ min: 1, max: 900, noNaN: true }), { minLength: 1, maxLength: 6 }),
        fc.integer({ min: -12, max: 6 }),
        (unit, numbers, power) => {
          const { figures, scale, zero } = unitRow(unit);
          const factor = figures === 'decimals' ? 1 : 10 ** power;
          const values = numbers.map((one) => one * factor * scale + zero);
          const column = formatSame(values, unit);
          const largest = Math.max(...values.map((value) => value - zero));
          column.numbers.forEach((number, index) => {
            const again = read(parse(`${number} ${column.unit}`, unit));
            const allowed = figures === 'decimals' ? 0.0501 * scale : 0.00501 * largest;
            expect(Math.abs(again - (values[index] ?? 0))).toBeLessThanOrEqual(allowed);
          });
        },
      ),
    );
  });

  test('the example of every unit is understood in that unit', () => {
    for (const unit of everyUnit) {
      expect(parse(unitRow(unit).example, unit).kind, unit).toBe('value');
    }
  });
});

describe('How numbers look', () => {
  test.each<[number, Unit, number, string]>([
    [4.7e-6, 'H', 2, '4.7 µH'],
    [7.16e6, 'Hz', 4, '7.160 MHz'],
    [7_203_010, 'Hz', 6, '7.20301 MHz'],
    [2400, 'Hz', 3, '2400 Hz'],
    [9999.9, 'Hz', 3, '10.0 kHz'],
    [999.7, 'Ω', 3, '1.00 kΩ'],
    [-23.42, 'dB', 3, '−23.4 dB'],
    [-73, 'dBm', 2, '−73 dBm'],
    [-0.001, 'dB', 3, '0.0 dB'],
    [0, 'F', 3, '0 F'],
    [0.05, '%', 2, '5.0 %'],
    [298.15, '°C', 3, '25.0 °C'],
    [Math.PI / 2, '°', 2, '90°'],
    [4.9e-9, 'H/t²', 2, '4.9 nH'],
    [25e12, 'Hz/F', 3, '25.0 Hz/pF'],
    [70_000, '1', 3, '70\u202f000'],
    [25_200, 'Ah', 2, '7.0 Ah'],
    [Number.NaN, 'V', 3, '–'],
    [Number.POSITIVE_INFINITY, 'Ω', 3, '∞ Ω'],
  ])('%s %s to %i digits is %s', (value, unit, digits, text) => {
    expect(format(value, unit, digits).replace(/\u00a0/g, ' ')).toBe(text);
  });

  test('number and unit are held together by a no-break space', () => {
    expect(format(12, 'V')).toBe('12.0\u00a0V');
    expect(formatParts(12, 'V')).toEqual({ number: '12.0', unit: 'V' });
  });
});

describe('N2: a range message is in the notation that can be typed back', () => {
  test('bandwidth', () => {
    const field = { label: 'Bandwidth', unit: 'Hz', range: [200, 6000] } as const;
    expect(outOfRange(field, 9000)?.replace(/\u00a0/g, ' ')).toBe(
      'Bandwidth must lie between 200 Hz and 6 kHz; this is 9000 Hz.',
    );
    expect(outOfRange(field, 200)).toBeNull();
  });

  test('both limits of any range read back as the limits', () => {
    fc.assert(
      fc.property(
        stored,
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        ({ unit, value }, span) => {
          const clean = read(parse(formatTrimmed(value, unit, 5), unit));
          const low = Math.min(clean, clean + span);
          const text =
            outOfRange({ label: 'X', unit, range: [low, low] }, low + span * (1 + Math.abs(low))) ??
            '';
          const limit = /between (.*?) and/.exec(text)?.[1] ?? '';
          expect(Math.abs(read(parse(limit, unit)) - low)).toBeLessThanOrEqual(
            1e-5 * Math.max(Math.abs(low - unitRow(unit).zero), unitRow(unit).zero * 1e-9),
          );
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe('Hostile and hasty typing', () => {
  const pieces = fc.constantFrom(
    ...['1', '7', '0', '47', '160', '.', ',', "'", ' ', '-', '−', '+', '*', '/', '^', '(', ')'],
    ...['||', '//', 'e', 'E', 'p', 'n', 'u', 'µ', 'μ', 'm', 'k', 'K', 'M', 'G', 'R', 'Ω', 'Ω'],
    ...['F', 'H', 'Hz', 'V', 'Vpp', 'V pp', 'W', 'dBm', 'dB', '%', '°', '°C', 'pi', 'sqrt', 'ln'],
    ...['import', 'constructor', '__proto__', 'toString', 'x', '²', '½', '\u00a0', '0x1', '∞'],
  );
  const typed = fc.oneof(
    fc.string({ maxLength: 30 }),
    fc.string({ unit: 'grapheme', maxLength: 30 }),
    fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join('')),
  );
  const across = fc.oneof(fc.constant(undefined), fc.double());

  function sound(reading: Reading): void {
    if (reading.kind === 'value') expect(Number.isFinite(reading.value)).toBe(true);
    if (reading.kind === 'wrong') expect(reading.says.length).toBeGreaterThan(5);
  }

  test('parse never throws and never gives a number that is none', () => {
    fc.assert(
      fc.property(typed, anyUnit, across, (text, unit, ohms) => {
        sound(parse(text, unit, ohms === undefined ? {} : { across: ohms }));
      }),
      { numRuns: 20_000 },
    );
  });

  test('neither does readExpression, and it leaves nothing unread', () => {
    fc.assert(
      fc.property(typed, anyUnit, across, (text, unit, ohms) => {
        const reading = readExpression(text, unit, ohms === undefined ? {} : { across: ohms });
        sound(reading);
        expect(reading.kind).not.toBe('expression');
      }),
      { numRuns: 20_000 },
    );
  });

  test.each([
    'import({a: 1})',
    'createUnit("foo")',
    'f(x) = x^2',
    'a = 3',
    '1; 2',
    '[1, 2]',
    '1:1000000000',
    'constructor(1)',
    'parse("1")',
    '"abc"',
    '{a: 1}',
    'cos.constructor',
    '2 * __proto__',
    '5!',
    '(2 > 1) ? 3 : 4',
  ])('%s is refused in words', (text) => {
    expect(readExpression(text, '1').kind).toBe('wrong');
  });

  test('long text is refused before it is looked at', () => {
    expect(parse('1+'.repeat(200), 'F').kind).toBe('wrong');
  });

  test('the mathematics can not be changed from outside', () => {
    expect(() => math.import({ sqrt: () => 7 }, { override: true })).toThrow();
    expect(() => math.config({ predictable: true })).toThrow();
    expect('createUnit' in math || 'evaluate' in math || 'simplify' in math).toBe(false);
  });
});

describe('Expressions', () => {
  test('mean what the arithmetic means', () => {
    const amount = fc.integer({ min: 1, max: 999 });
    fc.assert(
      fc.property(amount, amount, amount, (a, b, c) => {
        const near = (text: string, unit: Unit, value: number) =>
          expect(read(readExpression(text, unit)) / value).toBeCloseTo(1, 12);
        near(`${a}p+${b}*${c}p`, 'F', (a + b * c) * 1e-12);
        near(`(${a} pF + ${b}p)*${c}`, 'F', (a + b) * c * 1e-12);
        near(`${a} V/${b}`, 'V', a / b);
        near(`(${a} V)^2/${b} Ω`, 'W', (a * a) / b);
        near(`1/(2*pi*sqrt(${a} mH*${b} fF))`, 'Hz', 1 / (2 * Math.PI * Math.sqrt(a * b * 1e-18)));
        near(`${a}||${b}*${c}`, 'Ω', ((a * b) / (a + b)) * c);
        near(`${a} nF||${b} nF`, 'F', (a + b) * 1e-9);
        near(`${a} K/W*${b} W`, 'K', a * b);
      }),
      { numRuns: 200 },
    );
  });

  test.each<[string, Unit, RegExp]>([
    ['2*39 pF', 'Hz', /capacitance.*Hz/],
    ['12 V/6 V', 'Ω', /plain number/],
    ['12 V/2', 'W', /peak to peak, peak or rms/],
    ['1/2pi', '1', /clear what it divides/],
    ['sqrt(-1)', '1', /no real number/],
    ['2*7,160', 'Hz', /did you mean 7.160 or 7160/],
    ['2*foo', 'F', /“foo” is not known/],
    ['1/(2*pi*sqrt(1u*(100p||47p)))', 'Hz', /their units/],
  ])('%s in %s says why not', (text, unit, says) => {
    const reading = readExpression(text, unit);
    expect(reading.kind === 'wrong' ? reading.says : reading).toMatch(says);
  });
});

describe('Preferred values', () => {
  test.each([0, -4.7, Number.NaN, 1e300])(
    '%s has none near it, and that is said as NaN',
    (none) => {
      expect(nearest(none, 'E24')).toBeNaN();
      expect(bestPair(none, 'E24').sum).toBeNaN();
    },
  );

  const series = fc.constantFrom('E6', 'E12', 'E24', 'E48', 'E96', 'E192' as const);
  const value = size.filter((one) => one > 1e-15 && one < 1e9);

  test('the nearest departs least in per cent', () => {
    fc.assert(
      fc.property(value, series, (wanted, name) => {
        const off = (one: number) => Math.abs(one / wanted - 1);
        const all = preferredBetween(wanted / 10, wanted * 10, name);
        const least = Math.min(...all.map(off));
        expect(off(nearest(wanted, name))).toBeCloseTo(least, 12);
      }),
    );
  });

  test('the best pair is as good as trying all pairs', () => {
    fc.assert(
      fc.property(value, fc.constantFrom('E6', 'E12', 'E24' as const), (wanted, name) => {
        const all = preferredBetween(wanted / 2100, wanted * 2, name);
        let least = Math.min(...all.map((one) => Math.abs(one / wanted - 1)));
        for (const one of all) {
          for (const two of all) least = Math.min(least, Math.abs((one + two) / wanted - 1));
        }
        const pair = bestPair(wanted, name);
        expect(Math.abs(pair.error)).toBeLessThanOrEqual(least + 0.5e-3);
        expect(pair.parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(pair.sum, 12);
      }),
      { numRuns: 300 },
    );
  });
});
