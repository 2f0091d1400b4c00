import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planFields } from '../../src/engine/stages/plan/fields.ts';
import { receiveFields } from '../../src/engine/stages/receive/fields.ts';
import { supplyFields } from '../../src/engine/stages/supply/fields.ts';
import type { SupplySeen } from '../../src/engine/stages/supply/seen.ts';
import { workSupply } from '../../src/engine/stages/supply/work.ts';
import { transmitFields } from '../../src/engine/stages/transmit/fields.ts';
import { anyInputs, anyValue, notFinite } from './transmitInputs.ts';

const amps = fc.double({ min: 1e-6, max: 20, noNaN: true });

/** Anything at all that the fields accept. */
const seen = fc
  .record({
    own: anyInputs(supplyFields.inputs),
    scheme: fc.constantFrom('direct', 'conversion'),
    supplyVoltage: anyValue(planFields.inputs.supply),
    pep: anyValue(planFields.inputs.pep),
    part: fc.double({ min: 0, max: 0.99, noNaN: true }),
    resistance: anyValue(transmitFields.inputs.supplyResistance),
    speechMean: anyValue(transmitFields.inputs.speechMean),
    mic: amps,
    follower: amps,
    amplifier: amps,
    driver: amps,
    quiescent: amps,
    peak: amps,
    chip: anyValue(receiveFields.inputs.chip),
    speaker: anyValue(receiveFields.inputs.speaker),
    loudness: anyValue(receiveFields.inputs.listening),
    speakerMost: fc.double({ min: 1e-3, max: 10, noNaN: true }),
  })
  .map(
    ({ own, part, ...rest }) =>
      ({ ...own, ...rest, saturation: part * Number(rest.supplyVoltage) }) as SupplySeen,
  );

test('no entry that the fields accept makes a figure that is none', () => {
  fc.assert(
    fc.property(seen, (s) => {
      expect(notFinite(workSupply(s).results)).toBeNull();
    }),
    { numRuns: 1000 },
  );
});

test('more talk, a smaller battery, longer leads: never better', () => {
  fc.assert(
    fc.property(seen, fc.double({ min: 1, max: 3, noNaN: true }), (s, more) => {
      const now = workSupply(s).results;
      const smaller = workSupply({ ...s, capacity: s.capacity / more }).results;
      expect(Number(smaller.hours)).toBeLessThanOrEqual(Number(now.hours) * (1 + 1e-12));
      const longer = workSupply({ ...s, leadLength: s.leadLength * more }).results;
      expect(Number(longer.leadDrop)).toBeGreaterThanOrEqual(Number(now.leadDrop) * (1 - 1e-12));
      expect(Number(now.endPower)).toBeLessThanOrEqual(s.pep);
    }),
    { numRuns: 300 },
  );
});
