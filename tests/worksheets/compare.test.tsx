import { cleanup, screen, waitFor, within } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

const soon = { timeout: 10_000 };
const table = () => screen.getByRole('table', { name: 'Figures of each filter' });
const line = (label: string) =>
  within(table()).getByRole('row', { name: new RegExp(`^${label}`) }).textContent ?? '';

describe('Compare', () => {
  test('the present filter stands alone at first', async () => {
    openSheet('compare');
    await screen.findByText('Responses', {}, soon);
    expect(within(table()).getAllByRole('columnheader')).toHaveLength(2);
    expect(line('Width at −3 dB')).toMatch(/2400\sHz/);
  });

  test('three to begin with, in four columns', async () => {
    const { user, container } = openSheet('compare');
    await user.click(screen.getByRole('button', { name: /Set a flat one/ }));
    await waitFor(() => expect(within(table()).getAllByRole('columnheader')).toHaveLength(5), soon);
    expect(line('Crystals')).toMatch(/6.*6.*6.*8/);
    expect(container.textContent).toMatch(/A tone switched on/);
    // The rig itself is as before.
    expect(container.querySelector('.sentence')?.textContent).toMatch(/from 6 crystals/);
  });

  test('an alternative that is none is said to be so, until it differs', async () => {
    const { user, container } = openSheet('compare');
    await user.click(
      within(screen.getByRole('group', { name: /Filter B/ })).getByRole('radio', {
        name: 'beside it',
      }),
    );
    expect(container.textContent).toMatch(/Filter B is as the present one in everything/);
    await user.selectOptions(
      screen.getByRole('combobox', { name: /Family/ }),
      'Bessel, flattest delay',
    );
    expect(container.textContent).not.toMatch(/as the present one in everything/);
    await waitFor(() => expect(line('Overshoot')).toMatch(/\d.*%.*\d.*%/), soon);
  });
});
