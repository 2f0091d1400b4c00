import { describe, expect, test } from 'vitest';
import { addNoise, densityFor, meanPower } from '../../src/engine/circuit/audio/addNoise.ts';
import { audioEdges } from '../../src/engine/circuit/audio/audioEdges.ts';
import { basebandFrequencies, basebandTaps } from '../../src/engine/circuit/audio/baseband.ts';
import { convolve } from '../../src/engine/circuit/audio/convolve.ts';
import { fade, rayGain } from '../../src/engine/circuit/audio/fading.ts';
import { finalCurve } from '../../src/engine/circuit/audio/finalCurve.ts';
import { hearOver, type Over } from '../../src/engine/circuit/audio/hearOver.ts';
import { effective, levelMatch } from '../../src/engine/circuit/audio/levelMatch.ts';
import { powerSpectrum } from '../../src/engine/circuit/audio/powerSpectrum.ts';
import { randomSource } from '../../src/engine/circuit/audio/randomSource.ts';
import { limitByCurve, softLimit, softLimited } from '../../src/engine/circuit/audio/softLimit.ts';
import { waterfall } from '../../src/engine/circuit/audio/waterfall.ts';
import { couplings } from '../../src/engine/circuit/couplings.ts';
import { crystalOf } from '../../src/engine/circuit/crystal.ts';
import { ladderForWidth } from '../../src/engine/circuit/ladderForWidth.ts';
import { ladderResponse } from '../../src/engine/circuit/ladderResponse.ts';

const RATE = 16_000;
const CARRIER = 7e6;
const dB = (ratio: number) => 20 * Math.log10(ratio);

/** Four single tuned circuits, one after the other: a lower sideband's filter. Closed form. */
const MIDDLE = CARRIER - 1500;
const WIDTH = 3400;
function closed(f: number): readonly [number, number] {
  const x = (2 * (f - MIDDLE)) / WIDTH;
  // 1/(1 + jx) four times.
  return [(1 + x * x) ** -2, -4 * Math.atan(x)];
}
function closedTaps() {
  const frequency = basebandFrequencies(CARRIER, RATE);
  const gain = frequency.map((f) => dB(closed(f)[0]));
  const phase = frequency.map((f) => closed(f)[1]);
  return basebandTaps(gain, phase);
}

const quiet: Over = {
  rate: RATE,
  microphone: null,
  sender: closedTaps(),
  final: null,
  fading: null,
  noise: null,
  offTune: 0,
  receiver: null,
  speaker: null,
  seed: 1,
};

const tone = (f: number, seconds = 1, size = 1) =>
  Float64Array.from(
    { length: seconds * RATE },
    (_, i) => size * Math.cos((2 * Math.PI * f * i) / RATE),
  );

/** Size of a tone in the second half of samples, where everything has settled. */
function sizeAt(audio: Float64Array, f: number): number {
  const half = audio.length / 2;
  let [re, im] = [0, 0];
  for (let i = half; i < audio.length; i += 1) {
    const turn = (2 * Math.PI * f * i) / RATE;
    re += (audio[i] ?? 0) * Math.cos(turn);
    im += (audio[i] ?? 0) * Math.sin(turn);
  }
  return (2 * Math.hypot(re, im)) / half;
}

/** What should be heard of a tone: both sidebands, the lower one turned round. Closed form. */
function wanted(f: number): number {
  const [up, upPhase] = closed(CARRIER + f);
  const [down, downPhase] = closed(CARRIER - f);
  return Math.hypot(
    up * Math.cos(upPhase) + down * Math.cos(downPhase),
    up * Math.sin(upPhase) - down * Math.sin(downPhase),
  );
}

