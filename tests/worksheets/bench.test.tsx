import { cleanup } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { useBench } from '../../src/store/store.ts';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

const row = (input: HTMLElement) => input.closest('tr')?.textContent ?? '';

test('a reading typed in its row is marked as measured, and judged', async () => {
  const { user, field } = openSheet('bench');
  expect(row(field('bench.supplyRead'))).toMatch(/12\.0\sV/);
  // 4 % sag and a meter of 2 % allow ±0.54 V around 12 V.
  await user.type(field('bench.supplyRead'), '11.6');
  expect(row(field('bench.supplyRead'))).toMatch(/holds/);
  expect(useBench.getState().rig.entries['bench.supplyRead']).toEqual({
    text: '11.6',
    from: 'measured',
  });
  await user.clear(field('bench.supplyRead'));
  await user.type(field('bench.supplyRead'), '9');
  expect(row(field('bench.supplyRead'))).toMatch(/fails.*off by −3/);
});

test('a harmonic breaks the rule, with or without its minus sign', async () => {
  const { user, field, container } = openSheet('bench');
  await user.type(field('bench.harmonic2'), '30');
  expect(row(field('bench.harmonic2'))).toMatch(/taken as −30\.0\sdBc.*fails\s*rule/);
  expect(container.querySelector('.figure--main')?.textContent).toContain('fails');
});

test('more power out than goes in is called a wrong reading', async () => {
  const { user, field, container } = openSheet('bench');
  await user.type(field('bench.finalRead'), '0.3');
  await user.type(field('bench.outputRead'), '60 Vpp');
  // 60 V peak to peak in 50 Ω is 9 W; 12 V times 0.3 A is 3.6 W.
  expect(container.textContent).toMatch(/250\s%/);
  expect(container.textContent).toContain('the power is read wrong');
});

test('a reading not understood keeps its text and says why; the others stand', async () => {
  const { user, field, beside } = openSheet('bench');
  await user.type(field('bench.supplyRead'), '11.6');
  await user.type(field('bench.lossRead'), 'two');
  expect(field('bench.lossRead').value).toBe('two');
  expect(beside('bench.lossRead')).toMatch(/not understood/);
  expect(row(field('bench.supplyRead'))).toMatch(/holds/);
});
