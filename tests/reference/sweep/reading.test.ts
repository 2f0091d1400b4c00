import { describe, expect, test } from 'vitest';
import { type ColumnChoice, chooseSweep } from '../../../src/engine/stages/sweep/chooseSweep.ts';
import { readSweepText } from '../../../src/engine/stages/sweep/readSweepText.ts';

const auto: ColumnChoice = {
  frequency: null,
  level: null,
  second: null,
  reads: 'auto',
  unit: 'auto',
};

function sweepOf(text: string, choice: Partial<ColumnChoice> = {}) {
  const read = readSweepText(text);
  const sweep = chooseSweep(read, { ...auto, ...choice });
  if (sweep === null) throw new Error(`no sweep in ${JSON.stringify(text)}`);
  return { ...sweep, notes: read.notes.map(({ says }) => says).join(' '), read };
}

/** The three points that every text below says: 9.000 … 9.002 MHz, −20, −3, −40 dB, 10, 0, −30°. */
function expectThree(text: string, choice: Partial<ColumnChoice> = {}, phase = true) {
  const sweep = sweepOf(text, choice);
  expect([...sweep.frequency].map((f) => Math.round(f))).toEqual([9_000_000, 9_001_000, 9_002_000]);
  [-20, -3, -40].forEach((db, i) => {
    expect(sweep.level[i]).toBeCloseTo(db, 3);
  });
  if (phase) {
    [10, 0, -30].forEach((degrees, i) => {
      expect((sweep.phase?.[i] ?? Number.NaN) * (180 / Math.PI)).toBeCloseTo(degrees, 2);
    });
  }
  return sweep;
}

// The same three points in each of the formats and units of the standard.
// Source: Touchstone File Format Specification Rev. 1.1 (2002) and 2.0 (2009): order of columns
// S11 S21 S12 S22, MA, DB, RI, units, defaults.
const polar = (db: number, degrees: number) => {
  const size = 10 ** (db / 20);
  const angle = (degrees * Math.PI) / 180;
  return `${size * Math.cos(angle)} ${size * Math.sin(angle)}`;
};
const points = [
  [9, -20, 10],
  [9.001, -3, 0],
  [9.002, -40, -30],
] as const;
const rows = (pair: (db: number, degrees: number) => string, scale = 1) =>
  points
    .map(([f, db, degrees]) => {
      const other = pair(-1, 5);
      return `${(f * scale).toPrecision(9)} ${other} ${pair(db, degrees)} ${pair(-50, 7)} ${other}`;
    })
    .join('\n');
const db = (a: number, b: number) => `${a} ${b}`;
const ma = (a: number, b: number) => `${10 ** (a / 20)} ${b}`;

