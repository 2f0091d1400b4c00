import { describe, expect, test } from 'vitest';
import {
  fluxGuide,
  peakFlux,
  thickestWire,
  turnsFor,
  wireLength,
} from '../../src/engine/circuit/toroid.ts';
import { wireResistance } from '../../src/engine/circuit/wireLoss.ts';
import { awgDiameter } from '../../src/engine/data/awgDiameter.ts';
import { type Core, coreSizes, cores } from '../../src/engine/data/cores.ts';
import { wires } from '../../src/engine/data/wires.ts';

function core(key: string): Core {
  const found = cores.find((c) => c.key === key);
  if (!found) throw new Error(`no core ${key}`);
  return found;
}

// Source: makers' lists at second hand, four agreeing; µH per 100 turns, mixes 2, 6, 7.
const lists = [
  ['T25', 34, 27, 29],
  ['T37', 40, 30, 32],
  ['T44', 52, 42, 46],
  ['T50', 49, 40, 43],
  ['T68', 57, 47, 52],
  ['T80', 55, 45, 50],
  ['T94', 84, 70, null],
  ['T106', 135, 116, 133],
] as const;

describe('powdered iron', () => {
  test.each(lists)('%s: µH per 100 turns', (name, two, six, seven) => {
    const per100 = (mix: number) => {
      const found = cores.find((c) => c.key === `${name}-${mix}`);
      return found ? found.al * 100 ** 2 * 1e6 : null;
    };
    expect(per100(2)).toBeCloseTo(two, 9);
    expect(per100(6)).toBeCloseTo(six, 9);
    if (seven === null) expect(per100(7)).toBeNull();
    else expect(per100(7)).toBeCloseTo(seven, 9);
  });

  // Source: A_L = μ₀·μ·A/l, closed form of a thin ring; the lists' own A_L lie up to 15 % above it.
  test.each(cores.filter((c) => c.mix.kind === 'iron').map((c) => [c.title, c] as const))(
    '%s: A_L agrees with section, path and permeability',
    (_, { al, size, mix }) => {
      const ring = (4e-7 * Math.PI * mix.permeability * size.area) / size.path;
      expect(Math.abs(al / ring - 1)).toBeLessThan(0.17);
    },
  );

  // Source: an example in a maker's list, at second hand: 12 µH on T50-2 are 49.5 turns.
  test('12 µH on T50-2', () => {
    expect(turnsFor(12e-6, core('T50-2').al)).toBeCloseTo(49.5, 1);
  });

  // Source: 100·√(L/A_L), worked by hand from the lists, rounded to a tenth.
  const wanted = [0.45, 0.77, 0.9, 1.2, 1.38, 1.7, 2.2];
  test.each([
    ['T37-2', [10.6, 13.9, 15.0, 17.3, 18.6, 20.6, 23.5]],
    ['T37-6', [12.2, 16.0, 17.3, 20.0, 21.4, 23.8, 27.1]],
    ['T50-2', [9.6, 12.5, 13.6, 15.6, 16.8, 18.6, 21.2]],
    ['T50-6', [10.6, 13.9, 15.0, 17.3, 18.6, 20.6, 23.5]],
    ['T68-2', [8.9, 11.6, 12.6, 14.5, 15.6, 17.3, 19.6]],
  ] as const)('turns on %s', (name, turns) => {
    turns.forEach((printed, i) => {
      const n = turnsFor((wanted[i] ?? 0) * 1e-6, core(name).al);
      expect(Math.abs(n - printed)).toBeLessThanOrEqual(0.0501);
    });
  });

  // Source: the formula against a widely copied chart that lists 0.75 µH.
  test('ten turns on T68-2 are 0.57 µH', () => {
    expect(100 * core('T68-2').al * 1e6).toBeCloseTo(0.57, 10);
  });

  // Source: published 40 m low-pass, seven elements on T37-6: 1.38 µH 21 turns, 1.70 µH 24 turns;
  // 20 m: 0.773 µH 16 turns, 0.904 µH 17 turns.
  test.each([
    [1.38, 21],
    [1.7, 24],
    [0.773, 16],
    [0.904, 17],
  ])('%f µH on T37-6 are %d turns', (microhenry, printed) => {
    expect(Math.round(turnsFor(microhenry * 1e-6, core('T37-6').al))).toBe(printed);
  });
});

describe('ferrite', () => {
  // Source: makers' lists at second hand, nH per turn².
  test.each([
    ['FT37-43-older', 420],
    ['FT37-43', 350],
    ['FT50-43-older', 523],
    ['FT50-43', 440],
    ['FT82-43-older', 557],
    ['FT82-43', 470],
    ['FT37-61', 55.3],
    ['FT50-61', 68],
    ['FT82-61', 73.3],
    ['FT37-77', 884],
    ['FT50-77', 990],
    ['FT82-77', 1060],
  ])('%s', (key, nano) => {
    expect(core(key).al * 1e9).toBeCloseTo(nano, 9);
  });

  // Source: A_L = 0.2·μ·h·ln(OD/ID) nH, mm; FT37 at μ 800 gives 354 nH. Closed form of a ring of
  // rectangular section; rounded corners and tolerances take up to 15 %.
  test('A_L agrees with the dimensions', () => {
    const { outer, inner, height } = coreSizes.FT37;
    expect(0.2 * 800 * height * 1e3 * Math.log(outer / inner)).toBeCloseTo(354.3, 0);
    for (const { key, al, size, mix, generation } of cores) {
      if (mix.kind !== 'ferrite' || generation === 'older') continue;
      const ring =
        0.2e-9 * mix.permeability * size.height * 1e3 * Math.log(size.outer / size.inner);
      expect(Math.abs(al / ring - 1), key).toBeLessThan(0.15);
    }
  });

  test('mix 43 names its generation', () => {
    for (const c of cores) {
      if (c.mix.title === 'mix 43') expect(c.generation).not.toBeNull();
      expect(c.source.length).toBeGreaterThan(0);
    }
  });
});

