import { describe, expect, test } from 'vitest';
import { finish } from '../../src/engine/errands/drive.ts';
import { pick, seenBy } from '../../src/engine/errands/pick.ts';
import { suggestErrand } from '../../src/engine/errands/suggest/errand.ts';
import type { Offered, SuggestAnswer } from '../../src/engine/errands/suggest/suggestAnswer.ts';
import { type Rig, withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';

const worked = (rig: Rig) => createEvaluator(stages)(rig);
const said = (rig: Rig, texts: Readonly<Record<string, string>>) =>
  Object.entries(texts).reduce((now, [path, text]) => withEntry(now, path, text), rig);

function suggested(rig: Rig): SuggestAnswer {
  const seen = seenBy(suggestErrand, pick(worked(rig), suggestErrand));
  if (seen === null) throw new Error('the errand waits');
  return suggestErrand.merge([
    finish(suggestErrand.work(seen, { index: 0, of: 1 })),
  ]) as SuggestAnswer;
}

const first = examples[0] as Rig;

/** Rigs that ask for different things: load, power, rule, parts, order. */
const rigs: readonly (readonly [string, Rig])[] = [
  ...examples.map((rig) => [rig.title, rig] as const),
  ['fewest windings', said(first, { 'suggest.prefer': 'coils' })],
  ['least loss', said(first, { 'suggest.prefer': 'loss', 'suggest.mostParts': '15' })],
  ['five watts from 13.8 V', said(first, { 'plan.pep': '5', 'plan.supply': '13.8' })],
  ['a quarter of a watt', said(first, { 'plan.pep': '0.25' })],
  [
    'transformer only, E12',
    said(first, { 'suggest.matchBy': 'transformer', 'output.fitted': 'e12' }),
  ],
  ['pi only, CEPT', said(first, { 'suggest.matchBy': 'pi', 'plan.rules': 'cept' })],
  [
    'a rule of one’s own',
    said(first, { 'plan.rules': 'own', 'plan.ownRules': 'above 14 MHz 62 dB' }),
  ],
  ['too few parts', said(first, { 'suggest.mostParts': '3' })],
  [
    'a margin that nobody has',
    said(first, { 'output.marginWanted': '20', 'suggest.mostParts': '5' }),
  ],
  [
    'no filters at all',
    said(first, {
      'suggest.halfWave': 'no',
      'suggest.prototypes': 'no',
      'suggest.traps': 'no',
      'suggest.elliptic': 'no',
    }),
  ],
];

describe.each(rigs)('%s', (_, rig) => {
  const answer = suggested(rig);
  const every = [...answer.ranked, ...answer.nearest, ...answer.help.map(({ offered }) => offered)];

  test('the rig with the offered entries has the very figures of the offer', () => {
    for (const offer of every) {
      const taken = worked(said(rig, offer.entries));
      const at = (key: string) => valueAt(taken, `output.${key}`) as number;
      const near = (ours: number, sheet: number) =>
        expect(Math.abs(ours - sheet)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(sheet)));
      near(offer.margin ?? 0, at('worstMargin') ?? 0);
      near(offer.loss, at('loss'));
      near(offer.returnLoss, at('returnLoss'));
      near(offer.power, at('pepAntenna'));
      expect(offer.order).toBe(at('worstOrder'));
    }
  });

  test('what passes keeps all that is asked; what does not, does not', () => {
    const { results } = { results: worked(rig) };
    const asked = (path: string) => valueAt(results, path) as number;
    const passes = (one: Offered) =>
      (one.margin ?? 99) >= asked('output.marginWanted') &&
      one.returnLoss >= asked('suggest.fitLeast') &&
      one.loss <= asked('suggest.lossMost') &&
      one.power >= asked('suggest.powerLeast') * asked('plan.pep') &&
      one.parts <= asked('suggest.mostParts');
    for (const one of answer.ranked) {
      expect(one.lacks).toEqual([]);
      expect(passes(one)).toBe(true);
    }
    for (const one of answer.nearest) expect(passes(one)).toBe(false);
    expect(answer.ranked.length === 0).toBe(answer.passed === 0);
    for (const { offered } of answer.help) expect(offered.lacks).toHaveLength(1);
  });

  test('the first is truly the least in the order asked for', () => {
    const prefer = valueAt(worked(rig), 'suggest.prefer') as 'parts' | 'coils' | 'loss';
    const windings = (one: Offered) => one.coils + one.transformers;
    const key = (one: Offered): readonly number[] => {
      if (prefer === 'parts') return [one.parts, windings(one), one.loss];
      if (prefer === 'coils') return [windings(one), one.parts, one.loss];
      return [one.loss, one.parts, windings(one)];
    };
    const [best, ...others] = answer.ranked;
    if (best === undefined) return;
    for (const other of others) {
      const [a, b] = [key(best), key(other)];
      const k = a.findIndex((value, i) => value !== b[i]);
      if (k >= 0) expect(a[k]).toBeLessThan(b[k] ?? 0);
    }
    // Counted again from what the sheet lists.
    const elements = valueAt(worked(said(rig, best.entries)), 'output.elements') as readonly {
      readonly l: number | null;
      readonly fittedC: number | null;
    }[];
    const counted = elements.reduce(
      (sum, { l, fittedC }) => sum + (l === null ? 0 : 1) + (fittedC === null ? 0 : 1),
      best.transformers,
    );
    expect(best.parts).toBe(counted);
  });
});

test('giving up parts gives back the suggestion that more parts would have', () => {
  const few = suggested(said(first, { 'suggest.mostParts': '4' }));
  const help = few.help.find(({ offered }) => offered.lacks[0] === 'parts');
  const most = String(help?.offered.parts);
  const more = suggested(said(first, { 'suggest.mostParts': most }));
  expect(more.ranked[0]?.words).toBe(help?.offered.words);
});

test('taking what is offered sends for nothing anew', () => {
  const answer = suggested(first);
  const entries = answer.ranked[0]?.entries ?? {};
  const before = pick(worked(first), suggestErrand);
  const after = pick(worked(said(first, entries)), suggestErrand);
  expect(after).toEqual(before);
});
