import { cleanup, screen, waitFor, within } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

const soon = { timeout: 10_000 };
const passing = () => screen.getByRole('table', { name: 'Those that pass, the simplest first' });

describe('Which network', () => {
  test('the simplest that passes is offered, and taken with one word', async () => {
    const { user, container } = openSheet('suggest');
    const take = await screen.findByRole('button', { name: 'Take this network' }, soon);
    const words = container.querySelector('.suggested')?.textContent ?? '';
    expect(words).toMatch(/transformer|pi match|straight on/);
    expect(within(passing()).getAllByRole('row').length).toBeGreaterThan(2);
    await user.click(take);
    expect(container.textContent).toMatch(/This is the network of the rig/);
    // Taking it changes nothing that it was found from.
    expect(container.textContent).not.toMatch(/From before the last change/);
  });

  test('too few parts: what would help is said', async () => {
    const { user, container } = openSheet('suggest');
    await screen.findAllByText('Parts against margin', {}, soon);
    const [most] = screen.getAllByRole('textbox', { name: /Most parts/ });
    if (!most) throw new Error('no field');
    await user.clear(most);
    await user.type(most, '3');
    await waitFor(() => expect(container.textContent).toMatch(/None of the \d+ networks/), soon);
    expect(container.textContent).toMatch(/With \d parts allowed/);
    expect(screen.getByRole('table', { name: 'Those allowed that fail by least' })).toBeTruthy();
  });
});
