import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CompareAnswer } from '../../src/engine/errands/compare/compareAnswer.ts';
import { compareErrand } from '../../src/engine/errands/compare/errand.ts';
import { finish } from '../../src/engine/errands/drive.ts';
import { pick, seenBy } from '../../src/engine/errands/pick.ts';
import { type Rig, withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt, type Worked } from '../../src/engine/rig/worked.ts';
import { filterFields } from '../../src/engine/stages/filter/fields.ts';

const first = examples[0] as Rig;
const worked = (rig: Rig) => createEvaluator(stages)(rig);
const said = (rig: Rig, texts: Readonly<Record<string, string>>) =>
  Object.entries(texts).reduce((now, [path, text]) => withEntry(now, path, text), rig);

function compared(rig: Rig): CompareAnswer {
  const seen = seenBy(compareErrand, pick(worked(rig), compareErrand));
  if (seen === null) throw new Error('the errand waits');
  const answer = finish(compareErrand.work(seen, { index: 0, of: 1 }));
  return compareErrand.merge([answer]);
}

/** Where the sheets have what the table of the comparison has. */
const paths = {
  width3: 'filter.width3',
  width6: 'filter.width6',
  width60: 'filter.width60',
  shape: 'filter.shape',
  loss: 'filter.loss',
  ripple: 'filter.rippleFound',
  delayVariation: 'filter.delayVariation',
  ends: 'filter.ends',
  carrier: 'carrier.frequency',
  carrierDown: 'carrier.attenuation',
  audioLow6: 'carrier.audioLow6',
  audioHigh6: 'carrier.audioHigh6',
  suppression300: 'carrier.suppression300',
  suppression1k: 'carrier.suppression1k',
  suppressionWorst: 'carrier.suppressionWorst',
} as const;

function expectAsOnSheets(answer: CompareAnswer, place: number, sheets: Worked) {
  const figures = answer.filters[place]?.found?.figures;
  for (const [key, path] of Object.entries(paths)) {
    expect(figures?.[key as keyof typeof paths] ?? null, path).toEqual(valueAt(sheets, path));
  }
}

const families = Object.keys(filterFields.inputs.family.options);

describe('filters side by side', () => {
  test.each(examples.map((rig) => [rig.title, rig] as const))(
    'A is the present filter: %s',
    (_, rig) => {
      const answer = compared(rig);
      expect(answer.filters).toHaveLength(1);
      expectAsOnSheets(answer, 0, worked(rig));
    },
  );

  test.each(families)('an alternative is what the sheets make of the same words: %s', (family) => {
    const b = { 'compare.b': 'yes', 'compare.bFamily': family, 'compare.bCrystals': '5' };
    const answer = compared(said(first, b));
    const own = worked(said(first, { 'filter.family': family, 'filter.crystals': '5' }));
    expect(answer.filters.map(({ variant }) => variant.name)).toEqual(['A', 'B']);
    expectAsOnSheets(answer, 1, own);
    expectAsOnSheets(answer, 0, worked(first));
  });

  test('the same for any crystals, width, ripple and form', () => {
    const some = fc.record({
      crystals: fc.integer({ min: 2, max: 9 }).map(String),
      bandwidth: fc.integer({ min: 500, max: 3200 }).map(String),
      family: fc.constantFrom(...families),
      form: fc.constantFrom('series', 'shunt'),
      ripple: fc.constantFrom('0.01', '0.1', '1'),
    });
    fc.assert(
      fc.property(some, ({ crystals, bandwidth, family, form, ripple }) => {
        const answer = compared(
          said(first, {
            'compare.d': 'yes',
            'compare.dCrystals': crystals,
            'compare.dBandwidth': bandwidth,
            'compare.dFamily': family,
            'compare.dForm': form,
            'compare.dRipple': ripple,
          }),
        );
        const own = worked(
          said(first, {
            'filter.crystals': crystals,
            'filter.bandwidth': bandwidth,
            'filter.family': family,
            'filter.form': form,
            'filter.ripple': ripple,
          }),
        );
        if (valueAt(own, 'filter.ladder') === null) {
          expect(answer.filters[1]?.found).toBeNull();
          expect(answer.filters[1]?.says.length).toBeGreaterThan(0);
        } else {
          expectAsOnSheets(answer, 1, own);
        }
      }),
      { numRuns: 12 },
    );
  });

  test('blank is as the present filter, and said to be no alternative', () => {
    const rig = said(first, { 'compare.c': 'yes' });
    const answer = compared(rig);
    const [a, c] = answer.filters;
    expect(c?.found?.figures).toEqual(a?.found?.figures);
    const { problems } = worked(rig).stages.compare ?? { problems: [] };
    expect(problems.map(({ field, weight }) => [field, weight])).toEqual([
      ['compare.cFamily', 'warns'],
    ]);
  });

  test('an alternative works between its own ends, whatever the present one has', () => {
    const rig = said(first, { 'filter.sourceResistance': '50', 'compare.b': 'yes' });
    const [a, b] = compared(rig).filters;
    expect(a?.found?.figures.loss).toBeGreaterThan((b?.found?.figures.loss ?? 0) + 0.5);
    expectAsOnSheets(compared(rig), 1, worked(first));
  });

  test('what cannot be made says why', () => {
    const rig = said(first, { 'compare.b': 'yes', 'compare.bBandwidth': '20k' });
    const [, b] = compared(rig).filters;
    expect(b?.says.join()).toMatch(/Out of reach/);
  });

  test('parts are counted as soldered', () => {
    // Six equal-capacitor crystals: five junctions of one value, two end meshes aligned by another.
    const equal = said(first, { 'compare.b': 'yes', 'compare.bFamily': 'equal' });
    const figures = compared(equal).filters[1]?.found?.figures;
    expect(figures?.crystals).toBe(6);
    expect(figures?.capacitors).toBe(7);
    expect(figures?.values).toBeLessThanOrEqual(2);
    const doubled = said(first, { 'compare.b': 'yes', 'compare.bFamily': 'doubled' });
    expect(compared(doubled).filters[1]?.found?.figures.crystals).toBe(8);
  });

  test('steps settle at one, and a wider filter is quicker', () => {
    const rig = said(first, { 'compare.b': 'yes', 'compare.bBandwidth': '1200' });
    const [a, b] = compared(rig).filters;
    for (const one of [a, b]) expect(one?.found?.step.level.at(-1)).toBeCloseTo(1, 2);
    // Twice the width, half the time: nearly, since losses weigh more on the narrow one.
    const ratio = (b?.found?.figures.rise ?? 0) / (a?.found?.figures.rise ?? 1);
    expect(ratio).toBeGreaterThan(1.75);
    expect(ratio).toBeLessThan(2.25);
  });
});
