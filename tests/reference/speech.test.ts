import { describe, expect, test } from 'vitest';
import { basebandFrequencies, basebandTaps } from '../../src/engine/circuit/audio/baseband.ts';
import { hearOver, type Over } from '../../src/engine/circuit/audio/hearOver.ts';
import { powerSpectrum } from '../../src/engine/circuit/audio/powerSpectrum.ts';
import { fft } from '../../src/engine/circuit/fft.ts';
import { bandLevels } from '../../src/engine/circuit/speech/bandLevels.ts';
import { intelligibility } from '../../src/engine/circuit/speech/intelligibility.ts';
import { type Link, linkSpectrum } from '../../src/engine/circuit/speech/linkSpectrum.ts';
import { spectrumIndex } from '../../src/engine/circuit/speech/spectrumIndex.ts';
import { bandEdges, speechBands } from '../../src/engine/circuit/speech/speechBands.ts';
import { spreadOfMasking } from '../../src/engine/circuit/speech/spreadOfMasking.ts';
import { voice } from '../../src/engine/circuit/speech/voice.ts';

const RATE = 16_000;
const plainOver: Omit<Over, 'sender'> = {
  rate: RATE,
  microphone: null,
  final: null,
  fading: null,
  noise: null,
  offTune: 0,
  receiver: null,
  speaker: null,
  seed: 1,
};

const of = (level: (middle: number, i: number) => number) =>
  Float64Array.from(speechBands, ({ middle }, i) => level(middle, i));
const normal = of((_, i) => speechBands[i]?.speech ?? 0);

describe('the index of ANSI S3.5-1997', () => {
  // The importance of all bands together is one.
  test('all bands are worth one', () => {
    expect(speechBands.reduce((sum, { importance }) => sum + importance, 0)).toBeCloseTo(1, 4);
  });

  // By the definition: (SNR + 15)/30 in every band alike.
  test.each([
    [20, 1],
    [15, 1],
    [0, 0.5],
    [6, 0.7],
    [-9, 0.2],
    [-15, 0],
    [-40, 0],
  ])('%i dB over the noise in every band gives %f', (ratio, index) => {
    expect(
      intelligibility(
        normal,
        normal.map((l) => l - ratio),
      ),
    ).toBeCloseTo(index, 4);
  });

  // Added up from the table by hand: 315 Hz to 2.5 kHz are worth 0.6981.
  test('a band from 300 Hz to 2.8 kHz without noise', () => {
    const cut = of((middle, i) =>
      middle > 300 && middle < 2800 ? (speechBands[i]?.speech ?? 0) : -Infinity,
    );
    const quiet = of(() => -100);
    expect(intelligibility(cut, quiet)).toBeCloseTo(0.6981, 4);
    // The next band up, 3.15 kHz, is worth 0.0844, the next down, 250 Hz, 0.0150.
    const wider = cut.map((l, i) => ([13, 2].includes(i) ? (normal[i] ?? 0) : l));
    expect(intelligibility(wider, quiet) - intelligibility(cut, quiet)).toBeCloseTo(0.0994, 4);
  });

  // By hand: noise of 40 dB at 1 kHz alone. C = −80 + 0.6·(40 + 30 − 6.353) = −41.81 dB an octave;
  // at 1.25 kHz, lg₂(0.8909·1.25) = 0.1553 octaves from its edge: 33.51 dB; at 2 kHz 5.16 dB.
  test('a strong band covers those above it, none below', () => {
    const silent = of(() => -100);
    const noise = of((middle) => (middle === 1000 ? 40 : -100));
    const covered = spreadOfMasking(silent, noise);
    const at = (middle: number) => covered[speechBands.findIndex((b) => b.middle === middle)] ?? 0;
    expect(at(1000)).toBeCloseTo(40, 9);
    expect(at(1250)).toBeCloseTo(33.51, 1);
    expect(at(2000)).toBeCloseTo(5.16, 1);
    expect(at(800)).toBeLessThan(-90);
  });

  // Speech with normal effort in a quiet room: hardly anything is lost (Annex: close to one).
  test('a good ear in a quiet room', () => {
    const quiet = of(() => -50);
    const index = intelligibility(normal, quiet, { masking: true, ear: true });
    expect(index).toBeGreaterThan(0.98);
    expect(index).toBeLessThanOrEqual(1);
  });

  test('a steady power in a hertz has that level in every band', () => {
    const levels = bandLevels(new Float64Array(1025).fill(2), RATE / 2048);
    for (const level of levels) expect(level).toBeCloseTo(10 * Math.log10(2), 9);
  });
});

