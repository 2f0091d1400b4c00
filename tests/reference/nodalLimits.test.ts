import { describe, expect, test } from 'vitest';
import { biasPoint } from '../../src/engine/circuit/amplifier/biasPoint.ts';
import { cardFromSheet } from '../../src/engine/circuit/amplifier/cardFromSheet.ts';
import { biasOf } from '../../src/engine/circuit/amplifier/commonEmitter.ts';
import { hybridPi } from '../../src/engine/circuit/amplifier/hybridPi.ts';
import {
  microphoneAmplifier,
  typicalMicrophoneAmplifier,
} from '../../src/engine/circuit/amplifier/microphoneAmplifier.ts';
import {
  postFilterAmplifier,
  typicalPostFilterAmplifier,
} from '../../src/engine/circuit/amplifier/postFilterAmplifier.ts';
import { stabilityScan } from '../../src/engine/circuit/amplifier/stabilityScan.ts';
import { closeStage, stageFigures } from '../../src/engine/circuit/amplifier/stageFigures.ts';
import { cardAt } from '../../src/engine/circuit/amplifier/transistorCard.ts';
import { feedbackAmplifier } from './feedbackAmplifier.ts';
import { cards, modelLine } from './nodalCards.ts';
import { simulateAc, simulateReal, value } from './simulator.ts';

const KELVIN = 300.15;

describe('a card from a data sheet', () => {
  const sheet = {
    hfe: 180,
    vbe: [0.7, 10e-3],
    ft: [300e6, 10e-3, 20],
    cob: [3e-12, 5],
    cib: [7e-12, 0.5],
    early: 75,
    base: 20,
  } as const;
  const card = cardFromSheet(sheet);
  if (!card) throw new Error('no card');

  test('in the simulator it has the sheet’s fT, hFE and VBE', async () => {
    // Collector current 10 mA at 20 V, set by a base current; |h21| = 3 where it falls as 1/f.
    const supply = (ib: number) =>
      [modelLine('q', card), 'vce c 0 20', `ib 0 b dc ${value(ib)} ac 1`, 'q1 c b 0 q'].join('\n');
    const early = 1 + (sheet.ft[2] - 0.7) / sheet.early;
    const ib = sheet.ft[1] / sheet.hfe / early;
    const rest = await simulateReal(supply(ib), '.op');
    expect(-(rest.vector('i(vce)')[0] ?? 0) / sheet.ft[1]).toBeCloseTo(1, 2);
    expect(Math.abs((rest.vector('v(b)')[0] ?? 0) - 0.7)).toBeLessThan(0.01);
    const f = 100e6;
    const run = await simulateAc(supply(ib), { from: f, to: f, points: 1 });
    const { re, im } = run.current('vce');
    const gain = Math.hypot(re[0] ?? 0, im[0] ?? 0);
    expect(Math.abs((gain * f) / sheet.ft[0] - 1)).toBeLessThan(0.02);
  });

  test('its collector capacitance is the sheet’s at the sheet’s voltage', () => {
    expect(hybridPi(card, KELVIN, { vbe: 0.7, vbc: -5 }).cmu).toBeCloseTo(3e-12, 15);
  });

  test('capacitances that leave no transit time make no card', () => {
    expect(cardFromSheet({ ...sheet, cib: [1e-9, 0.5] })).toBeNull();
  });
});

describe('headroom, against a transient run of the simulator', () => {
  /** Peak-to-peak collector voltage where the output's crest stands short of the sine's by 1 dB. */
  test.each([
    ['by current', 100, 4700, 'current'],
    ['by voltage', 100e3, 6800, 'voltage'],
  ] as const)('%s, load %d Ω, collector %d Ω', async (_, load, feed, limit) => {
    const parts = {
      ...typicalMicrophoneAmplifier,
      feed,
      outputC: 100e-6,
      bridge: 1e-3,
      inputC: 100e-6,
    };
    const card = cardAt(cards.audio, KELVIN);
    const bias = biasPoint(biasOf(parts, 12), card, KELVIN);
    const circuit = microphoneAmplifier(parts, hybridPi(card, KELVIN, bias));
    const figures = stageFigures(circuit, closeStage(circuit, [1, load]), 1000, bias, 0.3);
    if (!figures) throw new Error('no answer');
    expect(figures.limit).toBe(limit);
    const gain = Math.hypot(figures.voltageGain.re, figures.voltageGain.im);
    const crest = async (share: number) => {
      const drive = (share * figures.most) / gain;
      const run = await simulateReal(
        [
          modelLine('q', cards.audio),
          'vcc s 0 12',
          `vin i 0 sin(0 ${value(drive)} 1k)`,
          `ci i b ${value(parts.inputC)}`,
          `ru s b ${value(parts.upper)}`,
          `rl b 0 ${value(parts.lower)}`,
          'q1 c b e q',
          `re e f ${value(parts.emitter)}`,
          `rb f 0 ${value(parts.bridged)}`,
          `cb f 0 ${value(parts.bridge)}`,
          `rc s c ${value(parts.feed)}`,
          `co c o ${value(parts.outputC)}`,
          `ro o 0 ${value(load)}`,
        ].join('\n'),
        '.tran 5u 3m 0 5u',
        '',
      );
      const time = run.vector('time');
      const last = run.vector('v(o)').filter((_, i) => (time[i] ?? 0) > 1.9e-3);
      return {
        up: Math.max(...last) / (share * figures.most),
        down: -Math.min(...last) / (share * figures.most),
      };
    };
    // Well inside, both crests are there. Beyond, one is cut: current ends the upper, voltage the lower.
    const inside = await crest(0.5);
    expect(Math.min(inside.up, inside.down)).toBeGreaterThan(0.85);
    const beyond = await crest(1.6);
    const cut = limit === 'current' ? beyond.up : beyond.down;
    expect(cut * 1.6).toBeGreaterThan(0.85);
    expect(cut * 1.6).toBeLessThan(1.15);
  });
});

