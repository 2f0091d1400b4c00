import { describe, expect, test } from 'vitest';
import { standingWaveLoss } from '../../../src/engine/circuit/standingWaveLoss.ts';
import { type FeedLineKey, feedLines, matchedLoss } from '../../../src/engine/data/feedLines.ts';
import { type Rig, withEntry } from '../../../src/engine/rig/document.ts';
import { createEvaluator } from '../../../src/engine/rig/evaluate.ts';
import { examples } from '../../../src/engine/rig/examples.ts';
import { stages } from '../../../src/engine/rig/stages.ts';
import { valueAt } from '../../../src/engine/rig/worked.ts';
import { simulateAc } from '../simulator.ts';

const FEET_100 = 30.48;

describe('matched loss of the usual lines', () => {
  // Handbook table of lines, ARRL Antenna Book, dB over 100 ft, as printed (from memory).
  // Half of the last printed digit is allowed.
  test.each<[FeedLineKey, number, number, number]>([
    ['rg174', 1e6, 1.9, 0.05],
    ['rg174', 10e6, 3.3, 0.05],
    ['rg174', 100e6, 8.4, 0.05],
    ['rg58', 1e6, 0.4, 0.05],
    ['rg58', 10e6, 1.4, 0.05],
    ['rg58', 100e6, 4.9, 0.05],
    ['rg8x', 1e6, 0.3, 0.05],
    ['rg8x', 10e6, 0.9, 0.05],
    ['rg213', 1e6, 0.2, 0.05],
    ['rg213', 10e6, 0.6, 0.05],
    ['ribbon', 1e6, 0.1, 0.05],
    ['ribbon', 10e6, 0.3, 0.05],
    ['window', 1e6, 0.02, 0.005],
    ['window', 10e6, 0.08, 0.005],
    ['open', 1e6, 0.02, 0.005],
    ['open', 10e6, 0.06, 0.005],
  ])('%s at %d Hz: %d dB over 100 ft', (key, frequency, printed, half) => {
    const loss = matchedLoss(feedLines[key], FEET_100, frequency);
    expect(Math.abs(loss - printed)).toBeLessThanOrEqual(half);
  });

  // Makers' data sheets at 30 MHz, dB over 100 m (from memory); makers differ by a tenth.
  test.each<[FeedLineKey, number]>([
    ['rg58', 8.2],
    ['rg213', 3.6],
    ['rg174', 16.5],
  ])('%s at 30 MHz: about %d dB over 100 m', (key, sheet) => {
    expect(matchedLoss(feedLines[key], 100, 30e6) / sheet).toBeGreaterThan(0.9);
    expect(matchedLoss(feedLines[key], 100, 30e6) / sheet).toBeLessThan(1.1);
  });

  test('loss goes by the length', () => {
    const { rg58 } = feedLines;
    expect(matchedLoss(rg58, 0, 7e6)).toBe(0);
    expect(matchedLoss(rg58, 60, 7e6)).toBeCloseTo(2 * matchedLoss(rg58, 30, 7e6), 12);
  });
});

describe('standing waves', () => {
  test('a matched line loses what it loses, and shows no SWR', () => {
    expect(standingWaveLoss(1.7, 1).total).toBeCloseTo(1.7, 12);
    expect(standingWaveLoss(1.7, 1).swrIn).toBeCloseTo(1, 12);
  });

  test('a line without loss adds none, and hides nothing', () => {
    expect(standingWaveLoss(0, 5).total).toBeCloseTo(0, 12);
    expect(standingWaveLoss(0, 5).swrIn).toBeCloseTo(5, 12);
  });

  // An attenuator of 3 dB before an open end has a return loss of 6 dB: SWR 3.0 (closed form,
  // the usual table of return loss: 6.02 dB is SWR 3.00). SWR 1e6 stands in for the open end.
  test('three decibels of line make an open end look like SWR 3', () => {
    expect(standingWaveLoss(10 * Math.log10(2), 1e6).swrIn).toBeCloseTo(3, 4);
  });

  // The simulator's own answer: a ladder of 400 sections of a line without distortion
  // (R/L = G/C, so that its impedance is real), one wavelength and a bit, load S·Z0 or Z0/S.
  // The sections are finite: some 1e-4 of the loss.
  test.each([
    { matched: 1, swr: 3, load: 150 },
    { matched: 2.5, swr: 6, load: 300 },
    { matched: 0.6, swr: 10, load: 5 },
    { matched: 4, swr: 2, load: 25 },
  ])('$matched dB of line, SWR $swr, as the simulator has it', async ({ matched, swr, load }) => {
    const line = await simulated(matched, load);
    const { total, swrIn } = standingWaveLoss(matched, swr);
    expect(Math.abs(total - line.loss)).toBeLessThan(0.002);
    expect(Math.abs(swrIn / line.swr - 1)).toBeLessThan(0.002);
  });
});

