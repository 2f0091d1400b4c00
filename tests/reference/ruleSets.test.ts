import { describe, expect, test } from 'vitest';
import { limitFormula } from '../../src/engine/data/limitFormula.ts';
import {
  carrierYardstick,
  type RuleSet,
  type RuleSetKey,
  ruleSets,
  ruleWords,
} from '../../src/engine/data/ruleSets.ts';
import { reckonExpression } from './reckonExpression.ts';

const MHz = 1e6;

/** dB asked of one emission; powers in W, frequencies in MHz. */
const asked = (rule: RuleSetKey, fundamental: number, harmonic: number, power: number) =>
  ruleSets[rule].limit({
    frequency: harmonic * MHz,
    fundamental: fundamental * MHz,
    power,
    own: 47,
  });

/** Expected figures round to two decimals. */
const rounds = 0.00501;

// Source: US 47 CFR 97.307(d), as read: installed after 1 January 2003 43 dB below mean power.
test.each([0.01, 1, 4, 4.999, 5, 10, 25, 100])('US 97.307(d), after 2003, at %d W', (power) => {
  for (const f of [1.8, 7, 28, 29.999]) expect(asked('us', f, 2 * f, power)).toBe(43);
});

// Source: the same paragraph, on or before 1 January 2003: at most 50 mW and at least 40 dB; with
// less than 5 W mean power 30 dB. 50 mW are 40 dB below 500 W, so from there on they decide.
test.each([
  [1, 30],
  [4, 30],
  [4.999, 30],
  [5, 40],
  [10, 40],
  [25, 40],
  [499, 40],
  [500, 40],
  [1000, 43.01],
  [1500, 44.77],
])('US 97.307(d), before 2003: at %d W %f dB', (power, printed) => {
  expect(Math.abs(asked('usBefore2003', 7, 14, power) - printed)).toBeLessThanOrEqual(rounds);
});

// Source: US 47 CFR 97.307(e), transmitting on 30 to 225 MHz: 60 dB; with 25 W or less at most
// 25 µW and at least 40 dB, need not go below 10 µW. 25 µW are 60 dB below 25 W; 40 dB below 0.25 W;
// 10 µW are 40 dB below 0.1 W.
test.each([
  [100, 60],
  [25.001, 60],
  [25, 60],
  [10, 56.02],
  [5, 53.01],
  [4, 52.04],
  [1, 46.02],
  [0.25, 40],
  [0.1, 40],
  [0.05, 36.99],
])('US 97.307(e): at %d W %f dB', (power, printed) => {
  for (const rule of ['us', 'usBefore2003'] as const) {
    for (const f of [30, 50, 225]) {
      expect(Math.abs(asked(rule, f, 2 * f, power) - printed)).toBeLessThanOrEqual(rounds);
    }
    // Above 225 MHz the paragraph is silent.
    expect(asked(rule, 225.1, 450.2, power)).toBe(0);
  }
});

// Source: the frequency meant is that of transmission: a shortwave rig's harmonic on 43 or 57 MHz is
// under paragraph (d).
test('the rule for 30 to 225 MHz is not asked of shortwave harmonics that fall there', () => {
  expect(asked('us', 14.2, 42.6, 5)).toBe(43);
  expect(asked('us', 28.5, 57, 100)).toBe(43);
});

// Source: ITU Radio Regulations, Appendix 3, Table I, and SM.329 category A (from memory): below
// 30 MHz 43 + 10 log PEP or 50 dB, whichever is less; 1 W 43.00, 4 W 49.02, 10 W 50 dB.
test.each([
  [0.1, 33],
  [1, 43],
  [2, 46.01],
  [4, 49.02],
  [5, 49.99],
  [5.012, 50],
  [10, 50],
  [25, 50],
  [1000, 50],
])('ITU below 30 MHz: at %d W %f dB', (power, printed) => {
  for (const f of [1.8, 7, 29.999]) {
    expect(Math.abs(asked('itu', f, 3 * f, power) - printed)).toBeLessThanOrEqual(rounds);
  }
});

