import fc from 'fast-check';
import { expect, it } from 'vitest';
import { turnAngles } from '../../src/design/drawing/turnAngles.ts';

/** Once round is 2π; the gap at the bottom, 75° to 105° clockwise from the right, stays free. */
const [from, to] = [(105 * Math.PI) / 180, (75 * Math.PI) / 180 + 2 * Math.PI];

it('every turn of two windings has a place of its own, out of the gap', () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 40 }), fc.integer({ min: 1, max: 40 }), (a, b) => {
      const windings = turnAngles([a, b], null);
      expect(windings.map(({ at }) => at.length)).toEqual([a, b]);
      const all = windings.flatMap(({ at }) => at).sort((x, y) => x - y);
      for (let i = 1; i < all.length; i++) {
        expect((all[i] ?? 0) - (all[i - 1] ?? 0)).toBeGreaterThan(1e-3);
      }
      expect(all[0]).toBeGreaterThan(from);
      expect(all.at(-1)).toBeLessThan(to);
    }),
    { seed: 3 },
  );
});

it('turns of a bundle lie side by side', () => {
  const [left, middle, right] = turnAngles([8, 8, 8], 0.1);
  for (let i = 0; i < 8; i++) {
    expect((middle?.at[i] ?? 0) - (left?.at[i] ?? 0)).toBeCloseTo(0.1);
    expect((right?.at[i] ?? 0) - (middle?.at[i] ?? 0)).toBeCloseTo(0.1);
  }
});
