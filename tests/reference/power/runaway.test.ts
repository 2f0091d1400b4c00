import { describe, expect, test } from 'vitest';
import { arrangementOf } from '../../../src/engine/stages/power/arrangement.ts';
import { handSupply, suppliesAbout } from '../../../src/engine/stages/power/handSupply.ts';
import { runaway } from '../../../src/engine/stages/power/runaway.ts';

const asked = {
  supply: 12,
  drift: 50,
  ballast: 0.5,
  bias: 0.1,
  standing: 0.02,
  thermalVoltage: 0.026,
};

describe('running away', () => {
  // Worked by hand: 2 mV/K · 12 V · 50 K/W = 1.2 Ω; 26 mV/20 mA = 1.3 Ω.
  test('as on paper', () => {
    const { loop, from, needed } = runaway(asked);
    expect(loop).toBeCloseTo(1.2 / 1.9, 12);
    expect(from).toBeCloseTo(0.026 / 0.6, 12);
    expect(needed).toBeCloseTo(1.1, 12);
  });

  // Source: the heat, the junction and its current followed step by step, which the loop stands for.
  test.for([0.005, 0.02, 0.04, 0.05, 0.1])('settles or not, at %d A', (standing) => {
    const { supply, drift, ballast, bias, thermalVoltage } = asked;
    let current = standing * 1.001;
    for (let i = 0; i < 4000 && current < 100 * standing; i += 1) {
      const fall = 2e-3 * supply * drift * (current - standing);
      // Solve VT·ln(I/I0) + R(I − I0) = fall for I by halves.
      let [low, high] = [standing / 2, 1000 * standing];
      for (let k = 0; k < 80; k += 1) {
        const mid = (low + high) / 2;
        const needs =
          thermalVoltage * Math.log(mid / standing) + (ballast + bias) * (mid - standing);
        if (needs < fall) low = mid;
        else high = mid;
      }
      current = (low + high) / 2;
    }
    const settles = Math.abs(current / standing - 1) < 0.001;
    expect(settles).toBe(runaway({ ...asked, standing }).loop < 1);
  });

  test('an emitter resistor as large as asked holds it at any current', () => {
    const { needed } = runaway(asked);
    const held = runaway({ ...asked, ballast: needed * 1.0001, standing: 1e6 });
    expect(held.loop).toBeLessThan(1);
    expect(held.from).toBeNull();
  });
});

// Source: P = V²/(2R) by hand: with 2 V kept by the transistor, 7 V against 10 V of swing.
test('power over the supply goes with the square of the swing', () => {
  const { supply, power, efficiency } = handSupply({
    supply: 12,
    saturation: 2,
    pep: 5,
    dcCurrent: 0.8,
  });
  expect([...supply]).toEqual([9, 10, 11, 12, 13, 14, 15]);
  expect(power[0]).toBeCloseTo(5 * 0.49, 12);
  expect(power[3]).toBeCloseTo(5, 12);
  expect(efficiency[3]).toBeCloseTo(5 / 9.6, 12);
  expect(efficiency[0]).toBeCloseTo((5 * 0.49) / (9 * 0.8 * 0.7), 12);
  expect([...suppliesAbout(24)].at(0)).toBe(18);
  expect([...suppliesAbout(24)].at(-1)).toBe(30);
});

test('how many transistors there are', () => {
  expect(arrangementOf('single', 3, 25)).toEqual({ sides: 1, gang: 1, unlike: 1 });
  expect(arrangementOf('parallel', 3, 25)).toEqual({ sides: 1, gang: 3, unlike: 1 });
  expect(arrangementOf('pushPull', 2, 20)).toEqual({ sides: 2, gang: 2, unlike: 0.1 });
});