describe('flux', () => {
  // Source: a maker's worked example: 25 V, 0.133 cm², 15 turns, 7 MHz give 40.3 G; guideline 57 G.
  test('the worked example', () => {
    const gauss = peakFlux(25, 15, 0.133e-4, 7e6) / 1e-4;
    expect(gauss).toBeCloseTo(40.3, 1);
    expect(fluxGuide(7e6) / 1e-4).toBeCloseTo(57, 0);
  });

  // Source: the sine's flux is the integral of the voltage: B = ∫v dt/(N·A) over a quarter period.
  test('Faraday’s law by integration', () => {
    const [rms, n, area, f] = [12, 9, 1.1e-5, 7.2e6];
    let flux = 0;
    const steps = 20_000;
    const quarter = 1 / (4 * f);
    for (let i = 0; i < steps; i += 1) {
      const t = ((i + 0.5) * quarter) / steps;
      flux += (Math.SQRT2 * rms * Math.cos(2 * Math.PI * f * t) * quarter) / steps;
    }
    expect(peakFlux(rms, n, area, f) / (flux / (n * area))).toBeCloseTo(1, 8);
  });
});

describe('wire', () => {
  // Source: ASTM B258, closed form (from memory), mm.
  test.each([
    [22, 0.6438],
    [24, 0.5106],
    [26, 0.4049],
    [28, 0.3211],
    [30, 0.2546],
  ])('AWG %d', (gauge, mm) => {
    expect(awgDiameter(gauge) * 1e3).toBeCloseTo(mm, 4);
  });

  // Source: a maker's NEMA table, Ω per 1000 ft at 20 °C. The table starts from diameters rounded
  // to a tenth of a mil, so the check does too.
  test.each([
    [20, 10.13],
    [24, 25.67],
    [28, 65.33],
    [30, 103.7],
  ])('AWG %d: ohms per 1000 feet', (gauge, ohms) => {
    const mil = 25.4e-6;
    const rounded = Math.round((awgDiameter(gauge) / mil) * 10) / 10;
    const r = wireResistance(304.8, rounded * mil);
    expect(Math.abs(r / ohms - 1)).toBeLessThan(6e-4);
    expect(Math.abs(wireResistance(304.8, awgDiameter(gauge)) / ohms - 1)).toBeLessThan(8e-3);
  });

  // Source: IEC 60317-0-1, grade 1 greatest overall diameter (from memory), mm.
  test.each([
    [0.25, 0.281],
    [0.315, 0.349],
    [0.4, 0.439],
    [0.5, 0.544],
  ])('%f mm grade 1', (bare, overall) => {
    const row = wires.find((w) => w.system === 'metric' && Math.abs(w.bare - bare * 1e-3) < 1e-9);
    expect((row?.overall ?? 0) * 1e3).toBeCloseTo(overall, 9);
  });

  test('wires rise in both diameters, and enamel takes 4 to 20 %', () => {
    for (const system of ['metric', 'awg'] as const) {
      const rows = wires.filter((w) => w.system === system);
      rows.forEach(({ bare, overall }, i) => {
        expect(bare).toBeGreaterThan(rows[i - 1]?.bare ?? 0);
        expect(overall).toBeGreaterThan(rows[i - 1]?.overall ?? 0);
        expect(overall / bare).toBeGreaterThan(1.04);
        expect(overall / bare).toBeLessThan(1.2);
      });
    }
  });
});

describe('fit', () => {
  // Source: a maker's table of turns in one full layer (from memory): size, AWG, turns. The table
  // leaves hardly any gap; with 30° left free up to a twelfth fewer must come out, never more.
  test.each([
    ['T37', 28, 41],
    ['T37', 24, 23],
    ['T50', 28, 63],
    ['T50', 26, 49],
    ['T50', 24, 37],
    ['T50', 22, 28],
    ['T68', 26, 61],
    ['T68', 24, 47],
    ['T68', 22, 36],
  ] as const)('%s with AWG %d: about %d turns', (name, gauge, printed) => {
    const wire = wires.find((w) => w.title === `AWG ${gauge}`);
    const inner = coreSizes[name].inner;
    let most = 1;
    while (thickestWire(inner, most + 1) >= (wire?.overall ?? 1)) most += 1;
    expect(most).toBeLessThanOrEqual(printed + 1);
    expect(most).toBeGreaterThanOrEqual(printed * (1 - 1 / 12) - 1.5);
  });

  // Source: geometry. So many circles of that diameter touch their neighbours and the hole.
  test.each([3, 8, 20, 45])('%d wires touch each other and the hole', (turns) => {
    const inner = 7.7e-3;
    const d = thickestWire(inner, turns);
    const radius = (inner - d) / 2;
    const step = (2 * Math.PI * (11 / 12)) / turns;
    const chord = Math.hypot(radius * Math.cos(step) - radius, radius * Math.sin(step));
    expect(chord / d).toBeCloseTo(1, 12);
  });

  // Source: geometry of a rectangle with rounded corners.
  test('length of one turn without tails', () => {
    const size = { outer: 12.7e-3, inner: 7.7e-3, height: 4.83e-3 };
    const corner = Math.PI * 0.5e-3;
    expect(wireLength(size, 0.5e-3, 10, 0)).toBeCloseTo(
      10 * (2 * 4.83e-3 + 2 * 2.5e-3 + corner),
      12,
    );
  });
});
