import { describe, expect, test } from 'vitest';
import { halfWave } from '../../../src/engine/circuit/halfWave.ts';
import { capacitor, coil } from '../../../src/engine/circuit/outputLadder.ts';
import { collectorNetwork } from '../../../src/engine/circuit/power/collectorNetwork.ts';
import { mismatchedNetwork } from '../../../src/engine/circuit/power/mismatchedNetwork.ts';

const none = Number.POSITIVE_INFINITY;
const { l, c } = halfWave(50, 7e6);
/** 50 Ω to 50 Ω at 7 MHz, without losses. */
const ladder = {
  branches: [capacitor('shunt', c, none), coil('series', l, none), capacitor('shunt', c, none)],
  ratio: 1,
  sourceResistance: none,
  sourceCapacitance: 0,
  load: 50,
  reference: 7e6,
};
const straight = { ...ladder, branches: [] };

const angles = [0, 1, 2, 3, 4, 5, 6].map((i) => (i * 2 * Math.PI) / 7);

// Source: closed forms. A lossless network hands on all power, and a network that matches 50 Ω to
// 50 Ω keeps the size of a reflection.
describe('a load that reflects', () => {
  test.for(angles)('at %f rad', (angle) => {
    for (const swr of [1.5, 2, 3]) {
      const matched = collectorNetwork(ladder, 7e6, 5);
      const { input, transfer } = mismatchedNetwork(matched, ladder, 7e6, swr, angle);
      const [re = 0, im = 0] = [input[2], input[3]];
      const power = ((transfer[2] ?? 0) ** 2 + (transfer[3] ?? 0) ** 2) / 50;
      expect(power / re).toBeCloseTo(1, 9);
      const rho = Math.hypot(re - 50, im) / Math.hypot(re + 50, im);
      expect(rho).toBeCloseTo((swr - 1) / (swr + 1), 9);
      // Harmonics find the nominal resistance.
      expect(input.subarray(4)).toEqual(matched.input.subarray(4));
      expect(transfer.subarray(4)).toEqual(matched.transfer.subarray(4));

      // Straight on: the impedance of the textbook.
      const bare = mismatchedNetwork(collectorNetwork(straight, 7e6, 2), straight, 7e6, swr, angle);
      const g = { re: rho * Math.cos(angle), im: rho * Math.sin(angle) };
      // (1 − Γ)·Z = (1 + Γ)·50 Ω
      const [zr = 0, zi = 0] = [bare.input[2], bare.input[3]];
      expect((1 - g.re) * zr + g.im * zi).toBeCloseTo((1 + g.re) * 50, 9);
      expect((1 - g.re) * zi - g.im * zr).toBeCloseTo(g.im * 50, 9);
    }
  });

  test('ratio 1 changes nothing', () => {
    const matched = collectorNetwork(ladder, 7e6, 3);
    const same = mismatchedNetwork(matched, ladder, 7e6, 1, 2);
    same.input.forEach((v, i) => {
      expect(v).toBeCloseTo(matched.input[i] ?? 0, 9);
    });
    same.transfer.forEach((v, i) => {
      expect(v).toBeCloseTo(matched.transfer[i] ?? 0, 9);
    });
  });
});