describe('speech over a link', () => {
  const frequency = basebandFrequencies(7e6, RATE);
  const flat = new Float64Array(frequency.length);
  /** A lower sideband's filter with upright edges, 100 dB down outside. */
  const cut = (low: number, high: number) =>
    frequency.map((f) => (7e6 - f >= low && 7e6 - f <= high ? 0 : -100));

  const bandsOf = (link: Link) => {
    const { step, speech, noise } = linkSpectrum(link);
    return { speech: bandLevels(speech, step), noise: bandLevels(noise, step) };
  };

  // By the definitions: a filter that passes 300 to 2700 Hz leaves speech power P there and white
  // noise; 10 dB in 2400 Hz. Band by band the ratio is Sᵢ − 10·lg(P/(10·2400)), and both pass the
  // receiver alike.
  test('ratios in the bands follow from the one in the bandwidth', () => {
    const filter = cut(300, 2700);
    const found = bandsOf({
      rate: RATE,
      sender: filter,
      receiver: filter,
      ratio: 10,
      bandwidth: 2400,
    });
    let power = 0;
    for (const { middle, speech } of speechBands) {
      const [low, high] = bandEdges(middle);
      const width = Math.min(high, 2700) - Math.max(low, 300);
      if (width > 0) power += width * 10 ** (speech / 10);
    }
    const density = 10 * Math.log10(power / (10 * 2400));
    for (const i of [4, 8, 11]) {
      const ratio = (found.speech[i] ?? 0) - (found.noise[i] ?? 0);
      expect(Math.abs(ratio - ((speechBands[i]?.speech ?? 0) - density))).toBeLessThan(0.1);
    }
  });

  // The other way to the same: speech and noise rendered, their spectra measured.
  test('agrees with what is rendered', () => {
    const filter = cut(350, 2600);
    const taps = basebandTaps(filter, flat);
    const audio = voice(10, RATE, 5);
    const over = { ...plainOver, sender: taps, receiver: taps };
    const clean = hearOver(audio, over);
    const noisy = hearOver(audio, { ...over, noise: { ratio: 6, bandwidth: 2500, of: 'mean' } });
    const rest = noisy.map((x, i) => x - (clean[i] ?? 0));
    const levels = (of: Float64Array) => bandLevels(powerSpectrum(of, RATE, 2048), RATE / 2048);
    const link = { rate: RATE, sender: filter, receiver: filter, ratio: 6, bandwidth: 2500 };
    const { speech, noise } = bandsOf(link);
    const index = intelligibility(speech, noise);
    expect(index).toBeGreaterThan(0.2);
    expect(Math.abs(intelligibility(levels(clean), levels(rest)) - index)).toBeLessThan(0.03);
  });

  test('an even ratio gives the same by bands and by the integral', () => {
    const speech = new Float64Array(1024).fill(3);
    const noise = new Float64Array(1024).fill(1);
    const audible = (10 * Math.log10(3) + 15) / 30;
    // The last band ends above 8 kHz: what is not there is not heard.
    const [low, high] = bandEdges(8000);
    const missing = (0.0185 * (high - 1023.5 * 7.8125)) / (high - low);
    expect(spectrumIndex(7.8125, speech, noise)).toBeCloseTo(audible * (1 - missing), 6);
  });

  // By hand: everything from 300 to 2620 Hz far over the noise. 2620 to 2818 Hz are 198.4 of the
  // 579.6 Hz of the band at 2.5 kHz, worth 0.0868: 0.0297. 300 to 500 Hz fill most of the band at 315 Hz, all
  // of that at 400 Hz and the lower part of that at 500 Hz.
  test('200 Hz more at an edge are worth their share of the bands', () => {
    const index = (low: number, high: number) => {
      const sender = cut(low, high);
      const link = { rate: RATE, sender, receiver: sender, ratio: 60, bandwidth: 2500 };
      const { step, speech, noise } = linkSpectrum(link);
      return spectrumIndex(step, speech, noise);
    };
    const edges = (middle: number) => bandEdges(middle);
    const upper = (0.0868 * (edges(2500)[1] - 2620)) / (edges(2500)[1] - edges(2500)[0]);
    expect(Math.abs(index(300, 2818) - index(300, 2620) - upper)).toBeLessThan(0.002);
    const lower =
      (0.0289 * (edges(315)[1] - 300)) / (edges(315)[1] - edges(315)[0]) +
      0.044 +
      (0.0578 * (500 - edges(500)[0])) / (edges(500)[1] - edges(500)[0]);
    expect(Math.abs(index(300, 2620) - index(500, 2620) - lower)).toBeLessThan(0.003);
  });
});