describe('Touchstone of two ports', () => {
  test.each([
    ['dB', `# MHz S DB R 50\n${rows(db)}\n`],
    ['magnitude', `# MHz S MA R 50\n${rows(ma)}\n`],
    ['real and imaginary', `# MHz S RI R 50\n${rows(polar)}\n`],
    ['Hz', `# Hz S DB R 50\n${rows(db, 1e6)}\n`],
    ['kHz', `# kHz S DB R 50\n${rows(db, 1e3)}\n`],
    ['GHz', `# GHz S DB R 50\n${rows(db, 1e-3)}\n`],
    ['no unit is GHz', `# S DB R 50\n${rows(db, 1e-3)}\n`],
    ['no format is MA', `# MHz S R 50\n${rows(ma)}\n`],
    ['no option line at all: GHz, MA', `! swept at home\n${rows(ma, 1e-3)}\n`],
    ['options in another order', `# R 50 DB MHz S\n${rows(db)}\n`],
    ['leading spaces', `   #  MHz S DB R 50\n   ${rows(db).replace(/\n/g, '\n   ')}\n`],
    ['no space behind the sign', `#MHz S DB R 50\n${rows(db)}`],
    ['lower case', `# mhz s db r 50\n${rows(db)}`],
    ['repeated option line', `# MHz S DB R 50\n# GHz S MA R 75\n${rows(db)}`],
    ['comments after data', `# MHz S DB R 50\n${rows(db).replace(/\n/g, ' ! at 21 °C\n')} ! end`],
    ['tabs', `#\tMHz\tS\tDB\tR\t50\n${rows(db).replace(/ /g, '\t')}`],
    ['carriage returns', `# MHz S DB R 50\r\n${rows(db).replace(/\n/g, '\r\n')}\r\n`],
    ['byte-order mark', `\uFEFF# MHz S DB R 50\n${rows(db)}`],
    ['wrapped rows', `# MHz S DB R 50\n${rows(db).replace(/( -50 7)/g, '\n$1')}`],
    ['rows out of order', `# MHz S DB R 50\n${rows(db).split('\n').reverse().join('\n')}\n`],
    ['noise figures behind', `# MHz S DB R 50\n${rows(db)}\n9 2 0.1 0.2 0.3\n9.1 2 0.1 0.2 0.3`],
    [
      'version 2',
      `[Version] 2.0\n# MHz S DB\n[Number of Ports] 2\n[Two-Port Data Order] 21_12\n[Reference] 50 50\n[Begin Information]\n9 9 9\n[End Information]\n[Network Data]\n${rows(db)}\n[End]\n9 0 0 0 0 0 0 0 0`,
    ],
    [
      'version 2, the other order',
      `[Version] 2.0\n# MHz S DB\n[Number of Ports] 2\n[Two-Port Data Order] 12_21\n[Network Data]\n${points
        .map(([f, a, b]) => `${f} -1 5 -50 7 ${a} ${b} -1 5`)
        .join('\n')}\n[End]`,
    ],
    [
      'version 2, lower triangle',
      `[Version] 2.0\n# MHz S DB\n[Number of Ports] 2\n[Matrix Format] Lower\n[Network Data]\n${points
        .map(([f, a, b]) => `${f} -1 5 ${a} ${b} -1 5`)
        .join('\n')}\n[End]`,
    ],
    [
      'only S11 and S21',
      `# MHz S DB R 50\n${points.map(([f, a, b]) => `${f} -1 5 ${a} ${b}`).join('\n')}`,
    ],
  ])('%s', (_, text) => {
    expectThree(text);
  });

  test('the reference resistance may be any, written in any way', () => {
    const r = (option: string) => readSweepText(`${option}\n${rows(db)}`).reference;
    expect(r('# MHz S DB R 12.5')).toBe(12.5);
    expect(r('# MHz S DB R50.0')).toBe(50);
    expect(r('# MHz S DB')).toBe(50);
    expect(r('[Version] 2.0\n# MHz S DB\n[Reference] 75 75')).toBe(75);
  });

  test('zeros in S12 and S22 are not measured, and are said', () => {
    const text = points.map(([f, a, b]) => `${f} -1 5 ${a} ${b} 0 0 0 0`).join('\n');
    const sweep = expectThree(`# MHz S DB R 50\n${text}`);
    expect(sweep.notes).toContain('S12 and S22 are zero in every row: not measured');
    expect(sweep.read.columns.filter(({ holds }) => holds === 'nothing')).toHaveLength(4);
  });

  test('S21 that is zero is not taken where S12 was measured', () => {
    const text = points.map(([f, a, b]) => `${f} 0.9 0 0 0 ${10 ** (a / 20)} ${b} 0 0`).join('\n');
    expectThree(`# MHz S MA R 50\n${text}`);
  });

  test('what is odd is said', () => {
    expect(sweepOf(`# S DB\n${rows(db, 1e-3)}`).notes).toContain('no unit');
    expect(sweepOf(`# S DB\n${rows(db, 1e-3)}`).read.unitSupposed).toBe(true);
    expect(sweepOf(`# MHz S DB\n# MHz S DB\n${rows(db)}`).notes).toContain('repeated');
    expect(readSweepText(`# MHz Z DB\n${rows(db)}`).notes[0]?.says).toContain('only S can be');
    const swapped = rows(db).split('\n');
    const sweep = sweepOf(`# MHz S DB\n${[swapped[0], swapped[2], swapped[1]].join('\n')}`);
    expect(sweep.unsorted).toBe(1);
    expect(sweepOf(`# MHz S DB\n${rows(db)}\n9.003 -1 oops`).notes).toContain('left out');
  });

  test('another unit can be chosen', () => {
    // A maker’s file that leaves MHz out would be GHz by the standard, a thousand times too high.
    expectThree(`# S DB R 50\n${rows(db)}`, { unit: 'MHz' });
  });
});

test('Touchstone of one port: half of one minus the reflection is what a fixture passes', () => {
  // A crystal at the end of a 50 Ω line: S11 = (Z − 50)/(Z + 50), so (1 − S11)/2 = 50/(Z + 50),
  // which is the transmission between 25 Ω and 25 Ω. Closed form.
  const z = [30, 400] as const;
  const d = (z[0] + 50) ** 2 + z[1] ** 2;
  const re = ((z[0] - 50) * (z[0] + 50) + z[1] ** 2) / d;
  const im = (z[1] * (z[0] + 50) - (z[0] - 50) * z[1]) / d;
  const sweep = sweepOf(`# MHz S RI R 50\n9 ${re} ${im}\n9.1 ${re} ${im}`);
  expect(sweep.reflection).toBe(true);
  expect(sweep.level[0]).toBeCloseTo(20 * Math.log10(50 / Math.hypot(80, 400)), 9);
  expect(sweep.phase?.[0]).toBeCloseTo(-Math.atan2(400, 80), 9);
});

