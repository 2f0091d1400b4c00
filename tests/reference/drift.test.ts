import { describe, expect, test } from 'vitest';
import {
  dividerCapacitance,
  type OscillatorCrystal,
  pulledFrequency,
} from '../../src/engine/circuit/colpitts.ts';
import { withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';
import { quartzShift } from '../../src/engine/stages/drift/warmth.ts';

const evaluate = createEvaluator(stages);

function worked(texts: Readonly<Record<string, string>> = {}) {
  let rig = examples[0];
  if (!rig) throw new Error('no example');
  for (const [path, text] of Object.entries(texts)) rig = withEntry(rig, path, text);
  const answer = evaluate(rig);
  return (path: string) => valueAt(answer, path) as number;
}

/** The oscillator solved anew at another temperature: nothing of the stage's own sums in it. */
function solved(at: (path: string) => number, warmer: number): number {
  const aC = at('drift.capacitors');
  const aL = at('drift.coil');
  const ta = at('plan.ambient');
  // Transconductance at the same current goes as 1/T; so does Cπ + Ccb.
  const cpi = ((at('carrier.cpi') + at('carrier.ccb')) * ta) / (ta + warmer) - at('carrier.ccb');
  const c = dividerCapacitance({
    c1: at('carrier.c1') * (1 + aC * warmer) + cpi,
    c2: at('carrier.c2') * (1 + aC * warmer),
    base: at('carrier.ccb') + at('carrier.stray'),
  });
  const n = at('carrier.together');
  const x: OscillatorCrystal = {
    fs: at('carrier.crystalFs') * (1 + at('drift.slope') * warmer),
    lm: at('carrier.crystalLm') / n,
    rm: at('carrier.crystalRm') / n,
    c0: at('carrier.crystalC0') * n,
  };
  const series = at('carrier.seriesC');
  const load = series === null ? c : 1 / (1 / c + 1 / (series * (1 + aC * warmer)));
  const coil = at('carrier.seriesL');
  return pulledFrequency(x, load, coil === null ? 0 : coil * (1 + aL * warmer)) ?? Number.NaN;
}

describe('hertz a degree', () => {
  // The closed form against the oscillator solved a degree up and a degree down.
  test.each([
    ['lower sideband, a capacitor in series', {}],
    ['upper sideband, a coil in series', { 'plan.sideband': 'upper' }],
    ['poor capacitors', { 'drift.capacitors': '-750' }],
    ['two crystals', { 'carrier.crystals': '2', 'carrier.standing': '3m' }],
  ])('%s', (_, texts) => {
    const at = worked(texts);
    const byHand = (solved(at, 1) - solved(at, -1)) / 2;
    expect(at('drift.perDegree')).toBeCloseTo(byHand, 2);
  });
});

// AT cut: slope and cubic cancel at √(a/c) from the middle: −0.1 ppm/K and 1.05e-4 ppm/K³ at 30.9 K
// (Bechmann's curves; the cubic term from memory).
test('the AT cut turns where its slope and its cubic cancel', () => {
  expect(quartzShift(-0.1e-6, Math.sqrt(0.1e-6 / 1.05e-10))).toBeCloseTo(0, 12);
  expect(1e6 * quartzShift(-0.1e-6, 15)).toBeCloseTo(-1.146, 3);
});

test('the ends of the trimmer put the spread right', () => {
  const at = worked({ 'drift.spread': '80', 'drift.partSpread': '3%' });
  for (const [way, path] of [
    [-1, 'drift.leastC'],
    [1, 'drift.mostC'],
  ] as const) {
    const c = at('carrier.divider') * (1 - way * 0.03);
    const x: OscillatorCrystal = {
      fs: at('carrier.crystalFs') + way * 80,
      lm: at('carrier.crystalLm'),
      rm: at('carrier.crystalRm'),
      c0: at('carrier.crystalC0'),
    };
    const f = pulledFrequency(x, 1 / (1 / c + 1 / at(path)));
    expect(f).toBeCloseTo(at('carrier.frequency'), 0);
  }
});

test('out of reach, the ways out are tried', () => {
  const at = worked({
    'carrier.rule': 'frequency',
    'carrier.frequencyGiven': '7.212M',
  });
  const ways = at('drift.waysOut') as unknown as { way: string; reaches: string }[];
  expect(ways.length).toBeGreaterThan(3);
  expect(ways[0]?.way).toContain('bag');
  expect(ways.every(({ reaches }) => ['yes', 'no', 'unknown'].includes(reaches))).toBe(true);
});
