import { expect, test } from 'vitest';
import { noiseRise } from '../../src/engine/circuit/noiseRise.ts';
import { audioChips } from '../../src/engine/data/devices.ts';
import { externalNoise } from '../../src/engine/data/noiseClasses.ts';
import { voltsOfDbm } from '../../src/engine/quantity/power.ts';
import { noiseFigureOf, riseMeans, usualRises } from '../../src/engine/stages/bench/noiseHeard.ts';
import { mostAudio, soundOf, worstAudioHeat } from '../../src/engine/stages/receive/audio.ts';
import { front } from '../../src/engine/stages/receive/front.ts';
import { behindLosses, spareLoss, thermalNoise } from '../../src/engine/stages/receive/noise.ts';
import { sReports } from '../../src/engine/stages/receive/sReports.ts';

// Source: Boltzmann's constant is exact; kT0 = −173.975 dBm/Hz, −139.204 dBm in 3 kHz.
test('thermal noise', () => {
  expect(thermalNoise(1)).toBeCloseTo(-173.975, 3);
  expect(thermalNoise(3000)).toBeCloseTo(-139.204, 3);
});

// Source: kT0B plus the noise figure, worked by hand in 2.4 kHz to whole decibels.
test.each([
  [5, -135],
  [10, -130],
  [15, -125],
  [20, -120],
  [25, -115],
])('noise figure %d dB: floor %d dBm in 2.4 kHz', (figure, floor) => {
  expect(Math.abs(thermalNoise(2400) + figure - floor)).toBeLessThanOrEqual(0.5);
});

// Source: 10 log10((fa + F − 1)/F), worked by hand.
test.each([
  [20, 50, 30],
  [20, 40, 20],
  [20, 30, 10.4],
  [30, 30, 3],
])('noise figure %d dB, outside %d dB: rise %d dB', (figure, external, rise) => {
  expect(Math.abs(noiseRise(external, figure) - rise)).toBeLessThanOrEqual(0.051);
});

// Source: the definition: with the spare loss in front the rise is ten decibels.
test('the attenuator that leaves ten decibels of noise rise', () => {
  for (const [external, figure] of [
    [48.9, 6],
    [43.6, 15],
    [29.3, 12],
  ] as const) {
    const loss = spareLoss(external, figure);
    expect(loss).not.toBeNull();
    expect(noiseRise(external, figure + (loss ?? 0))).toBeCloseTo(10, 9);
  }
  expect(spareLoss(20, 15)).toBeNull();
});

// Source: IARU Region 1, recommendation R.1: S9 is −73 dBm, S1 −121 dBm, 50 µV and 0.2 µV in 50 Ω.
test('S-reports', () => {
  const level = (name: string) =>
    sReports.find(({ report }) => report === name)?.level ?? Number.NaN;
  expect(level('S9')).toBe(-73);
  expect(level('S1')).toBe(-121);
  expect(level('S9+40 dB')).toBe(-33);
  expect(sReports).toHaveLength(13);
  expect(voltsOfDbm(level('S9'), 'Vrms', 50) * 1e6).toBeCloseTo(50, 0);
  expect(voltsOfDbm(level('S1'), 'Vrms', 50) * 1e6).toBeCloseTo(0.2, 2);
});

// Source: maker's data sheet of the 386 type, typical power at 10 % distortion into 8 Ω.
test.each([
  [6, 0.325],
  [9, 0.7],
])('a 386 type at %d V gives %d W into 8 Ω', (supply, watts) => {
  expect(Math.abs(mostAudio(audioChips.a386, supply, 8) / watts - 1)).toBeLessThan(0.03);
});

// Source: the integral over one cycle of a class-B stage on half the supply, by the rectangle rule,
// swept over all amplitudes.
test('worst heat of the audio stage', () => {
  const [supply, ohms, steps] = [9, 8, 20_000];
  let worst = 0;
  for (let amplitude = 0.02; amplitude <= supply / 2; amplitude += 0.02) {
    let heat = 0;
    for (let k = 0; k < steps / 50; k += 1) {
      const v = amplitude * Math.sin((2 * Math.PI * (k + 0.5)) / (steps / 50));
      heat += ((supply / 2 - Math.abs(v)) * Math.abs(v)) / ohms;
    }
    worst = Math.max(worst, heat / (steps / 50));
  }
  const idle = audioChips.a386.idle * supply;
  expect((worstAudioHeat(audioChips.a386, supply, ohms) - idle) / worst).toBeCloseTo(1, 3);
});

const usual = {
  scheme: 'direct',
  thirdServes: 'no',
  thirdGain: null,
  bandLoss: 3,
  mixerLoss: 6.5,
  network: 0.5,
  frontLoss: 2,
  amplifierGain: 15,
  amplifierNoise: 4,
  filterLoss: 3,
  detectorLoss: 6.5,
  preampGain: 34,
  preampNoise: 6,
  noiseBandwidth: 2400,
};

