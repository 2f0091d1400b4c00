import { cleanup } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

test('says what sets the limit, and the place moves it', async () => {
  const { user, field, container } = openSheet('receive');
  const main = () => container.querySelector('.figure--main')?.textContent;
  expect(main()).toContain('The band');
  // ITU-R P.372: galactic noise at 7.2 MHz is 52 − 23·lg 7.2 = 32.3 dB over thermal noise.
  await user.selectOptions(field('receive.place'), 'galactic');
  expect(container.textContent).toMatch(/32\.3\sdB/);
  expect(main()).toMatch(/The band|Both/);
});

test('more loss in front is more noise figure, decibel for decibel', async () => {
  const { user, field, lead } = openSheet('receive');
  const figure = () => Number(/noise figure of ([\d.]+)/.exec(lead())?.[1]);
  const before = figure();
  await user.type(field('receive.frontLoss'), '12');
  // Friis: a passive loss at 290 K adds its decibels to the noise figure of all that follows.
  expect(figure() - before).toBeCloseTo(10, 5);
});

test('keeps a wrong entry and says the range beside it', async () => {
  const { user, field, beside } = openSheet('receive');
  await user.type(field('receive.speaker'), '1');
  expect(field('receive.speaker').value).toBe('1');
  expect(beside('receive.speaker')).toMatch(/between 3\sΩ and 2\skΩ/);
});
