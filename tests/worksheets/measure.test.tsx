import { cleanup } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { useBench } from '../../src/store/store.ts';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

async function inFixture() {
  const page = openSheet('measure');
  await page.user.click(page.getByRole('radio', { name: 'peak in a fixture' }));
  for (const [key, text] of [
    ['peak', '7199.99k'],
    ['peakLoss', '5'],
    ['width', '118'],
    ['c0Read', '4p'],
  ]) {
    await page.user.type(page.field(`measure.${key}`), text ?? '');
  }
  const cell = (path: string) => page.container.querySelector(`[id="${path}"]`)?.textContent ?? '';
  return { ...page, cell };
}

test('nothing is asked for before a way is chosen', () => {
  const { container } = openSheet('measure');
  expect(container.querySelectorAll('#sheet .field').length).toBe(0);
  expect(container.querySelector('.sentence')?.textContent).toMatch(/^Nothing has been read yet/);
});

test('readings of a peak give the crystal, its ± and the shortcut beside it', async () => {
  const { cell, field, user, container } = await inFixture();
  // By hand, C0 left out: Rm = 25(10^(5/20) − 1) = 19.5 Ω, Lm = 44.5/(2π·118) = 60.0 mH.
  expect(cell('measure.rm')).toMatch(/^19\.\d\sΩ/);
  expect(cell('measure.lm')).toMatch(/^(59|60)\.\d+\smH/);
  expect(cell('measure.lmShort')).toMatch(/^59\.9\d\smH|^60\.0\d\smH/);
  expect(cell('measure.lmError')).toMatch(/mH$/);
  expect(container.querySelector('svg.jig')?.getAttribute('aria-label')).toMatch(/pi networks/);
  const before = cell('measure.lm');
  await user.clear(field('measure.width'));
  await user.type(field('measure.width'), '236');
  expect(cell('measure.lm')).not.toBe(before);
  expect(cell('measure.lm')).toMatch(/^(29|30)\.\d+\smH/);
  expect(useBench.getState().rig.entries['measure.width']?.from).toBe('measured');
});

test('a reading that is not understood keeps its text, says so, and stops nothing else', async () => {
  const { beside, cell, field, user } = await inFixture();
  await user.clear(field('measure.width'));
  await user.type(field('measure.width'), 'wide');
  expect(field('measure.width').value).toBe('wide');
  expect(beside('measure.width')).not.toBe('');
  expect(cell('measure.lm')).toBe('');
  expect(cell('measure.c0')).toMatch(/^4\.00\spF/);
});

test('the way to find the oscillator’s capacitance changes what is asked for and drawn', async () => {
  const { container, field, getByRole, user } = openSheet('measure');
  await user.click(getByRole('radio', { name: 'oscillator shift' }));
  field('measure.feedbackUpper');
  expect(container.textContent).not.toMatch(/Cx/);
  await user.click(getByRole('radio', { name: 'from a third reading' }));
  field('measure.third');
  expect(container.textContent).toMatch(/Cx/);
});
