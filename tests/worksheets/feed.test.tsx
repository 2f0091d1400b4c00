import { cleanup, screen, within } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

test('a line that is said is worked out; a loss that is known stands as typed', async () => {
  const { user, field, container, lead } = openSheet('feed');
  await user.selectOptions(field('feed.line'), 'known');
  await user.clear(field('feed.knownLoss'));
  await user.type(field('feed.knownLoss'), '2.5');
  expect(container.querySelector('.figure--main')?.textContent).toMatch(/2\.50\sdB/);
  expect(lead()).toContain('as typed');
  await user.selectOptions(field('feed.line'), 'rg213');
  expect(lead()).toContain('RG-213');
});

test('the same length of other lines: as a table, and as bars, best first', () => {
  openSheet('feed');
  const table = screen.getByRole('table', { name: 'The same length of other lines' });
  expect(within(table).getAllByRole('rowheader')).toHaveLength(7);
  const bars = within(screen.getByRole('list', { name: /best line first/ })).getAllByRole(
    'listitem',
  );
  const shares = bars.map((bar) => Number(/(\d+)\s%/.exec(bar.textContent ?? '')?.[1]));
  expect(shares).toEqual([...shares].sort((a, b) => b - a));
  expect(bars.some((bar) => bar.textContent?.includes('the line in use'))).toBe(true);
});

test('an SWR under 1 stays and is said to be wrong', async () => {
  const { user, field, beside } = openSheet('feed');
  await user.type(field('feed.swr'), '0.5');
  expect(field('feed.swr').value).toBe('0.5');
  expect(beside('feed.swr')).toMatch(/between 1 and 100/);
});
