import { act, cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { exampleBags } from '../../src/engine/rig/exampleBags.ts';
import { useBench } from '../../src/store/store.ts';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

const paste = (text: string) =>
  act(() => useBench.getState().say('bag.crystals', 'The crystals', text, 'measured'));

function openBag(text: string = exampleBags.forty) {
  const page = openSheet('bag');
  paste(text);
  const table = () => screen.getByLabelText('The bag');
  const labels = () =>
    within(table())
      .getAllByRole('rowheader')
      .map((cell) => cell.textContent);
  return { ...page, table, labels };
}

const textOf = (path: string) => useBench.getState().rig.entries[path]?.text;
const soon = { timeout: 20_000 };

describe('Bag', () => {
  test('what is pasted is counted, told and drawn', async () => {
    const { lead, field } = openBag('');
    expect(lead()).toMatch(/No crystals yet/);
    fireEvent.change(field('bag.crystals'), { target: { value: exampleBags.eighty } });
    await waitFor(() => expect(lead()).toMatch(/^22 .*crystals within/));
    expect(lead()).toMatch(/two humps/);
    expect(screen.getByText('The lot as it is')).toBeTruthy();
  });

  test('the table is sorted by any column, upwards and downwards', async () => {
    const { user, table, labels } = openBag('2\t7200300\n10\t7200100\n1\t7200200');
    await waitFor(() => expect(labels()).toEqual(['10', '1', '2']));
    await user.click(within(table()).getByRole('button', { name: /^Label/ }));
    expect(labels()).toEqual(['1', '2', '10']);
    await user.click(within(table()).getByRole('button', { name: /^Label/ }));
    expect(labels()).toEqual(['10', '2', '1']);
    expect(table().querySelector('[aria-sort="descending"]')?.textContent).toContain('Label');
  });

  test('a line is written anew in its place, or taken out', async () => {
    const { user, table } = openBag('a\t7200300\nb\tbroken\nc\t7200200');
    expect(await within(table()).findByText(/“broken” is not understood/)).toBeTruthy();
    await user.click(within(table()).getByRole('button', { name: 'b' }));
    const line = screen.getByLabelText('Line 2 of the list');
    await user.clear(line);
    await user.type(line, 'b 7200250{Enter}');
    expect(textOf('bag.crystals')).toBe('a\t7200300\nb 7200250\nc\t7200200');
    await user.click(within(table()).getByRole('button', { name: 'c' }));
    await user.click(screen.getByRole('button', { name: 'Take out' }));
    expect(textOf('bag.crystals')).toBe('a\t7200300\nb 7200250');
  });

  test('a choice is offered beside the closest neighbours, and taken with one word', async () => {
    const { user, table } = openBag();
    await user.click(screen.getByRole('button', { name: 'Choose for me' }));
    const take = await screen.findByRole('button', { name: 'Take this choice' }, soon);
    expect(screen.getByText('Closest, by frequency')).toBeTruthy();
    await user.click(take);
    const chosen = textOf('filter.chosen')?.split(' ') ?? [];
    expect(new Set(chosen).size).toBe(6);
    expect(chosen).not.toContain(textOf('carrier.chosen'));
    expect(screen.getByText(/This choice is taken/)).toBeTruthy();
    await waitFor(() => expect(within(table()).getByText('carrier')).toBeTruthy());
    expect(within(table()).getByText('filter, 1')).toBeTruthy();
    // One step back undoes both.
    act(() => useBench.getState().undo());
    expect(textOf('filter.chosen')).toBeUndefined();
    expect(textOf('carrier.chosen')).toBeUndefined();
  }, 30_000);

  test('a bag that is too small is told so', async () => {
    const { user } = openBag('7200300\n7200200');
    await user.click(screen.getByRole('button', { name: 'Choose for me' }));
    expect(
      await screen.findByText('The filter needs 6 crystals; the bag has 2 that count.', {}, soon),
    ).toBeTruthy();
  });

  test('how many to buy is worked out without a bag', async () => {
    const { field, user } = openBag('');
    expect(
      await screen.findByText('Chance of the set, by the size of the lot', {}, soon),
    ).toBeTruthy();
    await user.type(field('bag.window'), '20');
    await waitFor(() => expect(screen.getByText(/6 crystals within 20/)).toBeTruthy(), soon);
  });
});
