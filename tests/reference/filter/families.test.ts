import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { besselPoles } from '../../../src/engine/circuit/besselPoles.ts';
import { bracketedMaximum } from '../../../src/engine/circuit/bracketedMaximum.ts';
import {
  type Couplings,
  couplingLoss,
  couplings,
  type PoleFamily,
} from '../../../src/engine/circuit/couplings.ts';
import { crystalOf, parallelResonance } from '../../../src/engine/circuit/crystal.ts';
import { crystalLadder } from '../../../src/engine/circuit/crystalLadder.ts';
import { endRatio } from '../../../src/engine/circuit/doubledEnds.ts';
import { gaussianPoles } from '../../../src/engine/circuit/gaussianPoles.ts';
import { ladderForWidth } from '../../../src/engine/circuit/ladderForWidth.ts';
import { ladderFromPoles } from '../../../src/engine/circuit/ladderFromPoles.ts';
import { linearPhasePoles } from '../../../src/engine/circuit/linearPhasePoles.ts';
import { type Pole, polesLoss } from '../../../src/engine/circuit/poles.ts';
import { slowWidth } from './slowLadder.ts';

const degree = Math.PI / 180;

// Printed to four decimals: half a unit of the last is allowed and no more.
const half = 0.5000001e-4;

const pole = (re: number, im = 0): Pole => ({ re, im });
const byIm = (poles: readonly Pole[]) => poles.toSorted((a, b) => a.im - b.im);

function expectPoles(found: readonly Pole[], printed: readonly Pole[], allowed = half): void {
  expect(found.length).toBe(printed.length);
  byIm(printed).forEach(({ re, im }, i) => {
    expect(Math.abs((found[i]?.re ?? 0) - re), `${re} ± ${im}`).toBeLessThanOrEqual(allowed);
    expect(Math.abs((found[i]?.im ?? 0) - im), `${re} ± ${im}`).toBeLessThanOrEqual(allowed);
  });
}

describe('Bessel', () => {
  // Source: Winder, Analog and Digital Filter Design, table 2.3, equal ends; the ladder is printed
  // from the other end.
  test.each([
    [3, [0.3374, 0.9705, 2.2034]],
    [4, [0.2334, 0.6725, 1.0815, 2.2404]],
    [5, [0.1743, 0.5072, 0.804, 1.111, 2.2582]],
  ])('element values of %i', (n, printed) => {
    const g = ladderFromPoles(besselPoles(n));
    printed.toReversed().forEach((value, i) => {
      expect(Math.abs((g[i + 1] ?? 0) - value)).toBeLessThanOrEqual(half);
    });
  });

  // Source: roots of the reverse Bessel polynomials at half power, from the polynomials with 60
  // digits by a general library (mpmath polyroots).
  test('poles of four and eight', () => {
    expectPoles(
      besselPoles(4),
      [pole(1.3700678306, 0.4102497175), pole(0.9952087644, 1.2571057395)],
      1e-9,
    );
    expectPoles(
      besselPoles(8),
      [
        pole(1.7574084004, 0.2728675751),
        pole(1.6369394181, 0.8227956251),
        pole(1.3738412177, 1.3883565759),
        pole(0.8928697188, 1.9983258436),
      ],
      1e-9,
    );
  });

  // Source: the same definition worked with 60 digits: polynomial, zeros of reflection, continued
  // fraction.
  test('element values of twelve to eight digits', () => {
    const worked = [
      2.2629233, 1.0652583, 0.84013853, 0.73309605, 0.65913453, 0.59097358, 0.51824604, 0.43777572,
      0.34949045, 0.25458411, 0.15475798, 0.051922999,
    ];
    const g = ladderFromPoles(besselPoles(12));
    worked.forEach((value, i) => {
      expect(Math.abs((g[i + 1] ?? 0) / value - 1)).toBeLessThan(5e-8);
    });
  });

  // Definition: the first n − 1 derivatives of the delay by ω² are nothing at zero frequency.
  test.each([2, 5, 9, 12])('delay of %i is maximally flat', (n) => {
    const poles = besselPoles(n);
    const delay = (w: number) =>
      poles.reduce(
        (sum, { re, im }) =>
          sum + re / (re * re + (w - im) ** 2) + (im > 0 ? re / (re * re + (w + im) ** 2) : 0),
        0,
      );
    expect(Math.abs(delay(0.3) / delay(0) - 1)).toBeLessThan(0.3 ** (2 * n) * 1.1);
  });
});

