import { describe, expect, test } from 'vitest';
import type { ChooseAnswer } from '../../src/engine/errands/choose/answer.ts';
import { chooseErrand } from '../../src/engine/errands/choose/errand.ts';
import { finish } from '../../src/engine/errands/drive.ts';
import { pick, seenBy } from '../../src/engine/errands/pick.ts';
import type { Rig } from '../../src/engine/rig/document.ts';
import { withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';

const say = (rig: Rig, texts: Readonly<Record<string, string>>) =>
  Object.entries(texts).reduce((now, [path, text]) => withEntry(now, path, text), rig);

/** Chooses, takes the choice, and answers both. */
function taken(rig: Rig) {
  const evaluate = createEvaluator(stages);
  const before = pick(evaluate(rig), chooseErrand);
  const seen = seenBy(chooseErrand, before);
  const { selection, why } = finish(chooseErrand.work(seen, { index: 0, of: 1 })) as ChooseAnswer;
  if (!selection) throw new Error(why ?? 'nothing chosen');
  const worked = evaluate(
    say(rig, {
      'filter.chosen': selection.chosen.labels.join(' '),
      'carrier.chosen': selection.carrier?.labels.join(' ') ?? '',
    }),
  );
  const at = (path: string) => valueAt(worked, path);
  return { selection, at, before, after: pick(worked, chooseErrand) };
}

const withBag = examples.filter((rig) => 'bag.crystals' in rig.entries);

test('at least three examples have a bag to choose from', () => {
  expect(withBag.length).toBeGreaterThanOrEqual(3);
});

describe.each(withBag.map((rig) => [rig.title, rig] as const))('%s', (_, rig) => {
  const { selection, at, before, after } = taken(rig);
  const { chosen, closest, carrier, left, heldBack } = selection;

  test('what was offered is what the Filter sheet says once it is taken', () => {
    expect(at('filter.width3')).toBe(chosen.width);
    expect(at('filter.loss')).toBe(chosen.loss);
    expect(at('filter.rippleFound')).toBeLessThanOrEqual(chosen.ripple);
    expect(chosen.ripple).toBeLessThanOrEqual(closest.ripple);
    expect((at('filter.places') as { label: string }[]).map(({ label }) => label)).toEqual(
      chosen.labels,
    );
  });

  test('the answer does not depend on what is chosen already', () => {
    expect(after.map((one, i) => Object.is(one, before[i]))).not.toContain(false);
  });

  test('each crystal is used once, and none is forgotten', () => {
    const all = [...chosen.labels, ...(carrier?.labels ?? []), ...left];
    expect(new Set(all).size).toBe(all.length);
    expect(all).toHaveLength(at('bag.number') as number);
    for (const label of heldBack) expect(chosen.labels).not.toContain(label);
  });

  // Every other crystal that is left is tried by the Carrier sheet itself.
  test('no crystal that is left would need less pulling for the carrier', () => {
    if (!carrier) throw new Error('no carrier');
    expect(Math.abs((at('carrier.frequency') as number) - carrier.frequency)).toBeLessThan(0.01);
    expect(carrier.reaches).toBe(at('carrier.seriesC') !== null || at('carrier.seriesL') !== null);
    const evaluate = createEvaluator(stages);
    const filter = { 'filter.chosen': chosen.labels.join(' ') };
    for (const label of left) {
      const worked = evaluate(say(rig, { ...filter, 'carrier.chosen': label }));
      const bare = valueAt(worked, 'carrier.bare') as number;
      const pulls = valueAt(worked, 'carrier.loadCapacitance') !== null;
      if (pulls || !carrier.reaches) {
        const pull = Math.abs(carrier.frequency - bare);
        expect(pull, label).toBeGreaterThanOrEqual(Math.abs(carrier.pull) - 1e-6);
      }
    }
  });
});

test('a doubled end takes two crystals of the bag', () => {
  const [rig] = examples;
  if (!rig) throw new Error('no example');
  const { selection, at } = taken(say(rig, { 'filter.family': 'doubled' }));
  expect(selection.chosen.labels).toHaveLength((at('filter.places') as unknown[]).length);
  expect(selection.chosen.labels.length).toBeGreaterThan(6);
  expect(selection.chosen.ripple).toBeLessThanOrEqual(selection.closest.ripple);
});

test('two carrier crystals side by side, and crystals to ground', () => {
  const [rig] = examples;
  if (!rig) throw new Error('no example');
  const two = taken(say(rig, { 'carrier.crystals': '2' })).selection.carrier;
  expect(two?.labels).toHaveLength(2);
  const { selection } = taken(say(rig, { 'filter.form': 'shunt', 'filter.aligning': 'each' }));
  expect(selection.chosen.ripple).toBeLessThanOrEqual(selection.closest.ripple);
});