describe('columns of numbers', () => {
  const csv = (separator: string, comma = false) =>
    points
      .map(([f, a]) => [f, a].map((x) => (comma ? String(x).replace('.', ',') : String(x))))
      .map((row) => row.join(separator))
      .join('\n');
  test.each([
    ['commas', csv(',')],
    ['semicolons', csv(';')],
    ['semicolons and decimal commas', csv(';', true)],
    ['tabs', csv('\t')],
    ['tabs and decimal commas', csv('\t', true)],
    ['spaces', csv(' ')],
    ['several spaces', csv('    ')],
    ['spaces and decimal commas', csv(' ', true)],
    ['comma and space', csv(', ')],
    ['quoted', csv('","').replace(/^|$/gm, '"')],
    ['a separator at the end', csv(';').replace(/$/gm, ';')],
    ['titles', `Frequency (MHz),Level (dB)\n${csv(',')}`],
    ['titles with units apart', `f/MHz;S21 dB\n${csv(';')}`],
    ['titles that are units', `MHz\tdBm\n${csv('\t')}`],
    ['comment signs before titles', `# Frequency [MHz], S21 [dB]\n${csv(',')}`],
    [
      'lines of name, value and unit before the data',
      `Start;9;MHz\nStop;9,002;MHz\nIF bandwidth;100;Hz\nDate;1 April;\n\nFreq;Level\nMHz;dB\n${csv(';', true)}`,
    ],
    ['units behind each number', points.map(([f, a]) => `${f} MHz, ${a} dB`).join('\n')],
    ['true minus signs', csv(',').replace(/-/g, '−')],
    ['loss in positive figures', `MHz,Loss (dB)\n${csv(',').replace(/,-/g, ',')}`],
    [
      'level first',
      `Level (dB),Frequency (MHz)\n${points.map(([f, a]) => `${a},${f}`).join('\n')}`,
    ],
    ['powers of ten', points.map(([f, a]) => `${f}e6,${a}e0`).join('\n')],
    ['an exponent and no unit', points.map(([f, a]) => `${f * 1e6} ${a}`).join('\n')],
    ['kHz without a unit', points.map(([f, a]) => `${f * 1e3} ${a}`).join('\n')],
    ['rows between words', `start\n${csv(',')}\nend of sweep\n`],
    ['a third column', `f MHz,dB,note\n${points.map(([f, a]) => `${f},${a},1`).join('\n')}`],
  ])('%s', (_, text) => {
    expectThree(text, {}, false);
  });

  test.each([
    ['dB and degrees', `MHz,dB,deg\n${points.map((p) => p.join(',')).join('\n')}`],
    ['dB and degrees, not said', points.map((p) => p.join(' ')).join('\n')],
    [
      'real and imaginary',
      `f (MHz);Re(S21);Im(S21)\n${points.map(([f, a, b]) => `${f} ${polar(a, b)}`.replace(/ /g, ';')).join('\n')}`,
    ],
    [
      'magnitude and phase',
      `f (MHz);Mag;Phase (deg)\n${points.map(([f, a, b]) => `${f};${10 ** (a / 20)};${b}`).join('\n')}`,
    ],
    [
      'magnitude and radians',
      `f (MHz);Mag;Phase (rad)\n${points.map(([f, a, b]) => `${f};${10 ** (a / 20)};${(b * Math.PI) / 180}`).join('\n')}`,
    ],
  ])('%s', (_, text) => {
    expectThree(text);
  });

  test('volts become dB over a volt', () => {
    const text = `MHz;mV\n${points.map(([f, a]) => `${f};${1000 * 10 ** (a / 20)}`).join('\n')}`;
    expectThree(text, {}, false);
    const pp = `MHz;Output (mVpp)\n${points.map(([f, a]) => `${f};${1000 * 10 ** (a / 20)}`).join('\n')}`;
    expectThree(pp, {}, false);
  });

  test('the guess can be put right', () => {
    const text = points.map(([f, a, b]) => `${b} ${a} ${f}`).join('\n');
    expectThree(text, { frequency: 3, level: 2, second: 1, reads: 'dBAngle', unit: 'MHz' });
    // Columns that are not there are not taken.
    expectThree(points.map((p) => p.join(' ')).join('\n'), { level: 40, frequency: 9 });
  });

  test('no numbers, no sweep', () => {
    for (const text of ['', ' \n', 'hello', '1\n2\n3', '# a comment\n', '!\n']) {
      expect(chooseSweep(readSweepText(text), auto)).toBeNull();
    }
  });
});