// Source: Friis's formula written out by hand, with twice the noise of the amplifier behind the filter.
test('noise figure of the receiver', () => {
  const r = (db: number) => 10 ** (db / 10);
  const byHand =
    r(0.5) +
    (r(2) - 1) / r(-0.5) +
    (r(4) - 1) / r(-2.5) +
    (r(3) - 1) / r(12.5) +
    (2 * (r(4) - 1)) / r(9.5) +
    (r(6.5) - 1) / r(24.5) +
    (r(6) - 1) / r(18);
  const { noiseFigure, floor, frontGain, chain } = front(usual);
  expect(noiseFigure).toBeCloseTo(10 * Math.log10(byHand), 12);
  expect(floor).toBeCloseTo(thermalNoise(2400) + noiseFigure, 12);
  expect(frontGain).toBeCloseTo(18, 12);
  const shares = chain.reduce((total, row) => total + row.share, 0);
  expect(shares).toBeCloseTo(1 - 1 / byHand, 12);
  expect(chain.at(-2)?.level).toBeCloseTo(-73 + 18, 12);
});

// Common practice, no source: on 40 m a receiver with 20 dB of noise figure is still limited by
// the band at a residential place.
test('forty metres are noisy', () => {
  expect(noiseRise(externalNoise('residential', 7.1e6), 20)).toBeGreaterThan(10);
});

// Source: Friis's formula written out by hand, with band-pass and mixer before the first amplifier.
test('noise figure of a receiver that converts', () => {
  const r = (db: number) => 10 ** (db / 10);
  const byHand =
    r(0.5 + 2 + 3 + 6.5) *
    (r(4) +
      (r(3) - 1) / r(15) +
      (2 * (r(4) - 1)) / r(12) +
      (r(6.5) - 1) / r(27) +
      (r(6) - 1) / r(20.5));
  const converts = front({ ...usual, scheme: 'conversion' });
  expect(converts.noiseFigure).toBeCloseTo(10 * Math.log10(byHand), 12);
  expect(converts.chain.map(({ block }) => block)).toEqual([
    'network',
    'front',
    'bandPass',
    'mixer',
    'first',
    'filter',
    'second',
    'detector',
    'preamp',
  ]);
  const helped = front({ ...usual, scheme: 'conversion', thirdServes: 'yes', thirdGain: 14 });
  const rest = byHand / r(2.5);
  expect(helped.noiseFigure).toBeCloseTo(10 * Math.log10(r(2.5) * (r(4) + (rest - 1) / r(14))), 12);
});

// Source: definition of the sensitivity (IEC 60268-5, 60268-7, from memory), by hand: 85 dB from a
// watt at one metre is 72 dB from 50 mW, and 66 dB at two metres; 100 dB from a milliwatt is 80
// from ten microwatts.
test('how loud a power is', () => {
  const ears = {
    ears: 'speaker',
    speakerSensitivity: 85,
    speakerDistance: 1,
    phonesSensitivity: 100,
  } as const;
  expect(soundOf(ears, 50e-3)).toBeCloseTo(71.99, 2);
  expect(soundOf({ ...ears, speakerDistance: 2 }, 50e-3)).toBeCloseTo(65.97, 2);
  expect(soundOf({ ...ears, ears: 'phones' }, 10e-6)).toBeCloseTo(80, 9);
});

// Source: r = (fa + F − 1)/F, worked there and back: with 48.9 dB from outside a receiver of 20 dB
// rises by 28.9 dB; only 10 dB heard means 39.4 dB.
test('the noise figure that fits a rise', () => {
  for (const figure of [3, 12, 20, 35]) {
    expect(noiseFigureOf(noiseRise(48.9, figure), 48.9)).toBeCloseTo(figure, 9);
  }
  expect(noiseFigureOf(10, 48.9)).toBeCloseTo(39.36, 2);
  // More than the place has over a receiver without any noise: none fits.
  expect(noiseFigureOf(60, 48.9)).toBeNull();
  expect(noiseFigureOf(0, 48.9)).toBeNull();
});

// Source: ITU-R P.372: deciles in time: eight hours in ten lie between 5.3 dB under and 10.6 dB over.
test('what a rise means', () => {
  const usual = usualRises(48.9, 5.9, 'residential');
  expect(usual.from).toBeCloseTo(43 - 5.3, 2);
  expect(usual.to).toBeCloseTo(43 + 10.6, 2);
  expect(riseMeans(40, 43, usual)).toMatch(/^As it should be: between 38\sdB and 54\sdB/);
  expect(riseMeans(30, 43, usual)).toMatch(/^13\sdB less/);
  expect(riseMeans(55, 43, usual)).toMatch(/^12\sdB more/);
  expect(riseMeans(2, 43, usual)).toMatch(/does not hear the band/);
  // Where the receiver sets the limit the rise never falls below that of a resistor by much.
  expect(usualRises(20, 20, 'residential').from).toBeGreaterThan(1);
});

// Source: the definition of a system's noise factor: an attenuator of 3 dB at 290 K before the
// receiver halves the noise of the sky and puts half of a resistor's in its place.
test('noise behind a lossy line and antenna', () => {
  expect(behindLosses(0, 17, 0.3)).toBeCloseTo(0, 12);
  expect(behindLosses(20, 10 * Math.log10(2), 1)).toBeCloseTo(10 * Math.log10(50.5), 9);
  expect(behindLosses(48.9, 0, 1)).toBeCloseTo(48.9, 12);
  expect(behindLosses(48.9, 3, 0.01)).toBeCloseTo(25.9, 1);
});
