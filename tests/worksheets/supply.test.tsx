import { cleanup } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

test('half the battery, half the hours', async () => {
  const { user, field, container } = openSheet('supply');
  const hours = () =>
    Number(
      /([\d.]+)\s*h/.exec(
        container.querySelector('.figure--main')?.textContent?.replace('how', '') ?? '',
      )?.[1],
    );
  const before = hours();
  expect(before).toBeGreaterThan(1);
  // Below the printed current the hours go with the capacity, to the two digits shown.
  await user.type(field('supply.capacity'), '14 Ah');
  expect(Math.abs(hours() / before - 2)).toBeLessThan(0.1);
});

test('thin long leads are found too thin, and the sheet says which would do', async () => {
  const { user, field, container } = openSheet('supply');
  expect(container.textContent).toContain('thick enough');
  await user.selectOptions(field('supply.lead'), 'mm05');
  await user.type(field('supply.leadLength'), '20');
  expect(container.textContent).toContain('too thin');
  expect(container.textContent).toMatch(/The leads lose/);
});

test('keeps a wrong entry and says the range beside it', async () => {
  const { user, field, beside } = openSheet('supply');
  await user.type(field('supply.talking'), '120');
  expect(field('supply.talking').value).toBe('120');
  expect(beside('supply.talking')).toMatch(/between 0\s%? ?and 100\s%/);
});
