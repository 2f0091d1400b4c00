import { describe, expect, test } from 'vitest';
import { COPPER } from '../../src/engine/circuit/wireLoss.ts';
import { type Battery, batteries, cellVolts } from '../../src/engine/data/batteries.ts';
import { fuseFor, fuses } from '../../src/engine/data/fuses.ts';
import { leads } from '../../src/engine/data/leads.ts';
import { audioCurrent } from '../../src/engine/stages/supply/budget.ts';
import { lasts } from '../../src/engine/stages/supply/lasting.ts';
import type { SupplySeen } from '../../src/engine/stages/supply/seen.ts';
import { workSupply } from '../../src/engine/stages/supply/work.ts';

const HOUR = 3600;

/** A rig with round figures. */
const seen: SupplySeen = {
  scheme: 'direct',
  supplyVoltage: 12,
  pep: 5,
  saturation: 2,
  resistance: 0,
  speechMean: 0.2,
  mic: 1e-3,
  follower: 4e-3,
  amplifier: 10e-3,
  thirdGain: null,
  driver: 30e-3,
  quiescent: 40e-3,
  peak: 840e-3,
  chip: 'a386',
  speaker: 8,
  loudness: 50e-3,
  speakerMost: 0.7,
  oscillator: 8e-3,
  preamp: 2e-3,
  conversion: 15e-3,
  relay: 30e-3,
  extras: 5e-3,
  talking: 0.25,
  battery: 'lead',
  cells: null,
  capacity: 7 * HOUR,
  fuseKind: 'glass',
  fuseRoom: 1.5,
  lead: 'mm15',
  leadLength: 1.5,
  dropAllowed: 0.02,
};

describe('currents', () => {
  // Added up by hand. Chip at rest 4 mA (maker's data sheet); at 50 mW into 8 Ω its mean is
  // 111.8 mA/π = 35.59 mA; speech: 40 + 800·√(0.2π)/2 = 357.1 mA.
  test('each state is the sum of the stages fed in it', () => {
    const { results } = workSupply(seen);
    const milli = (i: number | null) => Number(i) * 1e3;
    expect(milli(results.receiving)).toBeCloseTo(8 + 20 + 2 + 4 + 5, 9);
    expect(milli(results.listening)).toBeCloseTo(39 + 35.59, 2);
    expect(milli(results.silent)).toBeCloseTo(8 + 20 + 1 + 4 + 30 + 40 + 30 + 5, 9);
    expect(milli(results.speech)).toBeCloseTo(98 + 357.07, 1);
    expect(milli(results.tone)).toBeCloseTo(98 + 840, 9);
    expect(results.power).toBeCloseTo(12 * 0.938, 9);
    expect(results.limit).toBeCloseTo(0.078, 9);
  });

  test('a conversion oscillator counts where there is one', () => {
    const more = workSupply({ ...seen, scheme: 'conversion' }).results;
    expect(Number(more.tone) - Number(workSupply(seen).results.tone)).toBeCloseTo(15e-3, 12);
  });

  // Mean of the positive halves of a sine, summed up point by point.
  test('a class-B audio stage draws the mean of half its sines', () => {
    const [power, ohms, steps] = [0.05, 8, 20_000];
    const peak = Math.sqrt(2 * power * ohms);
    let sum = 0;
    for (let i = 0; i < steps; i++) {
      sum += Math.max(0, peak * Math.sin((2 * Math.PI * i) / steps)) / ohms;
    }
    expect(audioCurrent(power, ohms) / (sum / steps)).toBeCloseTo(1, 6);
  });
});

