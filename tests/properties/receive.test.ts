import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planFields } from '../../src/engine/stages/plan/fields.ts';
import { receiveFields } from '../../src/engine/stages/receive/fields.ts';
import type { ReceiveSeen } from '../../src/engine/stages/receive/seen.ts';
import { workReceive } from '../../src/engine/stages/receive/work.ts';
import { anyInputs, anyValue, notFinite } from './transmitInputs.ts';

const { frequency, supply, antenna } = planFields.inputs;
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Anything that the fields accept, behind any filter and amplifier. */
const seen: fc.Arbitrary<ReceiveSeen> = fc
  .record({
    own: anyInputs(receiveFields.inputs),
    frequency: anyValue(frequency).map((f) => f ?? 7e6),
    supply: anyValue(supply),
    antenna: anyValue(antenna),
    scheme: fc.constantFrom('direct', 'conversion'),
    bandLoss: within(0.1, 20),
    mixerLoss: within(3.9, 20),
    thirdGain: fc.option(within(-10, 30), { nil: null }),
    lineLoss: within(0, 20),
    efficiency: fc.option(within(0.001, 1), { nil: null }),
    filterLoss: within(0.1, 20),
    noiseBandwidth: within(100, 6000),
    amplifierGain: within(-10, 30),
    amplifierNoise: within(0.5, 20),
    detectorImpedance: within(10, 5000),
    networkAllowed: within(0, 6),
    networkLoss: fc.option(within(0, 6), { nil: null }),
  })
  .map(({ own, ...rest }) => ({ ...own, ...rest }) as ReceiveSeen);

test('no entry that the fields accept makes a figure that is none', () => {
  fc.assert(
    fc.property(seen, (s) => {
      expect(notFinite(workReceive(s).results)).toBeNull();
    }),
    { numRuns: 2000 },
  );
});

test('more loss in front never makes the receiver quieter, nor the noise rise higher', () => {
  fc.assert(
    fc.property(seen, (s) => {
      if (s.frontLoss > 25) return;
      const near = workReceive(s).results;
      const far = workReceive({ ...s, frontLoss: s.frontLoss + 3 }).results;
      expect((far.noiseFigure ?? 0) - (near.noiseFigure ?? 0)).toBeCloseTo(3, 6);
      expect(far.frontGain ?? 0).toBeCloseTo((near.frontGain ?? 0) - 3, 8);
      if ((near.external ?? 0) > 0) expect(far.noiseRise ?? 0).toBeLessThan(near.noiseRise ?? 0);
    }),
    { numRuns: 500 },
  );
});

test('a stronger signal is never softer, and needs less gain', () => {
  fc.assert(
    fc.property(seen, (s) => {
      const rows = workReceive(s).results.loudness ?? [];
      for (let i = 1; i < rows.length; i += 1) {
        expect(rows[i]?.speaker ?? 0).toBeGreaterThanOrEqual(rows[i - 1]?.speaker ?? 0);
        expect(rows[i]?.needed ?? 0).toBeLessThan(rows[i - 1]?.needed ?? 0);
      }
    }),
    { numRuns: 300 },
  );
});
