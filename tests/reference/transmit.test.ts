import { expect, test } from 'vitest';
import { speechEnvelope } from '../../src/engine/circuit/speechEnvelope.ts';
import {
  dbmOfVolts,
  voltsOfDbm,
  wattsOfDbm,
  wattsOfVolts,
} from '../../src/engine/quantity/power.ts';
import { heat, sinkNeeded, thermalResistance } from '../../src/engine/stages/transmit/heat.ts';
import { levelPlan, mismatchLoss } from '../../src/engine/stages/transmit/levelPlan.ts';
import { powerStage } from '../../src/engine/stages/transmit/powerStage.ts';

const stage = (supply: number, saturation: number, pep: number) =>
  powerStage({ supply, saturation, pep, network: 0, biasBy: 'angle', standing: 0, angle: Math.PI });

// Source: P = (Vcc − Vsat)²/(2RL), worked by hand to three digits.
const loads = [
  { supply: 12, saturation: 2, ohms: { 3: 16.7, 5: 10.0, 7: 7.1, 10: 5.0 } },
  { supply: 13.8, saturation: 2, ohms: { 3: 23.2, 5: 13.9, 7: 9.9, 10: 7.0 } },
  { supply: 24, saturation: 3, ohms: { 3: 73.5, 5: 44.1, 7: 31.5, 10: 22.1 } },
];
test.each(loads)('collector load from $supply V', ({ supply, saturation, ohms }) => {
  for (const [watts, printed] of Object.entries(ohms)) {
    const { collectorLoad } = stage(supply, saturation, Number(watts));
    expect(Math.abs(collectorLoad - printed)).toBeLessThanOrEqual(0.0501);
  }
});

// Source: the same closed form, 12.5 Ω, 2 V lost, to a tenth of a watt.
test.each([
  [9, 2.0],
  [10, 2.6],
  [11, 3.2],
  [12, 4.0],
  [12.6, 4.5],
  [13.8, 5.6],
  [15, 6.8],
  [24, 19.4],
])('12.5 Ω at %d V gives %d W', (supply, watts) => {
  const { collectorLoad } = stage(supply, 2, watts);
  const power = ((supply - 2) ** 2 / 2 / 12.5) as number;
  expect(Math.abs(power - watts)).toBeLessThanOrEqual(0.0501);
  expect((collectorLoad * watts) / 12.5).toBeCloseTo(power, 10);
});

// Source: class B closed form, 13.8 V, 2 V lost: 5 W needs 0.54 A, 2.4 W of heat, 2.2 W on two
// tones; efficiency π/4·(Vcc − Vsat)/Vcc = 0.67.
test('five watts in class B from 13.8 V', () => {
  const five = stage(13.8, 2, 5);
  expect(five.operating).toBe('b');
  expect(Math.abs(five.dcCurrent - 0.54)).toBeLessThanOrEqual(0.005);
  expect(five.dcCurrent).toBeCloseTo((2 * five.fundamental) / Math.PI, 12);
  expect(five.efficiency).toBeCloseTo((Math.PI / 4) * (11.8 / 13.8), 12);
  expect(Math.abs(five.efficiency - 0.67)).toBeLessThanOrEqual(0.005);
  const warmth = heat({ ...five, supply: 13.8, speechMean: 0.2 });
  expect(Math.abs(warmth.dissipation - 2.4)).toBeLessThanOrEqual(0.06);
  expect(Math.abs(warmth.dissipationTwoTone - 2.2)).toBeLessThanOrEqual(0.05);
});

// Source: closed form. A class-B stage heats most at 2/π of the supply's swing, with
// 2Vcc²/(π²RL) (Krauss, Bostian & Raab, Solid State Radio Engineering, 1980, ch. 12, from memory).
test('the tone that heats a class-B stage most', () => {
  const five = stage(13.8, 2, 5);
  const { dissipationTone } = heat({ ...five, supply: 13.8, speechMean: 0.2 });
  expect(dissipationTone).toBeCloseTo((2 * 13.8 ** 2) / (Math.PI ** 2 * five.collectorLoad), 12);
});

// Source: closed form. Class A draws the same whatever it gives, at most half of it as power; it is
// hottest without a signal.
test('class A', () => {
  const a = powerStage({
    supply: 12,
    saturation: 0,
    pep: 1,
    network: 0,
    biasBy: 'angle',
    standing: 0,
    angle: 2 * Math.PI,
  });
  expect(a.efficiency).toBeCloseTo(0.5, 12);
  expect(a.harmonicCurrents.slice(2).every((i) => i === 0)).toBe(true);
  const warmth = heat({ ...a, supply: 12, speechMean: 0.2 });
  expect(warmth.dissipationTone).toBeCloseTo(12 * a.dcCurrent, 12);
  expect(warmth.dissipation).toBeCloseTo(12 * a.dcCurrent - 1, 12);
  expect(warmth.twoToneCurrent).toBeCloseTo(a.dcCurrent, 12);
});