describe('linear phase', () => {
  // Source: Linear Circuit Design Handbook, Analog Devices, 2008, chapter 8 (from memory); the
  // tables are Zverev's. Known disagreement: for 0.05° and 5 the table has .9430 for the real pole,
  // and half power then at 1.00009 rad/s; it is 0.94295 by the definition.
  test.each([
    [0.05, 2, [pole(1.0087, 0.668)]],
    [0.05, 3, [pole(0.8541, 1.0725), pole(1.0459)]],
    [0.05, 4, [pole(0.9648, 0.4748), pole(0.7448, 1.4008)]],
    [0.05, 5, [pole(0.8915, 0.8733), pole(0.6731, 1.7085), pole(0.9429)]],
    [0.05, 6, [pole(0.8904, 0.4111), pole(0.8233, 1.2179), pole(0.6152, 1.981)]],
    [0.05, 7, [pole(0.8425, 0.7791), pole(0.7708, 1.5351), pole(0.5727, 2.2456), pole(0.8615)]],
    [
      0.05,
      8,
      [pole(0.8195, 0.3711), pole(0.793, 1.1054), pole(0.7213, 1.8134), pole(0.5341, 2.4761)],
    ],
    [
      0.05,
      10,
      [
        pole(0.7592, 0.3413),
        pole(0.7467, 1.0195),
        pole(0.7159, 1.6836),
        pole(0.6475, 2.3198),
        pole(0.4777, 2.9128),
      ],
    ],
    [0.5, 2, [pole(0.859, 0.6981)]],
    [0.5, 3, [pole(0.6969, 1.1318), pole(0.8257)]],
    [0.5, 4, [pole(0.7448, 0.5133), pole(0.6037, 1.4983)]],
    [0.5, 5, [pole(0.6775, 0.9401), pole(0.5412, 1.8256), pole(0.7056)]],
    [0.5, 6, [pole(0.6519, 0.4374), pole(0.6167, 1.2963), pole(0.4893, 2.0982)]],
    [
      0.5,
      8,
      [pole(0.5791, 0.3857), pole(0.5665, 1.1505), pole(0.5303, 1.8914), pole(0.4184, 2.578)],
    ],
    [
      0.5,
      10,
      [
        pole(0.5249, 0.3487),
        pole(0.5193, 1.0429),
        pole(0.5051, 1.7261),
        pole(0.4711, 2.385),
        pole(0.3708, 2.994),
      ],
    ],
  ])('poles for %f° and %i', (ripple, n, printed) => {
    expectPoles(linearPhasePoles(n, ripple * degree), printed);
  });

  // Source: the continued fraction of the printed poles, worked elsewhere.
  test('element values from the printed poles of four', () => {
    const g = ladderFromPoles([pole(0.9648, 0.4748), pole(0.7448, 1.4008)]);
    [2.246, 1.1428, 0.7963, 0.3363].forEach((value, i) => {
      expect(Math.abs((g[i + 1] ?? 0) - value)).toBeLessThanOrEqual(half);
    });
  });

  // Definition: n touches of the limits by turns.
  test.each([
    [0.05, 11],
    [0.05, 12],
    [0.5, 11],
    [0.5, 12],
  ])('%f° and %i: past the tables the phase still keeps its limits', (ripple, n) => {
    const poles = linearPhasePoles(n, ripple * degree);
    const phase = (w: number) =>
      poles.reduce(
        (sum, { re, im }) => sum + Math.atan2(w - im, re) + (im > 0 ? Math.atan2(w + im, re) : 0),
        0,
      );
    const sample = Array.from({ length: 2000 }, (_, i) => (i + 1) / 333);
    const touches = (tau: number) => {
      const off = sample.map((w) => phase(w) - tau * w);
      return off
        .filter(
          (one, i) => i > 0 && (one - (off[i - 1] ?? 0)) * ((off[i + 1] ?? Number.NaN) - one) < 0,
        )
        .slice(0, n);
    };
    // The line is the one for which all touches are of one size.
    const spread = (tau: number) => {
      const sizes = touches(tau).map(Math.abs);
      return sizes.length < n ? 1 : Math.max(...sizes) - Math.min(...sizes);
    };
    const slope = (phase(1e-3) / 1e-3) * 0.98;
    const coarse = Array.from({ length: 81 }, (_, i) => slope * (1 + i / 2000));
    const near = coarse.toSorted((a, b) => spread(a) - spread(b))[0] ?? 0;
    const best = bracketedMaximum(
      (tau) => -spread(tau),
      near - slope / 2000,
      near + slope / 2000,
      1e-9,
    );
    const found = touches(best.at);
    expect(found.length).toBe(n);
    found.forEach((one, j) => {
      expect(Math.abs(Math.abs(one) / (ripple * degree) - 1)).toBeLessThan(0.005);
      expect(Math.sign(one)).toBe((n - 1 - j) % 2 === 0 ? 1 : -1);
    });
  });
});