describe('filtering', () => {
  test('block by block is the sum that defines it', () => {
    const random = randomSource(3);
    const draw = (n: number) => Float64Array.from({ length: n }, () => random.normal());
    const taps = { re: draw(32), im: draw(32), before: 5 };
    const [re, im] = [draw(500), draw(500)];
    const out = convolve(re, im, taps);
    for (let n = 0; n < 500; n += 1) {
      let [a, b] = [0, 0];
      for (let k = 0; k < 32; k += 1) {
        const x = re[n + 5 - k] ?? 0;
        const y = im[n + 5 - k] ?? 0;
        a += x * (taps.re[k] ?? 0) - y * (taps.im[k] ?? 0);
        b += x * (taps.im[k] ?? 0) + y * (taps.re[k] ?? 0);
      }
      expect(out.re[n]).toBeCloseTo(a, 9);
      expect(out.im[n]).toBeCloseTo(b, 9);
    }
  });

  test.each([100, 300, 700, 1000, 1500, 2400, 3000, 4000])('a tone of %i Hz', (f) => {
    expect(dB(sizeAt(hearOver(tone(f), quiet), f) / wanted(f))).toBeCloseTo(0, 2);
  });

  test('white noise comes out with the response’s own spectrum, within 0.3 dB', () => {
    const { normal } = randomSource(11);
    const audio = Float64Array.from({ length: 60 * RATE }, normal);
    const size = 1024;
    const step = RATE / size;
    const before = powerSpectrum(audio, RATE, size);
    const after = powerSpectrum(hearOver(audio, quiet), RATE, size);
    // Groups of five points: chance leaves less than 0.1 dB.
    for (let k = 5; k * step < 5000; k += 5) {
      let [a, b, c] = [0, 0, 0];
      for (let i = k - 2; i <= k + 2; i += 1) {
        a += after[i] ?? 0;
        b += (before[i] ?? 0) * wanted(i * step) ** 2;
        c += 1;
      }
      expect(c).toBe(5);
      expect(Math.abs(10 * Math.log10(a / b))).toBeLessThan(0.3);
    }
  });

  // A crystal ladder as built, its response from the circuit. An impulse goes through; what comes out
  // is summed up by frequency, between the points of the response too.
  test.each(['lower', 'upper'])('an impulse through a crystal ladder, %s sideband', (side) => {
    const crystal = crystalOf(7.2e6, 30e-3, 80e3, 4e-12);
    const bare = { capacitorQ: 1000, stray: 0 };
    const { ladder, band } = ladderForWidth(crystal, couplings('chebyshev', 6, 0.2), bare, 2400);
    const carrier = side === 'lower' ? band.high + 250 : band.low - 250;
    const at = (frequency: Float64Array) => {
      const gain = new Float64Array(frequency.length);
      const phase = new Float64Array(frequency.length);
      ladderResponse(ladder, frequency, { gain, phase });
      return { gain, phase };
    };
    const all = at(basebandFrequencies(carrier, RATE));
    const impulse = new Float64Array(RATE);
    impulse[2000] = 1;
    const out = hearOver(impulse, { ...quiet, sender: basebandTaps(all.gain, all.phase) });
    for (let f = 203; f < 3600; f += 47) {
      let [re, im] = [0, 0];
      out.forEach((x, i) => {
        const turn = (2 * Math.PI * f * (i - 2000)) / RATE;
        re += x * Math.cos(turn);
        im -= x * Math.sin(turn);
      });
      const { gain, phase } = at(Float64Array.of(carrier - f, carrier + f));
      const [down, up] = gain.map((g) => 10 ** (g / 20));
      const [downPhase = 0, upPhase = 0] = phase;
      const exact = Math.hypot(
        (up ?? 0) * Math.cos(upPhase) + (down ?? 0) * Math.cos(downPhase),
        (up ?? 0) * Math.sin(upPhase) - (down ?? 0) * Math.sin(downPhase),
      );
      expect(Math.abs(dB(Math.hypot(re, im) / exact))).toBeLessThan(0.3);
    }
  });

  test('sender and receiver one after the other: decibels add', () => {
    const both = { ...quiet, receiver: closedTaps() };
    for (const f of [500, 1500, 2500]) {
      const out = sizeAt(hearOver(tone(f), both), f);
      // The wanted sideband twice through; the other one is weak, and twice as weak.
      const [down, downPhase] = closed(CARRIER - f);
      const [up, upPhase] = closed(CARRIER + f);
      const sum = Math.hypot(
        up ** 2 * Math.cos(2 * upPhase) + down ** 2 * Math.cos(2 * downPhase),
        up ** 2 * Math.sin(2 * upPhase) - down ** 2 * Math.sin(2 * downPhase),
      );
      expect(dB(out / sum)).toBeCloseTo(0, 2);
    }
  });

  // A lower sideband at fc − 1000 Hz, heard with the carrier 150 Hz too high: 1150 Hz. What leaks of
  // the upper one comes out on the other side, at 850 Hz.
  test('off tune the two sidebands part', () => {
    const out = hearOver(tone(1000, 2), { ...quiet, offTune: 150 });
    expect(dB(sizeAt(out, 1150) / closed(CARRIER - 1000)[0])).toBeCloseTo(0, 2);
    expect(dB(sizeAt(out, 850) / closed(CARRIER + 1000)[0])).toBeCloseTo(0, 2);
    expect(sizeAt(out, 1000)).toBeLessThan(1e-6);
  });

  // RC high-pass and low-pass: −3.01 dB at each edge, 20 dB a decade beyond.
  test('edges of the audio', () => {
    const edges = audioEdges(300, 3000, RATE);
    for (const f of [50, 300, 1000, 3000]) {
      const out = convolve(tone(f), null, edges).re;
      const size = 1 / Math.sqrt(1 + (300 / f) ** 2) / Math.sqrt(1 + (f / 3000) ** 2);
      expect(Math.abs(dB(sizeAt(out, f) / size))).toBeLessThan(0.05);
    }
  });
});

