import { cleanup, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

const rows = () =>
  within(
    screen.getByRole('table', { name: 'Power and final: the worst over all angles' }),
  ).getAllByRole('row');

describe('Mismatch', () => {
  test('the example at its typical ratio', () => {
    const { container } = openSheet('mismatch');
    expect(container.querySelector('.sentence')?.textContent).toMatch(/throws back 11\.1\s% of/);
    expect(rows()).toHaveLength(5);
    expect(container.textContent).toMatch(/What the collector sees/);
  });

  test('another ratio has a row of its own and moves the sentence', async () => {
    const { user, container } = openSheet('mismatch');
    const [swr] = screen.getAllByRole('textbox', { name: /Standing-wave ratio/ });
    if (!swr) throw new Error('no field');
    await user.clear(swr);
    await user.type(swr, '2.5');
    expect(container.querySelector('.sentence')?.textContent).toMatch(
      /throws back 18\.4\s% \(was 11\.1\s%\)/,
    );
    expect(rows()).toHaveLength(6);
  });

  test('a ratio out of reach keeps its text and says the range', async () => {
    const { user, container } = openSheet('mismatch');
    const [swr] = screen.getAllByRole('textbox', { name: /Standing-wave ratio/ });
    if (!swr) throw new Error('no field');
    await user.clear(swr);
    await user.type(swr, '0.5');
    expect((swr as HTMLInputElement).value).toBe('0.5');
    expect(container.textContent).toMatch(/between 1 and 3/);
  });
});
