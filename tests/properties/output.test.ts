import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cosinePulse } from '../../src/engine/circuit/conduction.ts';
import { TURNS_TOLERANCE, turnsRatio } from '../../src/engine/circuit/turnsRatio.ts';
import { shelfOf } from '../../src/engine/stages/cores/shelf.ts';
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
    shelf: fc.constant(shelfOf({ coilCore: 'auto', wire: 'metric', tail: 0.04 }, 7.2e6, [])),
    collectorLoad: between(0.5, 5000),
    angle: fc.double({ min: 1, max: 2 * Math.PI, noNaN: true }),
    outputImpedance: fc.option(between(5, 1e4)),
    match: fc.constantFrom('pi', 'transformer', 'none'),
    loadedQ: between(0.5, 15),
    lowpass: fc.constantFrom(
      'none',
      'halfWave',
      'doubleHalfWave',
      'butterworth',
      'chebyshev',
      'elliptic',
    ),
    traps: fc.constantFrom('none', 'second', 'third', 'both'),
    stopBy: fc.constantFrom('notch', 'edge', 'attenuation'),
    stopRatio: between(1.02, 10),
    stopWanted: fc.double({ min: 10, max: 120, noNaN: true }),
    coilsFitted: fc.constantFrom('trimmed', 'wound'),
    measured: fc.constantFrom(null, 'L1 1.2u', 'C1 1n; L2 3u', 'nothing'),
    order: fc.integer({ min: 3, max: 9 }),
    cutoffRatio: between(1, 2),
    ripple: between(0.001, 1),
    coilQ: fc.option(between(5, 1000)),
    capacitorQ: between(20, 1e5),
    selfCapacitance: fc.option(fc.double({ min: 0, max: 50e-12, noNaN: true })),
    fitted: fc.constantFrom('exact', 'e24', 'e12', 'e6', 'e24pair', 'e12pair', 'e6pair'),
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
      const { ladder, ...figures } = results;
      for (const n of numbers(figures)) expect(Number.isFinite(n)).toBe(true);
      // In the ladder a part without loss has a Q without end.
      for (const n of numbers(ladder)) expect(n).not.toBeNaN();
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

// Source: conservation of energy: what goes in comes out or warms the parts.
test('heat of all parts and the antenna’s power are what the final puts in', () => {
  fc.assert(
    fc.property(seen, (given) => {
      const { elements, loss, pepAntenna, lost } = workOutput(given).results;
      if (elements === null || loss === null || pepAntenna === null || lost === null) return;
      const heat = elements.reduce((sum, row) => sum + (row.heat ?? 0), 0);
      const put = pepAntenna * 10 ** (loss / 10);
      expect(Math.abs(heat + pepAntenna - put)).toBeLessThanOrEqual(1e-9 * put);
      expect(Math.abs(lost - heat)).toBeLessThanOrEqual(1e-9 * put);
      for (const row of elements) {
        expect(Math.min(row.fittedC ?? 1, row.l ?? 1, row.heat ?? 0)).toBeGreaterThan(-1e-18);
      }
    }),
    { numRuns: 300 },
  );
});

// Source: what an equal-ripple filter is: between its ends the reflection is that of the ripple or less.
test('a lossless filter of exact parts keeps the return loss that its ripple promises', () => {
  fc.assert(
    fc.property(
      seen,
      fc.constantFrom('chebyshev' as const, 'elliptic' as const),
      (given, lowpass) => {
        const { returnLoss } = workOutput({
          ...given,
          lowpass,
          traps: 'none',
          measured: null,
          coilsFitted: 'trimmed',
          match: 'transformer',
          fitted: 'exact',
          coilQ: 1e12,
          capacitorQ: 1e12,
          selfCapacitance: 0,
        }).results;
        if (returnLoss === null) return;
        const reflected = -10 * Math.log10(1 - 10 ** (-given.ripple / 10));
        expect(returnLoss).toBeGreaterThanOrEqual(reflected - 1e-5);
      },
    ),
    { numRuns: 300 },
  );
});

// Source: a trap is made so that at the operating frequency its reactance is that of the plain coil.
test('traps change nothing at the operating frequency, and stop their harmonic', () => {
  fc.assert(
    fc.property(seen, fc.constantFrom('second' as const, 'third' as const), (given, traps) => {
      const made = (which: OutputSeen['traps']) =>
        workOutput({
          ...given,
          lowpass: given.lowpass === 'elliptic' ? 'chebyshev' : given.lowpass,
          traps: which,
          measured: null,
          coilsFitted: 'trimmed',
          fitted: 'exact',
          coilQ: 1e7,
          capacitorQ: 1e7,
          selfCapacitance: 0,
        }).results;
      const [bare, trapped] = [made('none'), made(traps)];
      if (bare.inputResistance === null || trapped.inputResistance === null) return;
      const size = Math.hypot(bare.inputResistance, bare.inputReactance ?? 0);
      const off = Math.hypot(
        bare.inputResistance - trapped.inputResistance,
        (bare.inputReactance ?? 0) - (trapped.inputReactance ?? 0),
      );
      expect(off / size).toBeLessThan(1e-4);
      if (given.lowpass === 'none') return;
      const order = traps === 'second' ? 2 : 3;
      const at = (results: typeof bare) =>
        results.harmonics?.find((row) => row.order === order)?.transimpedance ?? 0;
      expect(at(trapped)).toBeLessThan(1e-2 * at(bare));
    }),
    { numRuns: 200 },
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
          traps: 'none',
          measured: null,
          coilsFitted: 'trimmed',
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