describe('Gaussian to 6 dB', () => {
  // Source: as above, tables of transitional filters (from memory).
  test.each([
    [3, [pole(0.9622, 1.2214), pole(0.9776)]],
    [4, [pole(0.794, 0.5029), pole(0.6304, 1.5407)]],
    [5, [pole(0.619, 0.8254), pole(0.3559, 1.5688), pole(0.665)]],
    [6, [pole(0.5433, 0.3431), pole(0.4672, 0.9991), pole(0.2204, 1.5067)]],
    [7, [pole(0.458, 0.5932), pole(0.3649, 1.1286), pole(0.1522, 1.4938), pole(0.4828)]],
    [8, [pole(0.4222, 0.264), pole(0.3833, 0.7716), pole(0.2878, 1.2066), pole(0.1122, 1.4798)]],
    [
      9,
      [
        pole(0.37, 0.4704),
        pole(0.323, 0.9068),
        pole(0.2309, 1.2634),
        pole(0.086, 1.474),
        pole(0.3842),
      ],
    ],
    [
      10,
      [
        pole(0.3384, 0.2101),
        pole(0.3164, 0.618),
        pole(0.2677, 0.9852),
        pole(0.1849, 1.2745),
        pole(0.0671, 1.4389),
      ],
    ],
  ])('poles of %i', (n, printed) => {
    expectPoles(gaussianPoles(n), printed);
  });

  // Source: the continued fraction of the printed poles, worked elsewhere.
  test('element values from the printed poles of four', () => {
    const g = ladderFromPoles([pole(0.794, 0.5029), pole(0.6304, 1.5407)]);
    [2.1425, 1.1599, 0.7832, 0.4198].forEach((value, i) => {
      expect(Math.abs((g[i + 1] ?? 0) - value)).toBeLessThanOrEqual(half);
    });
  });

  // Source: a Gaussian falls as the square of frequency in dB; 0.1 dB is the tables' tolerance.
  test.each([2, 3, 6, 11, 12])('%i follow the Gaussian to 6 dB', (n) => {
    const poles = gaussianPoles(n);
    const loss = (w: number) => 10 * Math.log10(polesLoss(poles, w));
    const swing = n % 2 === 1 ? 0.1 : -0.1;
    let edge = 1;
    while (loss(edge) < 6.0206) edge += 1e-5;
    const c = (6.0206 - swing / 2) / edge ** 2;
    for (let w = 0; w < edge; w += 0.01) {
      const off = (loss(w) - c * w * w) / swing;
      // Two poles cannot but overstep the one limit by 0.06 dB.
      expect(off).toBeGreaterThan(n === 2 ? -0.6 : -0.01);
      expect(off).toBeLessThan(1.01);
    }
  });
});