describe('the ceiling of a power stage', () => {
  // Rapp: at the ceiling the output is 2^(−1/2p) of it.
  test.each([1, 2, 3])('knee of sharpness %i', (p) => {
    expect(softLimited(1, 1, p)).toBeCloseTo(2 ** (-1 / (2 * p)), 12);
    expect(softLimited(0.01, 1, p)).toBeCloseTo(0.01, 6);
    expect(softLimited(1000, 1, p)).toBeCloseTo(1, 5);
    const [re, im] = [new Float64Array([0.6, 0]), new Float64Array([0.8, 0])];
    softLimit(re, im, 1, p);
    expect(Math.hypot(re[0] ?? 0, im[0] ?? 0)).toBeCloseTo(softLimited(1, 1, p), 12);
    expect((im[0] ?? 0) / (re[0] ?? 1)).toBeCloseTo(0.8 / 0.6, 12);
  });

  // Two tones: the envelope is 2A|cos|. Third-order products by quadrature of the first and third
  // Fourier coefficient of the bent envelope.
  test('two tones give the products that the integral says', () => {
    const n = 20_000;
    let [first, third] = [0, 0];
    for (let i = 0; i < n; i += 1) {
      const u = (Math.PI * (i + 0.5)) / n;
      const y = Math.sign(Math.cos(u)) * softLimited(Math.abs(Math.cos(u)), 0.8, 2);
      first += y * Math.cos(u);
      third += y * Math.cos(3 * u);
    }
    const re = Float64Array.from({ length: 2 * RATE }, (_, i) =>
      Math.cos((2 * Math.PI * 200 * i) / RATE),
    );
    const im = new Float64Array(re.length);
    softLimit(re, im, 0.8, 2);
    expect(dB(sizeAt(re, 600) / sizeAt(re, 200))).toBeCloseTo(dB(Math.abs(third / first)), 3);
  });

  test('a curve of one’s own does what the formula does', () => {
    const drive = Float64Array.from({ length: 401 }, (_, i) => i / 100);
    const given = drive.map((x) => softLimited(x, 1, 2));
    const re = Float64Array.from({ length: 200 }, (_, i) => i / 60);
    const im = re.map((x) => -x / 2);
    const [a, b] = [re.slice(), im.slice()];
    limitByCurve(re, im, { step: 0.01, given, turn: null });
    softLimit(a, b, 1, 2);
    a.forEach((one, i) => {
      expect(re[i]).toBeCloseTo(one, 4);
      expect(im[i]).toBeCloseTo(b[i] ?? 0, 4);
    });
  });

  // By hand: 0.5 lies midway between two points: 0.4 comes out, turned by a quarter of π.
  test('a curve turns the phase as well, straight between its points', () => {
    const re = Float64Array.of(0.3);
    const im = Float64Array.of(0.4);
    const curve = {
      step: 1,
      given: Float64Array.of(0, 0.8),
      turn: Float64Array.of(0, Math.PI / 2),
    };
    limitByCurve(re, im, curve);
    expect(Math.hypot(re[0] ?? 0, im[0] ?? 0)).toBeCloseTo(0.4, 12);
    expect(Math.atan2(im[0] ?? 0, re[0] ?? 0)).toBeCloseTo(Math.atan2(4, 3) + Math.PI / 4, 12);
  });

  // Size 1 at full drive; 20 dB under the lowest point it is straight; phases are kept.
  test('a stage’s own curve is laid out evenly', () => {
    const curve = finalCurve({
      drive: Float64Array.of(-20, -6, 0, 2),
      power: Float64Array.of(0.05, 1.2, 4, 4.2),
      phase: Float64Array.of(0.3, 0.1, 0, -0.05),
    });
    const at = (size: number, of: Float64Array | null) => of?.[Math.round(size / curve.step)] ?? 0;
    const close = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThan(3e-3);
    close(at(1, curve.given), 1);
    close(at(10 ** -0.3, curve.given), Math.sqrt(0.3));
    close(at(0.05, curve.given), Math.sqrt(0.0125) / 2);
    close(at(0.05, curve.turn), 0.3);
    close(at(10 ** 0.1, curve.given), Math.sqrt(4.2 / 4));
  });
});

