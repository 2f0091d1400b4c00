import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cosinePulse } from '../../src/engine/circuit/conduction.ts';
import { TURNS_TOLERANCE, turnsRatio } from '../../src/engine/circuit/turnsRatio.ts';
import { outputFields } from '../../src/engine/stages/output/fields.ts';
import type { OutputSeen } from '../../src/engine/stages/output/seen.ts';
import { workOutput } from '../../src/engine/stages/output/work.ts';

const between = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);

const seen: fc.Arbitrary<OutputSeen> = fc
  .record({
    nominal: between(1.6e6, 30e6),
    pep: between(0.01, 100),
    antenna: between(5, 5000),
    rules: fc.constantFrom('itu', 'us', 'usBefore2003', 'cept', 'own'),
    ownLimit: between(20, 100),
    ownRows: fc.constant(null),
    collectorLoad: between(0.5, 5000),
    angle: fc.double({ min: 1, max: 2 * Math.PI, noNaN: true }),
    outputImpedance: fc.option(between(5, 1e4)),
    match: fc.constantFrom('pi', 'transformer', 'none'),
    loadedQ: between(0.5, 15),
    lowpass: fc.constantFrom('none', 'halfWave', 'doubleHalfWave', 'butterworth', 'chebyshev'),
    order: fc.integer({ min: 3, max: 9 }),
    cutoffRatio: between(1, 2),
    ripple: between(0.001, 1),
    coilQ: between(5, 1000),
    capacitorQ: between(20, 1e5),
    selfCapacitance: fc.double({ min: 0, max: 50e-12, noNaN: true }),
    fitted: fc.constantFrom('exact', 'e24', 'e12', 'e6'),
    marginWanted: fc.double({ min: 0, max: 20, noNaN: true }),
  })
  .map(({ angle, ...rest }) => {
    const fundamental = Math.sqrt((2 * rest.pep) / rest.collectorLoad);
    const harmonicCurrents = [...Array(11).keys()].map(
      (n) => (fundamental * cosinePulse(angle, n)) / cosinePulse(angle, 1),
    );
    return { ...rest, fundamental, harmonicCurrents } as OutputSeen;
  });

/** Every number of a result, however deep. */
function* numbers(value: unknown): Generator<number> {
  if (typeof value === 'number') yield value;
  else if (value instanceof Float64Array) yield* value;
  else if (typeof value === 'object' && value !== null) {
    for (const each of Object.values(value)) yield* numbers(each);
  }
}

test('any network within the ranges gives figures or a reason, never a NaN', () => {
  fc.assert(
    fc.property(seen, (given) => {
      const { results, problems } = workOutput(given);
      for (const n of numbers(results)) expect(Number.isFinite(n)).toBe(true);
      if (results.pepAntenna === null) expect(problems.length).toBeGreaterThan(0);
      const known = { ...outputFields.inputs, ...outputFields.results };
      for (const { field, says } of problems) {
        expect(Object.keys(known)).toContain(field.replace('output.', ''));
        expect(says).not.toMatch(/NaN|Infinity|undefined/);
      }
    }),
    { numRuns: 300 },
  );
});

// Source: conservation of energy.
test('no network gives more than the final puts in, and none gains', () => {
  fc.assert(
    fc.property(seen, (given) => {
      const { loss, pepAntenna, inputResistance, drive } = workOutput(given).results;
      if (loss === null || pepAntenna === null || inputResistance === null) return;
      expect(loss).toBeGreaterThanOrEqual(-1e-9);
      const most = ((drive ?? 0) * given.fundamental) ** 2 * (inputResistance / 2);
      expect(pepAntenna).toBeLessThanOrEqual(most * (1 + 1e-12));
      // The collector never swings further than into the load that was wanted.
      expect((drive ?? 0) * inputResistance).toBeLessThanOrEqual(given.collectorLoad * (1 + 1e-9));
    }),
    { numRuns: 300 },
  );
});

test('margins, outcomes and the worst of them agree', () => {
  fc.assert(
    fc.property(seen, (given) => {
      const { harmonics, worstMargin, worstOrder, verdict } = workOutput(given).results;
      if (harmonics === null) return;
      const margins = harmonics.flatMap(({ margin }) => margin ?? []);
      if (margins.length === 0) return;
      expect(worstMargin).toBe(Math.min(...margins));
      expect(harmonics.find(({ order }) => order === worstOrder)?.margin).toBe(worstMargin);
      expect(verdict).toBe(harmonics.find(({ order }) => order === worstOrder)?.outcome);
    }),
    { numRuns: 200 },
  );
});

test('more Chebyshev elements never raise the second harmonic, lossless and exact', () => {
  fc.assert(
    fc.property(seen, (given) => {
      const level = (order: number) =>
        workOutput({
          ...given,
          lowpass: 'chebyshev',
          match: 'transformer',
          fitted: 'exact',
          order,
          coilQ: 1000,
          capacitorQ: 1e5,
          selfCapacitance: 0,
          ripple: 0.05,
          cutoffRatio: 1.2,
          outputImpedance: given.collectorLoad,
        }).results.harmonics?.[0]?.transimpedance ?? 0;
      expect(level(5)).toBeLessThan(level(3));
      expect(level(7)).toBeLessThan(level(5));
      expect(level(9)).toBeLessThan(level(7));
    }),
    { numRuns: 50 },
  );
});

test('whole turns meet the ratio within the tolerance', () => {
  fc.assert(
    fc.property(between(0.001, 1000), (impedances) => {
      const { primary, secondary, ratio } = turnsRatio(impedances, false);
      const off = ratio / Math.sqrt(impedances);
      expect(Math.max(off, 1 / off)).toBeLessThanOrEqual(1 / (1 - TURNS_TOLERANCE));
      expect(Math.min(primary ?? 0, secondary ?? 0)).toBeGreaterThanOrEqual(1);
      expect(Math.min(primary ?? 0, secondary ?? 0)).toBeLessThanOrEqual(13);
    }),
  );
});