// Source: |1/D(jω)|² of the poles themselves.
test('the chain answers as its poles do', () => {
  const polesFor: Record<PoleFamily, (n: number) => Pole[]> = {
    bessel: besselPoles,
    gaussian: gaussianPoles,
    linear005: (n) => linearPhasePoles(n, 0.05 * degree),
    linear05: (n) => linearPhasePoles(n, 0.5 * degree),
  };
  fc.assert(
    fc.property(
      fc.constantFrom('bessel', 'gaussian', 'linear005', 'linear05'),
      fc.integer({ min: 2, max: 12 }),
      fc.double({ min: 0, max: 4, noNaN: true }),
      (family, n, omega) => {
        const chain = couplings(family, n, 0);
        const poles = polesFor[family](n);
        // Where the family's loss is least elsewhere the chain passes everything there.
        const own = (w: number) => 10 * Math.log10(polesLoss(poles, w)) + couplingLoss(chain, 0);
        expect(Math.abs(couplingLoss(chain, omega) - own(omega))).toBeLessThan(1e-9);
        expect(couplingLoss(chain, 0)).toBeGreaterThan(-1e-12);
        expect(couplingLoss(chain, 0)).toBeLessThan(0.1001);
      },
    ),
    { numRuns: 400 },
  );
});

// Source: the response is the poles’ alone, whichever zeros of reflection are taken (checked above);
// for a matched symmetrical response both ends of the ladder would be alike.
test('zeros by turns make ladders that are nearly symmetrical', () => {
  for (const family of ['bessel', 'gaussian', 'linear005', 'linear05'] as const) {
    for (let n = 4; n <= 12; n += 1) {
      const { qSource, qLoad } = couplings(family, n, 0);
      expect(Math.abs(Math.log(qSource / qLoad)), `${family} ${n}`).toBeLessThan(Math.log(1.8));
    }
  }
});

describe('doubled ends', () => {
  // Source: the chain of two and three whole sections with matched ends is Butterworth's: closed
  // forms ¼x⁴ and x⁶.
  test.each([2, 3])('%i are flat', (n) => {
    const [one, other] = [couplings('doubled', n, 0), couplings('butterworth', n, 0)];
    expect(one.qSource).toBeCloseTo(other.qSource, 12);
    one.k.forEach((k, i) => {
      expect(k).toBeCloseTo(other.k[i] ?? 0, 12);
    });
  });

  // Source: image parameters, loss 1 + ¼(ρ/sin θ − sin θ/ρ)²·sin²((n − 1)θ).
  test.each([4, 6, 9, 12])('%i: the chain has the loss of its image parameters', (n) => {
    const chain = couplings('doubled', n, 0);
    const rho = endRatio(n);
    for (let w = 0.02; w < 1; w += 0.05) {
      const theta = Math.acos(chain.qSource * rho * w);
      const s = Math.sin(theta);
      const ratio = 1 + ((rho / s - s / rho) ** 2 * Math.sin((n - 1) * theta) ** 2) / 4;
      expect(couplingLoss(chain, w)).toBeCloseTo(10 * Math.log10(ratio), 9);
    }
  });

  // Definition: of all ends, those with the least ripple; so other ends ripple more.
  test.each([4, 5, 8, 11])('%i: no other ends ripple less', (n) => {
    const chain = couplings('doubled', n, 0);
    const ripple = (one: Couplings) => {
      const at = Array.from({ length: 1200 }, (_, i) => couplingLoss(one, i / 1200));
      return Math.max(
        at[0] ?? 0,
        ...at.filter((a, i) => i > 0 && a > (at[i - 1] ?? 0) && a >= (at[i + 1] ?? 99)),
      );
    };
    const least = ripple(chain);
    for (const factor of [0.8, 0.95, 0.99, 1.01, 1.05, 1.25]) {
      const other = { ...chain, qSource: chain.qSource * factor, qLoad: chain.qLoad * factor };
      expect(ripple(other)).toBeGreaterThan(least);
    }
    // And less than with single crystals all through.
    if (n > 4) expect(least).toBeLessThan(ripple(couplings('equal', n, 0)));
  });
});

