import { cleanup, fireEvent, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

describe('Filter', () => {
  test('what the parts cost stands in one table: rounded one by one, and chosen together', async () => {
    const { user } = openSheet('filter');
    await user.selectOptions(screen.getByRole('combobox', { name: /Capacitors/ }), 'E12, single');
    const table = screen.getByRole('table', { name: 'What the parts cost' });
    expect(table.textContent).toMatch(
      /exact design.*each value rounded by itself.*chosen together/,
    );
    // One of the series fits in no place better than as itself: IEC 60063.
    const couplings = screen.getByRole('table', { name: /Coupling capacitors/ });
    expect(couplings.textContent).toMatch(/(47|56|68)\spF/);
  });

  test('owned capacitors are counted, and what is missing is named', async () => {
    const { user, field, container } = openSheet('filter');
    await user.selectOptions(
      screen.getByRole('combobox', { name: /Capacitors/ }),
      'Only what I own',
    );
    fireEvent.change(field('filter.owned'), { target: { value: '47p 9, 68p 9, 180p 4' } });
    const stock = screen.getByRole('table', { name: 'What is used up' });
    expect(stock.querySelectorAll('tbody tr')).toHaveLength(3);
    fireEvent.change(field('filter.owned'), { target: { value: '47p 2, lots' } });
    expect(container.textContent).toMatch(/9 capacitors are needed, 2 are listed/);
    expect(container.textContent).toMatch(/“lots” is not understood/);
  });

  test('a crystal that the bag does not have is named', () => {
    const { field, container } = openSheet('filter');
    fireEvent.change(field('filter.chosen'), { target: { value: '1 2 3 nowhere' } });
    expect(container.textContent).toMatch(/“nowhere” is not in the bag|no bag to choose from/);
  });

  test('leakage gives the stopband a floor', async () => {
    const { user, field, container } = openSheet('filter');
    expect(container.textContent).not.toMatch(/Floor of the stopband/);
    await user.type(field('filter.leakageDb'), '70');
    await user.tab();
    expect(container.textContent).toMatch(/Floor of the stopband.*68\sdB/);
    await user.type(field('filter.leakage'), '5f');
    await user.tab();
    expect(container.textContent).toMatch(/Leakage is given twice/);
  });
});