describe('noise', () => {
  // Normal distribution: mean 0, variance 1, fourth moment 3; beyond two standard deviations 4.55 %.
  test('the generator is normal, and the same for the same seed', () => {
    const { normal } = randomSource(5);
    const n = 400_000;
    let [one, two, four, beyond] = [0, 0, 0, 0];
    for (let i = 0; i < n; i += 1) {
      const x = normal();
      one += x;
      two += x * x;
      four += x ** 4;
      if (Math.abs(x) > 2) beyond += 1;
    }
    expect(Math.abs(one / n)).toBeLessThan(0.006);
    expect(two / n).toBeCloseTo(1, 1);
    expect(Math.abs(four / n - 3)).toBeLessThan(0.1);
    expect(Math.abs(beyond / n - 0.0455)).toBeLessThan(0.0015);
    const again = randomSource(5);
    const other = randomSource(6);
    const first = randomSource(5).normal();
    expect(again.normal()).toBe(first);
    expect(other.normal()).not.toBe(first);
  });

  // By definition: noise power in the bandwidth is the signal's less the ratio.
  test('has the density that the ratio asks for', () => {
    const n = 30 * RATE;
    const [re, im] = [new Float64Array(n), new Float64Array(n)];
    addNoise(re, im, densityFor(4, 10, 2500), RATE, randomSource(9));
    // White over the whole rate: power in 2500 Hz is that part of all.
    const inBand = (meanPower(re, im) * 2500) / RATE;
    expect(10 * Math.log10(4 / inBand)).toBeCloseTo(10, 1);
    const spectrum = powerSpectrum(re, RATE, 256);
    const [low, high] = [10, 90].map((k) => {
      let sum = 0;
      for (let i = k; i < k + 20; i += 1) sum += spectrum[i] ?? 0;
      return sum;
    });
    expect(Math.abs(10 * Math.log10((high ?? 1) / (low ?? 1)))).toBeLessThan(0.2);
  });
});

describe('fading', () => {
  // Complex normal gain: |g|² is distributed as 1 − e^(−x) (Rayleigh); a Gaussian Doppler spectrum of
  // standard deviation σ gives the correlation e^(−2(πσt)²). Watterson, Juroshek & Bensema, 1970.
  test('a ray is Rayleigh with a Gaussian Doppler spectrum', () => {
    const rate = 200;
    const seconds = 20_000;
    const spread = 1;
    const { re, im } = rayGain(spread, seconds * rate, rate, randomSource(21));
    expect(meanPower(re, im)).toBeCloseTo(1, 1);
    for (const x of [0.1, 0.5, 1, 2]) {
      let below = 0;
      re.forEach((a, i) => {
        if (a * a + (im[i] ?? 0) ** 2 < x) below += 1;
      });
      expect(Math.abs(below / re.length - (1 - Math.exp(-x)))).toBeLessThan(0.015);
    }
    for (const lag of [0.1, 0.25, 0.5]) {
      const d = lag * rate;
      let sum = 0;
      for (let i = d; i < re.length; i += 1) {
        sum += (re[i] ?? 0) * (re[i - d] ?? 0) + (im[i] ?? 0) * (im[i - d] ?? 0);
      }
      const expected = Math.exp(-2 * (Math.PI * (spread / 2) * lag) ** 2);
      expect(Math.abs(sum / (re.length - d) - expected)).toBeLessThan(0.03);
    }
  });

  // Two rays, so slow that they stand still: |g₁ + g₂e^(−jωτ)| has notches 1/τ apart.
  test('two rays make notches a delay’s inverse apart', () => {
    const delay = 2e-3;
    const size = (f: number) => {
      const re = tone(f);
      const im = re.map((_, i) => Math.sin((2 * Math.PI * f * i) / RATE));
      fade(re, im, { spread: 1e-4, delay }, RATE, randomSource(4));
      return Math.hypot(re[8000] ?? 0, im[8000] ?? 0);
    };
    for (const f of [300, 420, 610]) {
      expect(size(f + 1 / delay) / size(f)).toBeCloseTo(1, 2);
      expect(Math.abs(size(f + 0.5 / delay) / size(f) - 1)).toBeGreaterThan(0.01);
    }
  });
});

test('levels are matched, and a tone stands where it is in the picture', () => {
  const audio = tone(1000, 2, 0.3);
  levelMatch(audio, tone(500, 2, 2));
  expect(effective(audio)).toBeCloseTo(Math.SQRT2, 6);
  const { moments, frequencies, level } = waterfall(audio, RATE, 1024, 4000, 40);
  for (let m = 0; m < moments; m += 1) {
    const row = level.subarray(m * frequencies, (m + 1) * frequencies);
    expect(row[64]).toBeGreaterThan(-0.1);
    expect(row[128]).toBeLessThan(-80);
  }
});
