import { expect, it } from 'vitest';
import { turnAngles } from '../../src/design/drawing/turnAngles.ts';

// Source: geometry. Turns over a share of the ring stand about the top, the rest stays free below.
it.each([0.25, 0.5, 0.75])('turns over %f of the ring', (share) => {
  const [winding] = turnAngles([12], null, share);
  const at = winding?.at ?? [];
  const pitch = (2 * Math.PI * share) / 12;
  expect((at[11] ?? 0) - (at[0] ?? 0)).toBeCloseTo(11 * pitch, 12);
  // Straight up is three quarters of a turn clockwise from the right.
  expect(((at[0] ?? 0) + (at[11] ?? 0)) / 2).toBeCloseTo(1.5 * Math.PI, 12);
});
