import { describe, expect, test } from 'vitest';
import { emptyRig } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { dimensionsOff, reckon } from '../../src/engine/rig/reckon.ts';
import { unfold, workingCount } from '../../src/engine/rig/unfold.ts';
import { bag } from '../../src/engine/stages/bag/stage.ts';

/** Bags of every kind the stage knows: one and two humps, with and without figures, spoiled lines. */
const bags: readonly (readonly [string, string])[] = [
  ['one crystal', '7198612'],
  ['two, alike', '7198612\n7198612'],
  ['odd number, with figures', 'a;7198612;30;21;4\nb;7198590;30,5;22;4,1\nc;7198700;29,9;;4,2'],
  [
    'two humps, a stranger and a broken line',
    [...Array(9).keys()]
      .map((i) => `${i}\t${7_198_000 + 7 * i}\n${i}b\t${7_198_600 + 9 * i}`)
      .concat('s\t7372800', 'x\tbroken', '0\t7198001')
      .join('\n'),
  ],
  ['all alike, many', Array(12).fill('7.198612M').join('\n')],
];

describe.each(bags)('%s', (_, text) => {
  const rig = { ...emptyRig('bag'), entries: { 'bag.crystals': { text } } };
  const worked = createEvaluator([bag])(rig);

  test('W2, W3 workings meet the figures and their units', () => {
    for (const key of Object.keys(bag.workings)) {
      for (let i = 0; i < workingCount(worked, bag, key); i += 1) {
        const unfolded = unfold(worked, bag, key, i);
        if (!unfolded) continue;
        const reckoned = reckon(unfolded);
        if (reckoned === null) continue;
        if (typeof unfolded.value === 'number') {
          const off = Math.abs(Number(reckoned.value) - unfolded.value);
          expect(off, `${key} ${i}`).toBeLessThanOrEqual(1e-9 * Math.abs(unfolded.value));
        } else expect(reckoned.value, `${key} ${i}`).toBe(unfolded.value);
        expect(dimensionsOff(unfolded), `${key} ${i}`).toBeNull();
      }
    }
  });

  test('no line is dropped, and no figure is NaN', () => {
    const rows = worked.stages.bag?.results.rows as readonly unknown[];
    expect(rows).toHaveLength(text.split('\n').length);
    expect(JSON.stringify(worked.stages.bag?.results)).not.toContain('NaN');
  });
});

test('what the spoiled bag says', () => {
  const [, text = ''] = bags[3] ?? [];
  const worked = createEvaluator([bag])({
    ...emptyRig('bag'),
    entries: { 'bag.crystals': { text } },
  });
  const { results, problems } = worked.stages.bag ?? { results: {}, problems: [] };
  expect(results).toMatchObject({ number: 19, aside: 2, humps: 'two' });
  const { rows: told } = results as Readonly<Record<string, unknown>>;
  const rows = told as readonly { label: string; note: string }[];
  expect(rows.find(({ label }) => label === 's')?.note).toContain('set aside');
  expect(rows.at(-1)?.note).toContain('stands already');
  expect(problems[0]?.says).toBe('2 lines of the list are set aside; the table says why.');
});

test('a blank list says nothing and stops nothing', () => {
  const worked = createEvaluator([bag])(emptyRig('bag'));
  expect(worked.stages.bag?.problems).toEqual([]);
  expect(worked.stages.bag?.results.number).toBeNull();
});