describe('the voice', () => {
  const audio = voice(10, RATE, 7);

  test('is the same for the same seed, another for another', () => {
    expect(voice(1, RATE, 7)).toEqual(voice(1, RATE, 7));
    expect(voice(1, RATE, 8)).not.toEqual(voice(1, RATE, 7));
    expect(audio.length).toBe(10 * RATE);
    expect(audio.every(Number.isFinite)).toBe(true);
  });

  // Outside reference: the spectrum of normal speech in ANSI S3.5-1997. Measured otherwise than the
  // voice shapes itself: one transform over the whole, power summed over each band.
  test.each([1, 7, 2024])('has the long-term spectrum of speech, seed %i', (seed) => {
    const spoken = voice(10, RATE, seed);
    const n = 2 ** 18;
    const re = new Float64Array(n);
    const im = new Float64Array(n);
    re.set(spoken);
    fft(re, im);
    const off = speechBands.map(({ middle, speech }) => {
      const [low, high] = bandEdges(middle);
      const [first, last] = [(low * n) / RATE, Math.min(n / 2, (high * n) / RATE)];
      let sum = 0;
      for (let k = Math.ceil(first); k <= last; k += 1) {
        sum += (re[k] ?? 0) ** 2 + (im[k] ?? 0) ** 2;
      }
      return 10 * Math.log10(sum / (last - first)) - speech;
    });
    const mean = off.reduce((sum, one) => sum + one, 0) / off.length;
    for (const one of off) expect(Math.abs(one - mean)).toBeLessThan(3);
  });

  // The envelope of speech moves most about three to five times a second: T. Houtgast & H. Steeneken,
  // J. Acoust. Soc. Am. 77, 1985 (from memory).
  test('moves as fast as speech does', () => {
    const block = 160;
    const n = 1024;
    const re = new Float64Array(n);
    const im = new Float64Array(n);
    for (let i = 0; i < audio.length / block; i += 1) {
      let sum = 0;
      for (let k = 0; k < block; k += 1) sum += (audio[i * block + k] ?? 0) ** 2;
      re[i] = sum / block - 1;
    }
    fft(re, im);
    const hertz = RATE / block / n;
    const octave = (middle: number) => {
      let sum = 0;
      for (let k = 1; k < n / 2; k += 1) {
        const f = k * hertz;
        if (f >= middle / Math.SQRT2 && f < middle * Math.SQRT2) {
          sum += (re[k] ?? 0) ** 2 + (im[k] ?? 0) ** 2;
        }
      }
      return sum;
    };
    expect(octave(4)).toBeGreaterThan(octave(0.5));
    expect(octave(4)).toBeGreaterThan(octave(16));
  });

  // Peaks of speech stand 12 to 18 dB and more over its effective value; it pauses now and then.
  // Common practice, no source.
  test('has crests and pauses', () => {
    let most = 0;
    for (const one of audio) most = Math.max(most, Math.abs(one));
    expect(20 * Math.log10(most)).toBeGreaterThan(11);
    expect(20 * Math.log10(most)).toBeLessThan(22);
    let still = 0;
    for (let i = 0; i < audio.length; i += 320) {
      let sum = 0;
      for (let k = 0; k < 320; k += 1) sum += (audio[i + k] ?? 0) ** 2;
      if (sum / 320 < 1e-3) still += 1;
    }
    expect(still / (audio.length / 320)).toBeGreaterThan(0.05);
    expect(still / (audio.length / 320)).toBeLessThan(0.4);
  });
});