// Source: numerical mean over a Rayleigh-distributed envelope.
test('mean envelope of speech', () => {
  for (const mean of [0.05, 0.2, 0.5]) {
    let sum = 0;
    const step = 1e-4;
    for (let r = step / 2; r < 8; r += step)
      sum += r * ((2 * r) / mean) * Math.exp(-(r * r) / mean) * step;
    expect(speechEnvelope(mean)).toBeCloseTo(sum, 6);
  }
});

// Source: θSA = (Tj − Ta)/Pd − θJC − θCS with 45 °C air, 3.5 and 1.0 K/W; a table worked by hand. It
// cuts some figures instead of rounding them: 22.17 to 22, 8.83 to 8.8, 17.17 to 17.
const sinks = [
  { junction: 125, table: { 3: 22, 4: 15.5, 5: 11.5, 6: 8.8, 8: 5.5, 10: 3.5 } },
  { junction: 110, table: { 3: 17, 4: 11.8, 5: 8.5, 6: 6.3, 8: 3.6, 10: 2.0 } },
];
test.each(sinks)('heat sinks for a junction of $junction °C', ({ junction, table }) => {
  for (const [watts, printed] of Object.entries(table)) {
    const path = { toCase: 3.5, toAmbient: 62, contact: 1 };
    const found = sinkNeeded(Number(watts), junction - 45, path) ?? Number.NaN;
    expect(Math.abs(found - printed)).toBeLessThanOrEqual(printed >= 17 ? 0.2 : 0.051);
    // And back: with that sink the junction is at its limit.
    const resistance = thermalResistance({ ...path, sink: found });
    expect(45 + Number(watts) * resistance).toBeCloseTo(junction, 10);
  }
});

// Source: makers' data of the 139-type driver: 100 K/W free-standing, 150 °C, so 1.25 W at 25 °C;
// 10 K/W to the case, so 12.5 W at a case of 25 °C.
test('the rating of a 139-type driver follows from its thermal resistances', () => {
  const path = { toCase: 10, toAmbient: 100, contact: 0 };
  expect(sinkNeeded(1.25, 125, path)).toBeNull();
  expect(sinkNeeded(1.26, 125, path)).not.toBeNull();
  expect(sinkNeeded(12.5, 125, path)).toBeCloseTo(0, 12);
});

// Source: reference levels of a five-watt rig worked by hand, rounded to whole decibels.
test('levels of a five-watt chain add up', () => {
  const gains = [-6, -3, 16, -7, -3, 16, 14, 12, 14.3, -0.3];
  const { levels, onward } = levelPlan(gains, 37);
  const printed = [-16, -22, -25, -9, -16, -19, -3, 11, 23, 37.3, 37];
  levels.forEach((level, i) => {
    expect(Math.abs(level - (printed[i] ?? 0))).toBeLessThanOrEqual(0.01);
  });
  expect(onward[1]).toBeCloseTo(59, 10);
});

// Source: closed form; half and double the resistance lose 0.51 dB, four times 1.94 dB.
test('mismatch', () => {
  expect(mismatchLoss({ r: 50, c: 0 }, 50, 7e6)).toBe(-10 * Math.log10(1));
  expect(mismatchLoss({ r: 100, c: 0 }, 50, 7e6)).toBeCloseTo(0.5115, 4);
  expect(mismatchLoss({ r: 50, c: 0 }, 100, 7e6)).toBeCloseTo(0.5115, 4);
  expect(mismatchLoss({ r: 200, c: 0 }, 50, 7e6)).toBeCloseTo(1.9382, 4);
});

// Source: P = V²/R, the table every bench has: dBm, V rms, V peak, V pp in 50 Ω, as printed.
const bench = [
  [-30, 7.1e-3, 10e-3, 20e-3],
  [-20, 22e-3, 32e-3, 63e-3],
  [-10, 71e-3, 100e-3, 200e-3],
  [0, 0.224, 0.316, 0.632],
  [7, 0.5, 0.71, 1.41],
  [10, 0.71, 1.0, 2.0],
  [20, 2.24, 3.16, 6.32],
  [30, 7.07, 10, 20],
  [33.0103, 10, 14.1, 28.3],
  [36.9897, 15.8, 22.4, 44.7],
  [40, 22.4, 31.6, 63.2],
  [43.0103, 31.6, 44.7, 89.4],
] as const;
test.each(bench)('%d dBm in 50 Ω', (dbm, rms, peak, pp) => {
  expect(Math.abs(voltsOfDbm(dbm, 'Vrms', 50) / rms - 1)).toBeLessThan(0.02);
  expect(Math.abs(voltsOfDbm(dbm, 'Vpk', 50) / peak - 1)).toBeLessThan(0.02);
  expect(Math.abs(voltsOfDbm(dbm, 'Vpp', 50) / pp - 1)).toBeLessThan(0.02);
  expect(dbmOfVolts(voltsOfDbm(dbm, 'Vpp', 50), 'Vpp', 50)).toBeCloseTo(dbm, 10);
  expect(wattsOfVolts(voltsOfDbm(dbm, 'Vpp', 50), 'Vpp', 50)).toBeCloseTo(wattsOfDbm(dbm), 10);
});
