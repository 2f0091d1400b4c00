import { describe, expect, test } from 'vitest';
import { workWindings } from '../../src/engine/stages/windings/work.ts';
import { windingsRig as base, shelfFor } from './windingsRig.ts';

describe('coils', () => {
  // Source: published 40 m low-pass on T37-6: 1.38 µH 21 turns, 1.70 µH 24 turns.
  test('a published low-pass', () => {
    const { coils } = workWindings({ ...base, shelf: shelfFor('T37-6') }).results;
    expect(coils?.map(({ turns }) => turns)).toEqual([21, 24]);
  });

  // Source: closed form ((N + 1)/N)² − 1: one turn more is +27 % at 8 turns, +17 % at 12, +10 % at 20, +5 % at 40.
  test.each([
    [8, 27],
    [12, 17],
    [20, 10],
    [40, 5],
  ])('one turn more at %d turns', (turns, percent) => {
    const l = 4e-9 * turns ** 2;
    const { coils } = workWindings({
      ...base,
      shelf: shelfFor('T37-2'),
      coils: [{ label: 'L1', l, current: 0.1, voltage: 1, own: null }],
    }).results;
    const row = coils?.[0];
    expect(row?.turns).toBe(turns);
    expect(100 * ((row?.lAbove ?? 0) / (row?.lAt ?? 1) - 1)).toBeCloseTo(percent, -0.31);
  });

  // Source: makers' lists, 49 µH for 100 turns: 19 turns on T50-2 are 1.77 µH.
  test('19 turns on T50-2', () => {
    const { coils } = workWindings({
      ...base,
      shelf: shelfFor('T50-2'),
      coils: [{ label: 'L1', l: 1.77e-6, current: 0.1, voltage: 10, own: null }],
    }).results;
    expect(coils?.[0]?.turns).toBe(19);
    expect((coils?.[0]?.lAt ?? 0) * 1e6).toBeCloseTo(1.77, 2);
  });

  // Source: makers' Q curves of T50-2 near 7 MHz reach 200 to 250 (from memory).
  test('Q of twenty turns on T50-2 is of the right size', () => {
    const { coils } = workWindings({
      ...base,
      shelf: shelfFor('T50-2'),
      coils: [{ label: 'L1', l: 1.96e-6, current: 0.1, voltage: 10, own: null }],
    }).results;
    expect(coils?.[0]?.q).toBeGreaterThan(150);
    expect(coils?.[0]?.q).toBeLessThan(300);
  });

  // Source: a maker's example: 25 V, 0.133 cm², 15 turns, 7 MHz give 40.3 G. The iron core of the
  // nearest section, T50 at 0.112 cm², has 0.133/0.112 of that.
  test('flux of a row', () => {
    const { coils } = workWindings({
      ...base,
      nominal: 7e6,
      shelf: shelfFor('T50-2'),
      coils: [{ label: 'L1', l: 4.9e-9 * 225, current: 0.1, voltage: 25 * Math.SQRT2, own: null }],
    }).results;
    const gauss = (coils?.[0]?.flux ?? 0) / 1e-4;
    expect((gauss * 0.112) / 0.133).toBeCloseTo(40.3, 1);
  });
});