// Source: the same table, all other services (from memory): cap of 70 dB.
test.each([
  [1, 43],
  [25, 56.98],
  [500, 69.99],
  [1000, 70],
])('ITU from 30 MHz: at %d W %f dB', (power, printed) => {
  expect(Math.abs(asked('itu', 30, 60, power) - printed)).toBeLessThanOrEqual(rounds);
});

// Source: EN 301 783 as enacted in Austria, 2008: 0.15–1.7 MHz 60; 1.7–35 40;
// 35–50 40 + 129.1 log(f/35); 50–1000 60 dB; or −36 dBm, −30 dBm above 1 GHz, if less strict.
test.each([
  [0.149, 100, 0],
  [0.15, 100, 60],
  [1.699, 100, 60],
  [1.7, 100, 40],
  [14.4, 100, 40],
  [30, 100, 40],
  [35, 100, 40],
  [40, 100, 47.49],
  [49, 100, 58.87],
  [49.999, 100, 60],
  [50, 100, 60],
  [225, 100, 60],
  [1000, 100, 60],
  // 1 W is 30 dBm: 66 dB above −36 dBm, so the table decides; 0.1 W: 56 dB; 1 mW: 36 dB.
  [50, 1, 60],
  [50, 0.25, 59.98],
  [50, 0.1, 56],
  [14.4, 0.001, 36],
  // Above 1 GHz −30 dBm: 10 mW is 10 dBm.
  [1000.1, 0.01, 40],
])('EN 301 783: %d MHz at %d W %f dB', (harmonic, power, printed) => {
  expect(Math.abs(asked('cept', 7, harmonic, power) - printed)).toBeLessThanOrEqual(rounds);
});

// Source: US 47 CFR 80.207, maritime: carrier at least 40 dB below PEP.
test('carrier of single sideband, as a yardstick', () => {
  expect(carrierYardstick.below).toBe(40);
  expect(carrierYardstick.source).toContain('80.207');
});

describe('each rule', () => {
  const rules = Object.keys(ruleSets) as RuleSetKey[];

  test.each(rules)('%s says where it was read, from when, and for whom', (key) => {
    const { source, year, validity }: RuleSet = ruleSets[key];
    const said = ruleWords(key);
    expect(said).toContain(source);
    expect(said).toContain(validity);
    if (key !== 'own') expect(said).toContain(String(year));
    expect(said).toMatch(/below (mean power|PEP)/);
  });

  test.each(rules)('%s: the formula shown gives the limit', (key) => {
    const ownLines = [
      { from: 0, to: 35e6, below: 40, absolute: -36, whichever: 'less' as const },
      { from: 30e6, to: 60e6, below: 45, absolute: -20, whichever: 'more' as const },
      { from: 60e6, to: 70e6, below: null, absolute: -13, whichever: null },
    ];
    for (const f of [0.1, 1.6, 1.7, 7, 29.9, 30, 35, 40, 50, 225, 226]) {
      for (const n of [1, 2, 3, 5]) {
        for (const power of [0.01, 0.1, 1, 4.9, 5, 10, 25, 26, 600]) {
          const frequency = n * f * MHz;
          const emission = { frequency, fundamental: f * MHz, power, own: 47, ownLines };
          const { formula, where } = limitFormula(key, emission);
          const values = Object.fromEntries(Object.entries(where).map(([s, b]) => [s, b.value]));
          const given = { ...values, P: power, f_n: frequency, A_own: 47 };
          const shown = reckonExpression(formula, given);
          expect(shown).toBeCloseTo(-ruleSets[key].limit(emission), 9);
        }
      }
    }
  });

  // More power never makes a rule milder.
  test.each(rules)('%s asks no less of more power', (key) => {
    for (const f of [7, 29, 50]) {
      for (const n of [2, 3, 6]) {
        let before = -Infinity;
        for (let power = 0.01; power < 2000; power *= 1.07) {
          const now = asked(key, f, n * f, power);
          expect(now).toBeGreaterThanOrEqual(before - 1e-12);
          before = now;
        }
      }
    }
  });
});