const Z0 = 50;
const FREQUENCY = 10e6;
const SECTIONS = 400;

/** Loss and SWR at the input of a line, from node voltages and the source's current. */
async function simulated(matched: number, load: number) {
  const nepers = matched / (20 * Math.log10(Math.E));
  const turn = (2.3 * Math.PI) / SECTIONS;
  const w = 2 * Math.PI * FREQUENCY;
  const [r, l] = [(nepers / SECTIONS) * Z0, (turn * Z0) / w];
  const [g, c] = [nepers / SECTIONS / Z0, turn / Z0 / w];
  const cards = ['V1 a0 0 DC 0 AC 1'];
  for (let i = 0; i < SECTIONS; i += 1) {
    cards.push(`R${i}a a${i} b${i} ${r / 2}`, `L${i}a b${i} c${i} ${l / 2}`);
    cards.push(`R${i}g c${i} 0 ${1 / g}`, `C${i} c${i} 0 ${c}`);
    cards.push(`L${i}b c${i} d${i} ${l / 2}`, `R${i}b d${i} a${i + 1} ${r / 2}`);
  }
  cards.push(`RL a${SECTIONS} 0 ${load}`);
  const run = await simulateAc(cards.join('\n'), { from: FREQUENCY, to: FREQUENCY, points: 1 });
  const out = run.node(`a${SECTIONS}`);
  const source = run.current('v1');
  const [ire, iim] = [-(source.re[0] ?? 0), -(source.im[0] ?? 0)];
  const taken = ((out.re[0] ?? 0) ** 2 + (out.im[0] ?? 0) ** 2) / load;
  // Z = 1 V over the current; its reflection in Z0 gives the SWR.
  const square = ire ** 2 + iim ** 2;
  const [zre, zim] = [ire / square, -iim / square];
  const rho = Math.hypot(zre - Z0, zim) / Math.hypot(zre + Z0, zim);
  return { loss: 10 * Math.log10(ire / taken), swr: (1 + rho) / (1 - rho) };
}

const evaluate = createEvaluator(stages);

/** Values of the first example with some entries. */
function valuesOf(texts: Readonly<Record<string, string>>) {
  let rig = examples[0] as Rig;
  for (const [path, text] of Object.entries(texts)) rig = withEntry(rig, path, text);
  const worked = evaluate(rig);
  return (path: string) => valueAt(worked, path);
}

describe('in the rig', () => {
  test('a loss that is known counts as typed, whatever length stands there', () => {
    const value = valuesOf({ 'feed.line': 'known', 'feed.knownLoss': '1.3', 'feed.length': '200' });
    expect(value('feed.loss')).toBe(1.3);
    expect(value('path.lineHere')).toBe(1.3);
  });

  test('a line that is said takes the place of the typed loss, at either end', () => {
    const here = valuesOf({ 'feed.line': 'rg58', 'feed.length': '30.48', 'feed.knownLoss': '5' });
    expect(here('path.lineHere')).toBe(here('feed.loss'));
    const there = valuesOf({ 'feed.farLine': 'rg213', 'feed.farKnownLoss': '5' });
    expect(there('path.lineThere')).toBe(there('feed.farLoss'));
  });

  // A quarter-wave vertical over good radials has near 36 Ω (closed form, from memory) and the
  // radials' 14 Ω: 50 Ω, and no standing wave on coax.
  test('the SWR follows from the antenna’s resistance', () => {
    const value = valuesOf({
      'antenna.kind': 'vertical',
      'antenna.groundLoss': '14',
      'feed.line': 'rg58',
    });
    expect(value('feed.swrUsed')).toBeGreaterThanOrEqual(1);
    expect(value('feed.swrUsed')).toBeLessThan(1.05);
  });

  test('an SWR typed on coax says nothing of a line of another impedance', () => {
    const value = valuesOf({ 'antenna.kind': 'known', 'feed.line': 'rg58', 'feed.swr': '3' });
    const rows = value('feed.kinds') as readonly { line: string; swr: number | null }[];
    const swr = Object.fromEntries(rows.map((row) => [row.line, row.swr]));
    expect(swr.rg213).toBe(3);
    expect(swr.window).toBeNull();
  });
});
