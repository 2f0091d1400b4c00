import { cleanup, screen, waitFor, within } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { useBench } from '../../src/store/store.ts';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

const sum = () =>
  screen.findByRole('table', { name: 'Its sum, line by line' }, { timeout: 15_000 });

test('a cell shows its sum, another is a step away, and Path takes it over', async () => {
  const { user, container } = openSheet('day');
  const table = await sum();
  expect(within(table).getAllByRole('rowheader').at(-1)?.textContent).toBe('Signal over noise');
  const says = () => container.querySelector('.cell__says')?.textContent ?? '';
  expect(says()).toMatch(/^At 18\sh over 502\skm: S/);
  await user.click(screen.getByText('an hour earlier'));
  expect(says()).toMatch(/^At 17\sh over 502\skm/);
  const snr = /Signal over noise.*?(−?[\d.]+)\sdB/.exec((await sum()).textContent ?? '')?.[1];
  await user.click(screen.getByText('Take it to Path'));
  await waitFor(() => expect(useBench.getState().sheet).toBe('path'));
  expect(useBench.getState().rig.entries['path.hour']?.text).toBe('17h');
  // The distance is taken over to three digits: the ratio moves by a hundredth at most.
  const shown = /Signal over noise.*?(−?[\d.]+)\sdB/.exec(
    screen.getByRole('table', { name: 'The sum, line by line' }).textContent ?? '',
  )?.[1];
  expect(Number(shown)).toBeCloseTo(Number(snr), 0);
}, 30_000);

test('S-units or speech, each with its own signs', async () => {
  const { user, container } = openSheet('day');
  await sum();
  expect(container.textContent).toContain('S7 to S9');
  await user.click(screen.getByLabelText('Speech'));
  expect(container.textContent).toContain('just usable');
  expect(container.textContent).not.toContain('S7 to S9');
}, 30_000);