test('crystals of every family: the lossy width is the one asked for within 0.5 %, or out of reach', () => {
  const seen = { met: 0, wide: 0, narrow: 0, gap: 0 };
  const lossless = { capacitorQ: Number.POSITIVE_INFINITY, stray: 0 };
  let pick = 0;
  let scanned = 0;
  for (const family of ['bessel', 'gaussian', 'linear005', 'linear05', 'doubled'] as const) {
    for (const n of [2, 3, 4, 5, 6, 8, 10, 12]) {
      for (const width of [500, 1200, 1800, 2400, 3000]) {
        const fs = [3.6864e6, 9e6, 14.318e6][pick % 3] ?? 0;
        const [cm, c0] = (
          [
            [9e-15, 2.5e-12],
            [20e-15, 5e-12],
          ] as const
        )[pick % 2] ?? [0, 0];
        const qu = [40e3, 100e3, 250e3, 80e3][pick % 4] ?? 0;
        pick += 1;
        const crystal = crystalOf(fs, 1 / ((2 * Math.PI * fs) ** 2 * cm), qu, c0);
        const chain = couplings(family, n, 0);
        const made = ladderForWidth(crystal, chain, lossless, width);
        seen[made.outcome] += 1;
        const at = `${fs} ${cm} ${n} ${family} ${qu} ${width}: ${made.outcome}`;
        if (made.outcome === 'met') {
          const { low, high } = made.band;
          const found = slowWidth(made.ladder, low - width * 0.3, high + width * 0.3, 240);
          expect(Math.abs(found / width - 1), at).toBeLessThan(5e-3);
          // The ends differ as the family's do, and the meshes are in tune.
          const p = chain.parallel?.[0] ?? 1;
          expect(made.ladder.source[0] / (made.h / chain.qSource / p)).toBeCloseTo(1, 12);
        }
        if (made.outcome !== 'wide') continue;
        expect(made.widest.width, at).toBeLessThan(width);
        if (scanned >= 8) continue;
        scanned += 1;
        const spacing = parallelResonance(crystal) - fs;
        for (let i = 0; i <= 60; i += 1) {
          const h = made.widest.h * 10 ** (-1 + i / 30);
          const ladder = crystalLadder(crystal, chain, h, lossless);
          const found = slowWidth(ladder, fs - spacing * 0.3, fs + spacing * 0.999, 300);
          expect(found / made.widest.width, at).toBeLessThan(1.001);
        }
      }
    }
  }
  console.log('families grid of', pick, seen);
  expect(seen.gap).toBeLessThan(pick / 50);
});

test('doubled ends: no series capacitors, equal couplings, half the crystal at the ends', () => {
  const crystal = crystalOf(9e6, 14e-3, 1e5, 3.5e-12);
  const { ladder } = ladderForWidth(
    crystal,
    couplings('doubled', 8, 0),
    { capacitorQ: 2000, stray: 0 },
    2400,
  );
  expect([...ladder.series]).toEqual(Array(8).fill(0));
  for (const c of ladder.coupling) expect(c / (ladder.coupling[0] ?? 0)).toBeCloseTo(1, 12);
  // Two alike in parallel: half Lm and Rm, double Cm and C0.
  expect(ladder.lm[0]).toBe(crystal.lm / 2);
  expect(ladder.rm[7]).toBe(crystal.rm / 2);
  expect(ladder.cm[0]).toBe(crystal.cm * 2);
  expect(ladder.c0[7]).toBe(crystal.c0 * 2);
  expect(ladder.lm[1]).toBe(crystal.lm);
});
