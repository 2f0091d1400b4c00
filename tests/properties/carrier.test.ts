import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type OscillatorCrystal,
  pulledFrequency,
  reactanceAt,
} from '../../src/engine/circuit/colpitts.ts';
import { reach } from '../../src/engine/circuit/pullingReach.ts';
import { trimming } from '../../src/engine/data/trimmers.ts';
import { seriesPart } from '../../src/engine/stages/carrier/seriesPart.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Crystals that exist: 1.8 to 21 MHz, Cm 8 to 28 fF, C0 2 to 7 pF, Q 20 000 to 200 000. */
const crystal: fc.Arbitrary<OscillatorCrystal> = fc
  .record({
    fs: between(1.8e6, 21e6),
    cm: between(8e-15, 28e-15),
    c0: between(2e-12, 7e-12),
    q: between(20_000, 200_000),
  })
  .map(({ fs, cm, c0, q }) => {
    const omega = 2 * Math.PI * fs;
    return { fs, lm: 1 / (omega * omega * cm), rm: 1 / (omega * cm * q), c0 };
  });
const divider = between(20e-12, 1e-9);

describe('pulling a crystal', () => {
  test('a capacitor in series raises, a coil lowers', () => {
    fc.assert(
      fc.property(crystal, divider, between(3e-12, 200e-12), between(1, 400), (x, c, s, ohms) => {
        const bare = pulledFrequency(x, c) ?? 0;
        const raised = pulledFrequency(x, 1 / (1 / c + 1 / s)) ?? 0;
        const lowered = pulledFrequency(x, c, ohms / (2 * Math.PI * x.fs)) ?? 0;
        expect(raised).toBeGreaterThan(bare);
        expect(lowered).toBeLessThan(bare);
      }),
    );
  });

  test('the part worked for a frequency within reach pulls the crystal there', () => {
    fc.assert(
      fc.property(crystal, divider, between(0, 1), (x, c, t) => {
        const { low, high } = reach(x, c);
        if (low === null || high === null) return;
        const f = low + t * (high - low);
        const part = seriesPart(f, reactanceAt(x, f), c);
        const load = part.c === null ? c : 1 / (1 / c + 1 / part.c);
        const back = pulledFrequency(x, load, part.l ?? 0) ?? 0;
        // A wire stands for anything below 10 mΩ.
        expect(Math.abs(back - f)).toBeLessThan(part.kind === 'none' ? 0.05 : 1e-6 * f * 1e-3);
      }),
    );
  });

  test('reach runs from the coil through the bare crystal to 2 pF', () => {
    fc.assert(
      fc.property(crystal, divider, (x, c) => {
        const { low, bare, high } = reach(x, c);
        if (low === null || bare === null || high === null) {
          // Only much loss with much holder capacitance can end it.
          expect(x.rm * x.c0 * x.fs).toBeGreaterThan(1e-3);
          return;
        }
        expect(low).toBeLessThan(bare);
        expect(bare).toBeLessThan(high);
        const part = seriesPart(high, reactanceAt(x, high), c);
        expect(part.c ?? 0).toBeCloseTo(2e-12, 15);
      }),
    );
  });

  test('more crystals side by side reach further up', () => {
    fc.assert(
      fc.property(crystal, divider, (x, c) => {
        const two = { ...x, lm: x.lm / 2, rm: x.rm / 2, c0: x.c0 * 2 };
        const [one, both] = [reach(x, c).high, reach(two, c).high];
        if (one !== null && both !== null) expect(both).toBeGreaterThan(one);
      }),
    );
  });
});

test('a trimmer with what stands beside it covers a quarter either way', () => {
  fc.assert(
    fc.property(between(5e-12, 100e-12), (c) => {
      const set = trimming(c);
      if (set === null) throw new Error('none');
      expect(set.fixed + set.low).toBeLessThanOrEqual(0.8 * c);
      expect(set.fixed + set.high).toBeGreaterThanOrEqual(1.25 * c);
    }),
  );
});
