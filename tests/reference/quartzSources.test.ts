import { describe, expect, test } from 'vitest';
import { emptyRig } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { originAt } from '../../src/engine/rig/worked.ts';

const bag =
  'label;fs;Lm (mH);Rm;C0 (pF)\n1;9000100;14,4;20;3,9\n2;9000300;14,6;22;3,7\n3;9000200;;;';
/** A fixture of 12.5 Ω each side: peak 2.9 dB down, 375 Hz wide. */
const fixture = {
  'measure.method': 'fixture',
  'measure.peak': '8.999M',
  'measure.peakLoss': '2.9 dB',
  'measure.width': '375',
  'measure.c0Read': '3.9p',
};
/** Only the two resonances: no loss. */
const pair = {
  'measure.method': 'pair',
  'measure.series': '8.999M',
  'measure.parallel': '9.022M',
  'measure.c0Read': '3.9p',
};

const work = (texts: Readonly<Record<string, string>>) => {
  const entries = Object.fromEntries(
    Object.entries({ 'plan.marking': '9M', ...texts }).map(([path, text]) => [path, { text }]),
  );
  const early = stages.slice(0, stages.findIndex(({ fields }) => fields.key === 'quartz') + 1);
  const worked = createEvaluator(early)({ ...emptyRig('quartz'), entries });
  const { results, problems } = worked.stages.quartz ?? { results: {}, problems: [] };
  const figures = results as Readonly<Record<string, unknown>>;
  return { results: figures, problems, origin: (key: string) => originAt(worked, `quartz.${key}`) };
};

describe('what is not typed is taken from elsewhere, in a set order', () => {
  test('from the medians of the bag', () => {
    const { results, origin } = work({ 'bag.crystals': bag });
    expect(results).toMatchObject({ fs: 9000200, rm: 21 });
    expect(results.lm).toBeCloseTo(14.5e-3, 12);
    expect(results.c0).toBeCloseTo(3.8e-12, 20);
    // Resonance of Lm and Cm: closed form.
    expect((results.cm as number) * (2 * Math.PI * 9000200) ** 2 * 14.5e-3).toBeCloseTo(1, 9);
    expect(origin('fs')).toBe('measured');
    expect(results.whence).toBe('fs, Lm, Rm and C0 from the medians of the bag.');
  });

  test('a measurement that was chosen comes before the bag, figure by figure', () => {
    const { results } = work({ ...fixture, 'bag.crystals': bag });
    expect(results.fs).toBeGreaterThan(8.998e6);
    expect(results.fs).toBeLessThan(8.9995e6);
    expect(results.whence).toBe('fs, Lm, Rm and C0 measured in a fixture.');
    const some = work({ ...pair, 'bag.crystals': bag }).results;
    expect(some.rm).toBe(21);
    expect(some.whence).toBe(
      'fs, Lm and C0 measured by the pair of resonances; Rm from the medians of the bag.',
    );
    const blank = work({ ...fixture, 'measure.method': 'none', 'bag.crystals': bag });
    expect(blank.results.fs).toBe(9000200);
  });

  test('what is typed comes first, and nothing that it contradicts is taken with it', () => {
    const { results, origin } = work({ 'bag.crystals': bag, 'quartz.cmGiven': '20f' });
    expect(results.cm).toBe(20e-15);
    expect(results.lm).not.toBeCloseTo(14.5e-3, 12);
    expect(origin('cm')).toBe('typed');
    const lossy = work({ 'bag.crystals': bag, 'quartz.quGiven': '50k' });
    expect(lossy.results.rm).not.toBe(21);
    expect(lossy.results.lm).toBeCloseTo(14.5e-3, 12);
    const both = work({ 'bag.crystals': bag, 'quartz.lmGiven': '14m', 'quartz.cmGiven': '22f' });
    expect(both.results.fs).toBeCloseTo(1 / (2 * Math.PI * Math.sqrt(14e-3 * 22e-15)), 3);
    expect(both.problems.filter(({ weight }) => weight === 'stops')).toEqual([]);
  });

  test('without either it is a guess as before', () => {
    const { results, origin } = work({});
    expect(origin('cm')).toBe('typical');
    expect(results.whence).toBe(
      'fs guessed from the marking; Lm worked from the others; Rm and C0 guessed.',
    );
  });
});