describe('battery', () => {
  // Peukert, 1897: at the printed current the printed hours; at four times the current 4^−k of them.
  test('gives its hours at the printed current, fewer than in proportion above, no more below', () => {
    const capacity = 7 * HOUR;
    expect(lasts(capacity, 7 / 20, batteries.lead) / HOUR).toBeCloseTo(20, 9);
    expect(lasts(capacity, (4 * 7) / 20, batteries.lead) / HOUR).toBeCloseTo(20 * 4 ** -1.2, 9);
    expect(lasts(capacity, 0.07, batteries.lead) / HOUR).toBeCloseTo(100, 9);
    // Lithium's capacity is printed for five hours (IEC 61960-3).
    expect(lasts(capacity, 7 / 5, batteries.ironPhosphate) / HOUR).toBeCloseTo(5, 9);
  });

  test.each(Object.entries(batteries) as [string, Battery][])(
    '%s falls from full to empty',
    (_, battery) => {
      for (const [drawn, volts] of battery.cell) {
        expect(cellVolts(battery, drawn)).toBeCloseTo(volts, 12);
      }
      let before = Infinity;
      for (let drawn = 0; drawn <= 1; drawn += 0.01) {
        const volts = cellVolts(battery, drawn);
        expect(volts).toBeLessThanOrEqual(before);
        before = volts;
      }
    },
  );

  // Usual strings: lead 6, lithium iron phosphate 4, nickel 10, alkaline 8 for 12 V.
  test('as many cells as people use', () => {
    const strung = (battery: SupplySeen['battery'], supplyVoltage: number) =>
      workSupply({ ...seen, battery, supplyVoltage }).results.strung;
    expect(strung('lead', 12)).toBe(6);
    expect(strung('lead', 13.8)).toBe(6);
    expect(strung('ironPhosphate', 12)).toBe(4);
    expect(strung('ironPhosphate', 13.8)).toBe(4);
    expect(strung('lithiumIon', 12)).toBe(3);
    expect(strung('nickel', 12)).toBe(10);
    expect(strung('alkaline', 12)).toBe(8);
  });

  // By hand: alkaline cells down to 1.05 V: 8.4 V. (8.4 − 2)²/(12 − 2)² = 0.41 of 5 W, −3.9 dB.
  test('power goes with the square of the swing', () => {
    const { results } = workSupply({ ...seen, battery: 'alkaline' });
    expect(results.endVoltage).toBeCloseTo(8.4, 9);
    expect(results.endPower).toBeCloseTo(5 * 0.64 ** 2, 9);
    expect(results.endLoss).toBeCloseTo(-3.88, 2);
    // Behind a resistance the current falls with the swing: V − R·I·x = Vsat + x·10 V.
    const soft = workSupply({ ...seen, battery: 'alkaline', resistance: 2 }).results;
    const x = Math.sqrt(Number(soft.endPower) / 5);
    expect(8.4 - 2 * 0.84 * x - 2).toBeCloseTo(x * 10, 9);
    // Into a short: twelve full volts and more over two ohms.
    expect(soft.short).toBeCloseTo((8 * 1.55) / 2, 9);
  });

  test('the curve ends with the battery, and has its end voltage where it should be left', () => {
    const { discharge, hours, endVoltage } = workSupply(seen).results;
    if (discharge === null || hours === null) throw new Error('no curve');
    const last = discharge.time.length - 1;
    expect(hours / Number(discharge.time[last])).toBeCloseTo(batteries.lead.usable, 12);
    expect(discharge.voltage[last / 2]).toBeCloseTo(Number(endVoltage), 12);
  });
});

describe('fuses', () => {
  // IEC 60127 takes the R10 series of ISO 3: ten steps a decade, rounded by 1.3 % at most.
  test('glass fuses come in ten steps a decade', () => {
    for (const rating of fuses.glass.ratings) {
      const step = 10 * Math.log10(rating);
      expect(Math.abs(10 ** ((Math.round(step) - step) / 10) - 1)).toBeLessThan(0.0131);
    }
    expect(fuses.glass.ratings.length).toBe(Math.round(10 * Math.log10(10 / 0.032)) + 1);
  });

  test('the next step up', () => {
    expect(fuseFor(fuses.glass, 0.36)).toBe(0.4);
    expect(fuseFor(fuses.glass, 2.5)).toBe(2.5);
    expect(fuseFor(fuses.glass, 10.1)).toBeNull();
    expect(fuseFor(fuses.blade, 5.1)).toBe(7.5);
    // 0.938 A with half as much again: 1.407 A.
    expect(workSupply(seen).results.fuse).toBe(1.6);
    expect(workSupply({ ...seen, fuseKind: 'blade' }).results.fuse).toBe(2);
  });
});

describe('leads', () => {
  // ASTM B258: d = 0.127 mm·92^((36 − n)/39).
  test.each([20, 18, 16, 14, 12] as const)('AWG %i has its section', (n) => {
    const d = 0.127e-3 * 92 ** ((36 - n) / 39);
    expect(leads[`awg${n}`].area / ((Math.PI / 4) * d * d)).toBeCloseTo(1, 3);
  });

  // Printed in wire tables: AWG 20 has 10.15 Ω in a thousand feet at 20 °C.
  test('AWG 20 has the resistance that wire tables print', () => {
    expect((COPPER * 304.8) / leads.awg20.area).toBeCloseTo(10.15, 2);
  });

  // By hand: 2 · 0.017241 Ω·mm²/m · 1.5 m · 0.938 A / 1.5 mm² = 32.3 mV, 0.27 % of 12 V.
  test('the drop there and back', () => {
    const { results } = workSupply(seen);
    expect(results.leadDrop).toBeCloseTo(0.03234, 5);
    expect(results.leadShare).toBeCloseTo(0.0027, 4);
    expect(results.leadOutcome).toBe('holds');
    expect(results.leadWords).toMatch(/^0\.5\smm² or more\.$/);
  });

  test('long thin leads are found out, and leads weaker than their fuse', () => {
    const long = workSupply({ ...seen, lead: 'mm05', leadLength: 10 });
    expect(long.results.leadOutcome).toBe('fails');
    expect(long.problems.map(({ field }) => field)).toContain('supply.lead');
    // 4 A and a half more want a fuse of 6.3 A: 0.5 mm² bear 3 A.
    const strong = workSupply({ ...seen, lead: 'mm05', leadLength: 0.1, peak: 4 });
    expect(strong.results.fuse).toBe(6.3);
    expect(strong.results.leadOutcome).toBe('fails');
  });
});
