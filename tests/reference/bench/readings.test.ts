import { describe, expect, test } from 'vitest';
import { dbmOfWatts, voltsOfWatts, wattsOfVolts } from '../../../src/engine/quantity/power.ts';
import { classBCeiling, dcSanity } from '../../../src/engine/stages/bench/dcSanity.ts';
import { judge, judgeLimit, worstOf } from '../../../src/engine/stages/bench/judge.ts';
import { shownShare, TIMES_ONE_BANDWIDTH } from '../../../src/engine/stages/bench/scopeError.ts';

const dB = (ratio: number) => 20 * Math.log10(ratio);

describe('power across a dummy load, P = Vpp²/(8R)', () => {
  // Closed form, 50 Ω, printed to three figures
  test.each([
    { watts: 1e-3, dbm: 0, vpp: 0.632 },
    { watts: 5e-3, dbm: 7, vpp: 1.41 },
    { watts: 0.25, dbm: 24, vpp: 10.0 },
    { watts: 1, dbm: 30, vpp: 20 },
    { watts: 2, dbm: 33, vpp: 28.3 },
    { watts: 5, dbm: 37, vpp: 44.7 },
    { watts: 10, dbm: 40, vpp: 63.2 },
    { watts: 25, dbm: 44, vpp: 100 },
  ])('$watts W', ({ watts, dbm, vpp }) => {
    expect(Math.abs(voltsOfWatts(watts, 'Vpp', 50) / vpp - 1)).toBeLessThan(0.004);
    expect(Math.abs(dbmOfWatts(watts) - dbm)).toBeLessThan(0.06);
  });

  // Readings of one rig on two probe settings: 70 Vpp is 12.3 W, 42 Vpp 4.4 W (one builder’s readings)
  test.each([
    { vpp: 70, watts: 12.3 },
    { vpp: 42, watts: 4.4 },
  ])('$vpp Vpp', ({ vpp, watts }) => {
    expect(Math.abs(wattsOfVolts(vpp, 'Vpp', 50) - watts)).toBeLessThan(0.06);
  });
});

describe('what an oscilloscope leaves out', () => {
  // Closed form of one pole
  test.each([
    { f: 14.2e6, bandwidth: 20e6, error: -1.8 },
    { f: 7.1e6, bandwidth: TIMES_ONE_BANDWIDTH, error: -3.8 },
    { f: 14.2e6, bandwidth: TIMES_ONE_BANDWIDTH, error: -8.2 },
    { f: 10e6, bandwidth: 10e6, error: -3.01 },
  ])('$f Hz at $bandwidth Hz', ({ f, bandwidth, error }) => {
    expect(Math.abs(dB(shownShare(f, bandwidth)) - error)).toBeLessThan(0.051);
  });
});

describe('radio power against direct power', () => {
  // Closed form: 0.67 at 13.8 V less 2 V; π/4 with nothing lost
  test('ceiling of class B', () => {
    expect(Math.abs(classBCeiling(13.8, 2) - 0.67)).toBeLessThan(0.005);
    expect(classBCeiling(12, 0)).toBeCloseTo(Math.PI / 4, 12);
  });
  // 5 W for 0.9 A at 13.8 V, a built stage (0.40); 12.3 W out of the same would be 0.99
  test.each([
    { watts: 5, volts: 13.8, amps: 0.9, outcome: 'holds' },
    { watts: 12.3, volts: 13.8, amps: 0.9, outcome: 'fails' },
    { watts: 1, volts: 13.8, amps: 0.9, outcome: 'fails' },
    { watts: 8, volts: 13.8, amps: 0.9, outcome: 'close' },
  ])('$watts W from $volts V, $amps A', ({ watts, volts, amps, outcome }) => {
    expect(dcSanity(watts / (volts * amps))).toBe(outcome);
  });
});

// Common practice, no source: the rules of this sheet, worked by hand
describe('verdicts', () => {
  test.each([
    { m: 10, e: 10, t: 1, sides: 'both', outcome: 'holds' },
    { m: 11, e: 10, t: 1, sides: 'both', outcome: 'holds' },
    { m: 8.5, e: 10, t: 1, sides: 'both', outcome: 'close' },
    { m: 13, e: 10, t: 1, sides: 'both', outcome: 'fails' },
    { m: -80, e: -50, t: 6, sides: 'atMost', outcome: 'holds' },
    { m: -40, e: -50, t: 6, sides: 'atMost', outcome: 'close' },
    { m: 70, e: 50, t: 6, sides: 'atLeast', outcome: 'holds' },
    { m: 30, e: 50, t: 6, sides: 'atLeast', outcome: 'fails' },
  ] as const)('$m against $e ± $t, $sides', ({ m, e, t, sides, outcome }) => {
    expect(judge(m, e, t, sides)).toBe(outcome);
  });
  test('against a limit, 3 dB to spare', () => {
    expect(judgeLimit(-46, -43, 3, 'atMost')).toBe('holds');
    expect(judgeLimit(-44, -43, 3, 'atMost')).toBe('close');
    expect(judgeLimit(-42, -43, 3, 'atMost')).toBe('fails');
    expect(judgeLimit(41, 40, 3, 'atLeast')).toBe('close');
  });
  test('the worst counts', () => {
    expect(worstOf([null, 'holds', 'close'])).toBe('close');
    expect(worstOf([null])).toBeNull();
  });
});
