import { describe, expect, test } from 'vitest';
import { mixed } from '../../src/engine/circuit/mixing.ts';
import { tried } from '../../src/engine/stages/products/alternatives.ts';
import { nameOf, nearestMeeting, productsUpTo } from '../../src/engine/stages/products/products.ts';
import { strengthOf } from '../../src/engine/stages/products/strength.ts';

const around = (nominal: number, products = productsUpTo(10)) => ({
  nominal,
  span: 0,
  halfWidth: 140e3,
  window: 3000,
  products,
});

describe('products of two oscillators', () => {
  test('are all there, each once: counted by hand up to order 3', () => {
    // Order 1: f, g. Order 2: 2f, f±g, 2g. Order 3: 3f, 2f±g, f±2g, 3g.
    expect(productsUpTo(3)).toHaveLength(2 + 4 + 6);
    expect(new Set(productsUpTo(10).map(nameOf)).size).toBe(productsUpTo(10).length);
  });

  // Builders' cases: 4.8 MHz and 12 MHz for 7.2 MHz. Five times the one is twice the other, so the
  // receiver whistles; four times the oscillator less the filter comes out on the channel itself.
  test('4.8 MHz and 12 MHz: five times the one is twice the other', () => {
    const tuning = { from: 4.8e6, to: 4.8e6, other: 12e6, metFrom: 12e6, metTo: 12e6 };
    const whistle = productsUpTo(10).find(
      (product) => nameOf(product) === '5 × oscillator − filter',
    );
    expect(whistle && nearestMeeting(whistle, tuning).beside).toBe(0);
    expect(tried(12e6, 'difference', around(7.2e6))).toMatchObject({
      oscillator: 4.8e6,
      sent: 5,
      heard: 5,
    });
  });

  test('away from such a pair the low orders are clear', () => {
    // 9 MHz and 1.9 MHz for 7.1: by hand the lowest near 7.1 ± 0.14 is 2·9 − 6·1.9 = 6.6 … none
    // below order 6: 3.74·1.9; so what is found must be true, and nothing lower may be missed.
    const { sent, oscillator } = tried(9e6, 'difference', around(7.1e6));
    const byHand: number[] = [];
    for (let m = 0; m <= 10; m += 1) {
      for (let n = 0; m + n <= 10; n += 1) {
        for (const sign of [1, -1]) {
          if (m + n === 0 || (m === 1 && n === 1)) continue;
          if (Math.abs(Math.abs(m * oscillator + sign * n * 9e6) - 7.1e6) <= 140e3) {
            byHand.push(m + n);
          }
        }
      }
    }
    expect(sent).toBe(byHand.length === 0 ? null : Math.min(...byHand));
  });

  test('while tuning, a product that passes the signal is met where both are equal', () => {
    // 5 f_lo − 2·9 MHz against f_lo + 9 MHz − … : 9 MHz filter, oscillator 5.0 to 5.5, signal 14 up.
    const product = { m: 6, n: 2, sign: -1 } as const;
    const { at, beside } = nearestMeeting(product, {
      from: 5e6,
      to: 5.5e6,
      other: 9e6,
      metFrom: mixed('adds', 5e6, 9e6),
      metTo: mixed('adds', 5.5e6, 9e6),
    });
    // 6x − 18 = x + 9 gives x = 5.4 MHz.
    expect(at).toBeCloseTo(5.4e6, 3);
    expect(beside).toBe(0);
  });

  test('strength: Fourier series of a switch for odd harmonics', () => {
    const by = {
      oscillatorLevel: 7,
      signalLevel: -10,
      signalIsolation: 30,
      carrierLeft: -24,
      oscillatorLeft: -12,
    };
    // A square wave's third harmonic is a third of the first: −9.54 dB.
    expect(strengthOf({ m: 3, n: 1, sign: 1 }, by)).toBeCloseTo(-9.542, 3);
    expect(strengthOf({ m: 1, n: 2, sign: 1 }, by)).toBe(-17);
    expect(strengthOf({ m: 1, n: 0, sign: 1 }, by)).toBe(-12);
  });
});
