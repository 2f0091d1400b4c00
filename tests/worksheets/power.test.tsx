import { cleanup, screen, waitFor, within } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

const soon = { timeout: 20_000 };

const cells = (name: RegExp) =>
  within(screen.getByRole('table', { name: 'With one tone at full power' }))
    .getByRole('row', { name })
    .textContent?.replace(/\s/g, ' ');

describe('Final', () => {
  // Source: (12 − 1)²/(2·2·10^0.05) = 26.96 Ω; at 13.8 V 36.5 Ω; by hand.
  test('the load by hand follows the supply', async () => {
    const { user, lead } = openSheet('power');
    expect(lead()).toMatch(/wants 27\.0\sΩ at its collector/);
    const volts = screen.getByRole('textbox', { name: /Supply/ });
    await user.clear(volts);
    await user.type(volts, '13.8');
    expect(lead()).toMatch(/wants 36\.5\sΩ/);
  });

  test('push-pull asks how well it cancels, and has four times the load', async () => {
    const { user, lead, field } = openSheet('power');
    await user.click(screen.getByRole('radio', { name: 'Push-pull' }));
    expect(field('transmit.evenBalance')).toBeTruthy();
    expect(lead()).toMatch(/wants 108\sΩ/);
  });

  test('one alone is not several', async () => {
    const { user, container } = openSheet('power');
    await user.click(screen.getByRole('radio', { name: 'Several side by side' }));
    expect(container.textContent).toContain('nobody to share with');
  });

  test('keeps a wrong entry and says the range beside it', async () => {
    const { user, field, beside } = openSheet('power');
    await user.type(field('transmit.sink'), '900');
    expect(field('transmit.sink').value).toBe('900');
    expect(beside('transmit.sink')).toMatch(/between 0\.1/);
  });

  test('the model answers by itself and stands beside the hand', async () => {
    openSheet('power');
    expect(cells(/^Harmonic 2/)).toMatch(/^Harmonic 2 at the antenna−\d+ dBc–$/);
    await waitFor(() => expect(cells(/^Harmonic 2/)).toMatch(/−\d+ dBc−\d+ dBc$/), soon);
    expect(cells(/^Power at the antenna/)).toMatch(/2\.00 W$/);
    expect(screen.getByRole('table', { name: /Two equal tones/ })).toBeTruthy();
    expect(screen.getByText('Phase over power')).toBeTruthy();
  }, 30_000);
});
