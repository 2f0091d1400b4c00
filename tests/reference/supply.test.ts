import { expect, test } from 'vitest';
import { fuseFor, fuseRatings } from '../../src/engine/data/fuses.ts';
import { COPPER, leads } from '../../src/engine/data/leads.ts';
import { lasts } from '../../src/engine/stages/supply/work.ts';

// Peukert, 1897: at the printed current the printed hours; with k = 1.2 and four times the current
// 4^−1.2 of them.
test('a battery gives its hours at the printed current, and fewer than in proportion above', () => {
  const capacity = 7 * 3600;
  expect(lasts(capacity, 7 / 20, 1.2) / 3600).toBeCloseTo(20, 9);
  expect(lasts(capacity, (4 * 7) / 20, 1.2) / 3600).toBeCloseTo(20 * 4 ** -1.2, 9);
  expect(lasts(capacity, 1, 1) / 3600).toBeCloseTo(7, 9);
});

// IEC 60127: the steps of the R10 series.
test('fuses come in the standard’s steps', () => {
  for (const rating of [
    0.1, 0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8, 1, 1.6, 3.15, 6.3,
  ]) {
    expect(fuseRatings).toContain(rating);
  }
  expect(fuseFor(0.36, 1.25)).toBe(0.5);
  expect(fuseFor(2, 1.25)).toBe(2.5);
  expect(fuseFor(100, 1.25)).toBeNull();
});

// ASTM B258: d = 0.127 mm·92^((36 − n)/39).
test.each([20, 18, 16, 14, 12])('AWG %i has its section', (n) => {
  const d = 0.127e-3 * 92 ** ((36 - n) / 39);
  const lead = leads[`awg${n}` as keyof typeof leads];
  expect(lead.area / ((Math.PI / 4) * d * d)).toBeCloseTo(1, 2);
});

// Makers' table (NEMA): 20 AWG has 10.13 Ω for 1000 ft, within a hundredth or two.
test('copper: AWG 20 has 10.1 Ω in a thousand feet', () => {
  expect((COPPER * 304.8) / leads.awg20.area).toBeCloseTo(10.13, 1);
});