describe('what a stage becomes at its edges', () => {
  test('without capacitances it is the closed form of Gray & Meyer', () => {
    const card = { ...cards.switching, tf: 0, cje: 0, cjc: 0, vaf: Number.POSITIVE_INFINITY };
    const parts = {
      ...typicalPostFilterAmplifier,
      upper: 1e9,
      lower: 1e9,
      bridge: 1,
      feedbackC: 1,
      inputC: 1,
      outputC: 1,
      choke: 1e3,
    };
    const current = 10e-3;
    const vt = 0.025852 * (300.15 / 300);
    const gm = current / vt;
    const pi = { rb: 15, gpi: gm / card.bf, cpi: 0, gm, cmu: 0, go: 0, cec: 0 };
    const circuit = postFilterAmplifier(parts, pi);
    const two = closeStage(circuit, [200, 200]);
    const bias = { collectorCurrent: current, vce: 8 };
    const ours = stageFigures(circuit, two, 1e6, bias, 0.3);
    // The closed form counts with the emitter current at 300 K.
    const emitter = ((current * (card.bf + 1)) / card.bf / 300.15) * 300;
    const closed = feedbackAmplifier({
      current: emitter,
      emitter: parts.emitter,
      feedback: parts.feedback,
      load: 200,
      source: 200,
      beta: card.bf,
      hfe: card.bf,
      base: 15,
    });
    expect(Math.abs((ours?.voltageGain.re ?? 0) / closed.voltageGain - 1)).toBeLessThan(1e-4);
    expect(Math.abs((ours?.input.re ?? 0) / closed.input - 1)).toBeLessThan(1e-4);
    expect(Math.abs((ours?.output.re ?? 0) / closed.output - 1)).toBeLessThan(1e-4);
  });

  test('the spread holds the middle, and a stiff divider holds it closer', () => {
    const stiff = biasOf(typicalMicrophoneAmplifier, 12);
    const limp = { ...stiff, upper: stiff.upper * 10, lower: stiff.lower * 10 };
    const ratio = (resistors: typeof stiff) => {
      const at = (bf: number, kelvin: number) =>
        biasPoint(resistors, cardAt({ ...cards.audio, bf }, kelvin), kelvin).collectorCurrent;
      const [least, most] = [at(110, 273), at(450, 323)];
      // Gain and warmth both raise the current: the other two corners lie between.
      for (const corner of [at(110, 323), at(450, 273)]) {
        expect(corner).toBeGreaterThan(least);
        expect(corner).toBeLessThan(most);
      }
      const middle = biasPoint(resistors, cards.audio, KELVIN).collectorCurrent;
      expect(least).toBeLessThan(middle);
      expect(most).toBeGreaterThan(middle);
      return most / least;
    };
    expect(ratio(stiff)).toBeLessThan(1.25);
    expect(ratio(limp)).toBeGreaterThan(1.5);
  });

  test('stability over the band: shunt feedback raises the least K, the band is whole', () => {
    const least = (feedback: number) => {
      const parts = { ...typicalPostFilterAmplifier, feedback };
      const card = cardAt(cards.switching, KELVIN);
      const bias = biasPoint(biasOf(parts, 12), card, KELVIN);
      const circuit = postFilterAmplifier(parts, hybridPi(card, KELVIN, bias));
      const two = closeStage(circuit, [50, 50]);
      const scan = stabilityScan(two, 1e5, 300e6, 31);
      expect(scan.frequency[0]).toBe(1e5);
      expect(scan.frequency[30]).toBeCloseTo(300e6, 0);
      expect(scan.lowest).toBe(scan.k.reduce((a, b) => Math.min(a, b)));
      return scan.lowest;
    };
    expect(least(1500)).toBeGreaterThan(least(Number.POSITIVE_INFINITY) + 0.5);
  });
});
