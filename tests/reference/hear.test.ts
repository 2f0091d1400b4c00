import { describe, expect, test } from 'vitest';
import { basebandFrequencies } from '../../src/engine/circuit/audio/baseband.ts';
import { effective } from '../../src/engine/circuit/audio/levelMatch.ts';
import { powerSpectrum } from '../../src/engine/circuit/audio/powerSpectrum.ts';
import { randomSource } from '../../src/engine/circuit/audio/randomSource.ts';
import { ladderResponse } from '../../src/engine/circuit/ladderResponse.ts';
import { linkSpectrum } from '../../src/engine/circuit/speech/linkSpectrum.ts';
import { spectrumIndex } from '../../src/engine/circuit/speech/spectrumIndex.ts';
import { finish } from '../../src/engine/errands/drive.ts';
import { hearErrand } from '../../src/engine/errands/hear/errand.ts';
import { type HearAnswer, RATE } from '../../src/engine/errands/hear/hearAnswer.ts';
import type { HearBeside } from '../../src/engine/errands/hear/hearWork.ts';
import { pick, seenBy } from '../../src/engine/errands/pick.ts';
import { type Rig, withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';

const evaluate = createEvaluator(stages);
const say = (rig: Rig, texts: Readonly<Record<string, string>>) =>
  Object.entries(texts).reduce((now, [path, text]) => withEntry(now, path, text), rig);

/** Nothing but the filter. */
const bare = {
  'hear.noise': 'none',
  'hear.fading': 'none',
  'hear.final': 'straight',
};

function hear(rig: Rig, beside: Partial<HearBeside>, of = 1): HearAnswer {
  const worked = evaluate(rig);
  const laid = { audio: null, final: null, ...beside };
  const seen = seenBy(hearErrand, [...pick(worked, hearErrand), laid]);
  if (!seen) throw new Error('waits');
  return hearErrand.merge(
    Array.from({ length: of }, (_, index) => finish(hearErrand.work(seen, { index, of }))),
  ) as HearAnswer;
}

const white = (seconds: number) => {
  const { normal } = randomSource(3);
  return Float32Array.from({ length: seconds * RATE }, () => 0.1 * normal());
};

describe.each(examples.map((rig) => [rig.title, rig] as const))('%s', (_, plain) => {
  const rig = say(plain, bare);

  // Both sidebands of white noise through the ladder twice; its response from the chain itself, which
  // the circuit simulator confirms. Each side adds as the detector adds them: H(fc+f) + H*(fc−f).
  test('the spectrum of what is heard is that of the filter, within 0.3 dB', () => {
    const worked = evaluate(rig);
    const ladder = valueAt(worked, 'filter.ladder') as Parameters<typeof ladderResponse>[0];
    const carrier = valueAt(worked, 'carrier.frequency') as number;
    const audio = white(40);
    const [before, after] = hear(rig, { audio }).heard;
    const size = 1024;
    const spectrum = (of: Float32Array | null | undefined) =>
      powerSpectrum(Float64Array.from(of ?? []), RATE, size);
    const [a, b] = [spectrum(before?.audio), spectrum(after?.audio)];
    const power = (f: number) => {
      const gain = new Float64Array(2);
      const phase = new Float64Array(2);
      ladderResponse(ladder, Float64Array.of(carrier - f, carrier + f), { gain, phase });
      const [down, up] = gain.map((g) => 10 ** (g / 10));
      const [pd = 0, pu = 0] = phase;
      return (
        ((up ?? 0) * Math.cos(2 * pu) + (down ?? 0) * Math.cos(2 * pd)) ** 2 +
        ((up ?? 0) * Math.sin(2 * pu) - (down ?? 0) * Math.sin(2 * pd)) ** 2
      );
    };
    const step = RATE / size;
    const offsets: number[] = [];
    for (let k = 16; k * step < 3200; k += 4) {
      let [x, y] = [0, 0];
      // The window smears a point over its neighbours: the response is smeared alike.
      for (let i = k - 2; i <= k + 2; i += 1) {
        x += b[i] ?? 0;
        for (const [d, w] of [
          [-0.5, 0.5],
          [0, 1],
          [0.5, 0.5],
        ] as const) {
          y += ((a[i] ?? 0) * w * power((i + d) * step)) / 2;
        }
      }
      const off = 10 * Math.log10(x / y);
      if (10 * Math.log10(power(k * step)) > -25) offsets.push(off);
    }
    expect(offsets.length).toBeGreaterThan(30);
    // Levels are matched: what is left over is one figure for all tones.
    const sorted = [...offsets].sort((p, q) => p - q);
    const common = sorted[Math.floor(sorted.length / 2)] ?? 0;
    for (const off of offsets) expect(Math.abs(off - common)).toBeLessThan(0.3);
  });

  test('all that is played is equally strong, and shares give the same answer', () => {
    const three = say(rig, { 'compare.b': 'yes', 'compare.bFamily': 'butterworth' });
    const audio = white(3);
    const whole = hear(three, { audio });
    const shared = hear(three, { audio }, 2);
    expect(whole.heard.map(({ name }) => name)).toEqual(['0', 'A', 'B']);
    for (const { audio: one } of whole.heard) {
      if (one) expect(effective(Float64Array.from(one))).toBeCloseTo(0.1, 4);
    }
    expect(shared).toEqual(whole);
  });

  // By the rule of the product detector: a lower sideband's tones rise with the receiver's carrier.
  test('off tune a tone comes out where the sheet says', () => {
    const off = say(rig, { 'hear.offTune': '120' });
    const expected = valueAt(evaluate(off), 'hear.toneAs') as number;
    expect(Math.abs(expected - 1000)).toBe(120);
    const audio = Float32Array.from({ length: 2 * RATE }, (_, i) =>
      Math.sin((2 * Math.PI * 1000 * i) / RATE),
    );
    const heard = hear(off, { audio }).heard[1]?.audio;
    const spectrum = powerSpectrum(Float64Array.from(heard ?? []), RATE, 4096);
    const strongest = spectrum.indexOf(Math.max(...spectrum));
    expect(Math.abs((strongest * RATE) / 4096 - expected)).toBeLessThan(4);
  });

  // The same procedure on a grid eight times finer, from the ladder instead of the sheet's curve.
  test('the index agrees with a finer sum', () => {
    const noisy = say(plain, { 'hear.ratio': '20', 'transmit.speechMean': '20 %' });
    const worked = evaluate(noisy);
    const at = (path: string) => valueAt(worked, path) as number;
    const rate = 8000;
    const fine = basebandFrequencies(0, rate).map((f) => f + at('carrier.frequency'));
    const gain = new Float64Array(fine.length);
    const ladder = valueAt(worked, 'filter.ladder') as Parameters<typeof ladderResponse>[0];
    ladderResponse(ladder, fine, { gain });
    const ratio = 20 + 10 * Math.log10(0.2);
    const bandwidth = at('filter.noiseBandwidth');
    const link = linkSpectrum({ rate, sender: gain, receiver: gain, ratio, bandwidth });
    const index = spectrumIndex(link.step, link.speech, link.noise);
    expect(Math.abs(at('speech.index') - index)).toBeLessThan(0.01);
  });
});

describe('what the final does', () => {
  const rig = say(examples[0] as Rig, { ...bare, 'hear.final': 'exact', 'hear.over': '0' });
  const twoTones = Float32Array.from(
    { length: 4 * RATE },
    (_, i) =>
      0.5 * (Math.sin((2 * Math.PI * 1100 * i) / RATE) + Math.sin((2 * Math.PI * 1700 * i) / RATE)),
  );
  const third = (answer: HearAnswer) => {
    const spectrum = powerSpectrum(Float64Array.from(answer.heard[1]?.audio ?? []), RATE, 4096);
    const near = (f: number) => {
      const k = Math.round((f * 4096) / RATE);
      return (spectrum[k - 1] ?? 0) + (spectrum[k] ?? 0) + (spectrum[k + 1] ?? 0);
    };
    return 10 * Math.log10(near(2300) / near(1700));
  };

  // An envelope law y = x − c·x³ and two tones of half the crest each: the envelope is |cos|, and
  // cos − c·cos³ has 1 − 3c/4 at the tones and c/4 at the third order. Closed form. The sender's filter
  // makes the tones unequal by some tenths of a decibel.
  test('two tones come out with the products of its own curve', () => {
    const c = 0.1;
    const sizes = Float64Array.from({ length: 60 }, (_, i) => (i + 1) / 50);
    const final = {
      drive: sizes.map((s) => 20 * Math.log10(s)),
      power: sizes.map((s) => (s - c * s ** 3) ** 2),
      phase: new Float64Array(60),
    };
    const expected = 20 * Math.log10(c / 4 / (1 - (3 * c) / 4));
    // Through a flat receiver: the filter would take its own share of 2300 Hz.
    const flat = hear(say(rig, { 'hear.ways': 'sends' }), { audio: twoTones, final });
    expect(flat.final).toBe('exact');
    expect(Math.abs(third(flat) - expected)).toBeLessThan(0.8);
  });

  test('until the curve is worked the plain knee stands in', () => {
    expect(hear(rig, { audio: twoTones }).final).toBe('knee');
  });
});
