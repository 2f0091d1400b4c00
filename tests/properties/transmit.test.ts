import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cosinePulse } from '../../src/engine/circuit/conduction.ts';
import { convertFields } from '../../src/engine/stages/convert/fields.ts';
import { frontFields } from '../../src/engine/stages/front/fields.ts';
import { planFields } from '../../src/engine/stages/plan/fields.ts';
import { transmitFields } from '../../src/engine/stages/transmit/fields.ts';
import type { TransmitSeen } from '../../src/engine/stages/transmit/seen.ts';
import { workTransmit } from '../../src/engine/stages/transmit/work.ts';
import { anyInputs, anyValue, notFinite } from './transmitInputs.ts';

const { frequency, supply, pep, antenna, ambient, scheme } = planFields.inputs;
const { oscillatorLevel, signalLevel, mixerLoss } = convertFields.inputs;
const { end } = frontFields.inputs;
const decibels = fc.option(fc.double({ min: -200, max: 60, noNaN: true }), { nil: null });

/** What the band-pass leaves of the mixer's products, in a rig that converts. */
const leftovers = fc.array(
  fc.record({
    what: fc.constant('image'),
    frequency: fc.double({ min: 1e5, max: 1e8, noNaN: true }),
    before: decibels,
    taken: decibels,
    left: decibels,
  }),
  { maxLength: 4 },
);

/** Anything at all that the fields accept, and any filter. */
const seen: fc.Arbitrary<TransmitSeen> = fc
  .record({
    own: anyInputs(transmitFields.inputs),
    frequency: anyValue(frequency).map((f) => f ?? 7e6),
    filterFrequency: fc.option(fc.double({ min: 1e5, max: 1e8, noNaN: true }), { nil: null }),
    scheme: anyValue(scheme),
    oscillatorLevel: anyValue(oscillatorLevel),
    signalLevel: anyValue(signalLevel),
    mixerLoss: anyValue(mixerLoss),
    frontEnd: anyValue(end),
    frontLoss: fc.option(fc.double({ min: 0, max: 60, noNaN: true }), { nil: null }),
    frontLeftovers: fc.option(leftovers, { nil: null }),
    supply: anyValue(supply),
    pep: anyValue(pep),
    antenna: anyValue(antenna),
    ambient: anyValue(ambient),
    ends: fc.option(fc.double({ min: 10, max: 5000, noNaN: true }), { nil: null }),
    endsLoad: fc.option(fc.double({ min: 10, max: 5000, noNaN: true }), { nil: null }),
    filterLoss: fc.double({ min: 0.1, max: 20, noNaN: true }),
    attenuation: fc.double({ min: 0, max: 60, noNaN: true }),
    carrierFrequency: fc.option(fc.double({ min: 1e5, max: 1e8, noNaN: true }), { nil: null }),
    suppression1k: fc.option(fc.double({ min: 0, max: 100, noNaN: true }), { nil: null }),
    suppressionWorst: fc.double({ min: 0, max: 100, noNaN: true }),
  })
  .map(
    ({ own, ...plan }) =>
      ({
        ...own,
        ...plan,
        pepLevel: 10 * Math.log10(Number(plan.pep) / 1e-3),
      }) as TransmitSeen,
  );

test('no entry that the fields accept makes a figure that is none', () => {
  fc.assert(
    fc.property(seen, (s) => {
      const { results, problems } = workTransmit(s);
      expect(notFinite(results)).toBeNull();
      // Blank figures are explained.
      if (results.collectorLoad === null || results.chain === null) {
        expect(problems.length).toBeGreaterThan(0);
      }
    }),
    { numRuns: 2000 },
  );
});

test('rows of the chain hang together', () => {
  fc.assert(
    fc.property(seen, (s) => {
      const { chain, micGain, over } = workTransmit(s).results;
      if (chain === null || micGain === null || over === null) return;
      chain.forEach((row, i) => {
        const { level, vpp, load, gain } = row;
        if (level === null || vpp === null || load === null) throw new Error('a row without level');
        // Voltage, resistance and level are one power.
        expect(10 * Math.log10(vpp ** 2 / (8 * load) / 1e-3)).toBeCloseTo(level, 8);
        const next = chain[i + 1]?.level;
        if (next !== undefined && next !== null) expect(level + (gain ?? 0)).toBeCloseTo(next, 8);
      });
      // The chain starts from the microphone's own voltage and ends at the power wanted and the drive.
      expect((chain[0]?.vrms ?? 0) / s.micLevel).toBeCloseTo(1, 8);
      expect(chain.at(-1)?.level).toBeCloseTo(s.pepLevel + over, 8);
    }),
    { numRuns: 500 },
  );
});

test('currents of the final add up to its pulse, and energy is kept', () => {
  fc.assert(
    fc.property(seen, (s) => {
      const r = workTransmit(s).results;
      if (r.conductionAngle === null || r.peakCurrent === null) return;
      const [dc = 0, first = 0] = r.harmonicCurrents ?? [];
      expect(first ** 2 * (r.collectorLoad ?? 0)).toBeCloseTo(2 * (r.collectorPower ?? 0), 6);
      expect(s.supply * dc).toBeCloseTo((r.collectorPower ?? 0) + (r.dissipation ?? 0), 6);
      expect(r.dissipationTone ?? 0).toBeGreaterThanOrEqual((r.dissipation ?? 0) - 1e-9);
      expect(r.efficiency ?? 1).toBeLessThan(1);
      if (r.operating !== 'a') {
        const sum = Array.from({ length: 400 }, (_, n) =>
          cosinePulse(Number(r.conductionAngle), n),
        );
        expect(sum.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 2);
      }
    }),
    { numRuns: 200 },
  );
});

test('more power asks for a lower load, more current and more microphone gain', () => {
  fc.assert(
    fc.property(seen, (s) => {
      if (s.pep > 50 || s.biasBy !== 'current') return;
      const one = workTransmit(s).results;
      const two = workTransmit({
        ...s,
        pep: 2 * s.pep,
        pepLevel: s.pepLevel + 10 * Math.log10(2),
      }).results;
      if (one.collectorLoad === null || two.collectorLoad === null) return;
      expect(two.collectorLoad / one.collectorLoad).toBeCloseTo(0.5, 9);
      expect(two.dcCurrent ?? 0).toBeGreaterThanOrEqual((one.dcCurrent ?? 0) * (1 - 1e-12));
      if (one.micGain !== null) {
        expect((two.micGain ?? 0) - one.micGain).toBeCloseTo(10 * Math.log10(2), 8);
      }
    }),
    { numRuns: 300 },
  );
});
