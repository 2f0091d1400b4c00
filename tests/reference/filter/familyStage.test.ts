import { describe, expect, test } from 'vitest';
import { withEntry } from '../../../src/engine/rig/document.ts';
import { createEvaluator } from '../../../src/engine/rig/evaluate.ts';
import { examples } from '../../../src/engine/rig/examples.ts';
import { dimensionsOff, reckon } from '../../../src/engine/rig/reckon.ts';
import { stages } from '../../../src/engine/rig/stages.ts';
import { unfold, workingCount } from '../../../src/engine/rig/unfold.ts';
import { valueAt, type Worked } from '../../../src/engine/rig/worked.ts';
import { filterFields } from '../../../src/engine/stages/filter/fields.ts';

const upToFilter = stages.slice(0, stages.findIndex(({ fields }) => fields.key === 'filter') + 1);
const filter = upToFilter.at(-1);

/** The forty-metre example with other entries. */
function work(entries: Readonly<Record<string, string>>): Worked {
  const [example] = examples;
  if (!example) throw new Error('no example');
  const rig = Object.entries(entries).reduce(
    (one, [path, text]) => withEntry(one, path, text),
    example,
  );
  return createEvaluator(upToFilter)(rig);
}

const figure = (worked: Worked, key: string) => valueAt(worked, `filter.${key}`) as number;

/** Laws W2 and W3, for every working of the filter. */
function expectWorkings(worked: Worked): number {
  if (!filter) throw new Error('no filter');
  let checked = 0;
  for (const key of Object.keys(filter.workings)) {
    const count = workingCount(worked, filter, key);
    for (const index of new Set([0, 1, Math.floor(count / 2), count - 1])) {
      if (index < 0 || index >= count) continue;
      const unfolded = unfold(worked, filter, key, index);
      if (!unfolded || 'rule' in unfolded.working) continue;
      const { working, value } = unfolded;
      const reckoned = reckon(unfolded);
      const at = `${key}[${index}]`;
      checked += 1;
      if ('left' in working) {
        const [left, right] = [Number(reckoned?.value), reckoned?.right ?? Number.NaN];
        const off = Math.abs(left - right);
        expect(off, at).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(left), Math.abs(right)));
      } else if (typeof value === 'number') {
        const off = Math.abs(Number(reckoned?.value) - value);
        expect(off, `${at} ${reckoned?.value} ${value}`).toBeLessThanOrEqual(
          1e-9 * Math.max(Math.abs(value), 1e-300),
        );
      } else expect(reckoned?.value, at).toBe(value);
      expect(dimensionsOff(unfolded), at).toBeNull();
    }
  }
  return checked;
}

const bag = ['1 7200010', '2 7200040', '3 7199980', '4 7200000', '5 7200065', '6 7200020'].join(
  '\n',
);

describe.each(Object.keys(filterFields.inputs.family.options))('%s', (family) => {
  test.each(['series', 'shunt'])(
    '%s: as wide as asked for, and every figure can be followed',
    (form) => {
      const worked = work({
        'filter.family': family,
        'filter.form': form,
        'filter.bandwidth': '1200',
        'filter.crystals': '4',
        'filter.stray': '1p',
      });
      if (family === 'doubled' && form === 'shunt') {
        expect(figure(worked, 'width3')).toBeNull();
        expect(worked.stages.filter?.problems[0]?.field).toBe('filter.family');
        return;
      }
      expect(Math.abs(figure(worked, 'width3') / 1200 - 1)).toBeLessThan(1e-6);
      expect(expectWorkings(worked)).toBeGreaterThan(60);
      // Symmetrical families want the same at both ends.
      const unlike = ['bessel', 'linear005', 'linear05', 'gaussian'].includes(family);
      expect(Math.abs(figure(worked, 'ends') / figure(worked, 'endsLoad') - 1) > 0.1).toBe(unlike);
      expect(figure(worked, 'crystalsNeeded')).toBe(family === 'doubled' ? 6 : 4);
    },
  );
});

describe.each([
  ['series', 'chebyshev', '6'],
  ['shunt', 'butterworth', '6'],
  ['series', 'doubled', '4'],
])('a bag of crystals in %s, %s', (form, family, crystals) => {
  test.each(['design', 'each'])('aligned %s: every figure can be followed', (aligning) => {
    const worked = work({
      'bag.crystals': bag,
      'filter.chosen': '1 2 3 4 5 6',
      'filter.form': form,
      'filter.family': family,
      'filter.crystals': crystals,
      'filter.aligning': aligning,
      'filter.fitted': 'e12Pairs',
    });
    expect(worked.stages.filter?.problems.filter(({ weight }) => weight === 'stops')).toEqual([]);
    expect(expectWorkings(worked)).toBeGreaterThan(60);
    expect(Math.abs(figure(worked, 'width3') / 2400 - 1)).toBeLessThan(0.1);
  });
});

test('what lies across crystals to ground can be given', () => {
  const worked = work({ 'filter.form': 'shunt', 'filter.across': '2p' });
  expect(figure(worked, 'acrossFitted')).toBe(2e-12);
  expect(expectWorkings(worked)).toBeGreaterThan(60);
});

// Source: engineering practice: crystals to ground stop at fs, below the passband; from memory.
test('the shunt form’s steep skirt is the lower one', () => {
  const series = work({});
  const shunt = work({ 'filter.form': 'shunt' });
  const lower = (worked: Worked) => figure(worked, 'low3') - figure(worked, 'low60');
  const upper = (worked: Worked) => figure(worked, 'high60') - figure(worked, 'high3');
  expect(lower(shunt)).toBeLessThan(upper(shunt));
  expect(upper(series)).toBeLessThan(lower(series));
});

test('each end is judged by what the filter wants there', () => {
  // Bessel with three crystals wants ends that differ by a factor of 6.5.
  const wants = work({ 'filter.family': 'bessel', 'filter.crystals': '3' });
  const [source, load] = [figure(wants, 'ends'), figure(wants, 'endsLoad')];
  expect(load / source).toBeGreaterThan(5);
  const given = work({
    'filter.family': 'bessel',
    'filter.crystals': '3',
    'filter.sourceResistance': String(source),
    'filter.loadResistance': String(source),
  });
  const fields = given.stages.filter?.problems.map(({ field }) => field);
  expect(fields).toContain('filter.loadResistance');
  expect(fields).not.toContain('filter.sourceResistance');
});

test('crystals to ground with nothing across them: couplings of a fraction of a picofarad are warned of', () => {
  const bare = work({ 'filter.form': 'shunt', 'filter.across': '0' });
  expect(bare.stages.filter?.problems[0]?.field).toBe('filter.across');
  const helped = work({ 'filter.form': 'shunt' });
  expect(helped.stages.filter?.problems).toEqual([]);
});
