import { cleanup, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import { hasLeaf, leavesOf } from '../../src/engine/rig/leaves.ts';
import { openSheet } from './sheet.tsx';

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

test('prints the leaf, or its sheet with every leaf, and goes back to the one', async () => {
  const { container } = openSheet('loudness');
  const seen: number[] = [];
  window.print = () => {
    seen.push(container.querySelectorAll('.sheet').length);
  };
  const menu = container.querySelector('.menu-print select') as HTMLSelectElement;
  const user = userEvent.setup();
  await user.selectOptions(menu, 'leaf');
  expect(seen).toEqual([1]);
  await user.selectOptions(menu, 'sheet');
  await waitFor(() => expect(seen).toHaveLength(2));
  expect(seen[1]).toBe(leavesOf('receive').filter((leaf) => hasLeaf(leaf, 'direct')).length);
  await waitFor(() => expect(container.querySelectorAll('.sheet')).toHaveLength(1));
});
