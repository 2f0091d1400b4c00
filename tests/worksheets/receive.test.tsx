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
  const { user, field, beside } = openSheet('loudness');
  await user.type(field('receive.speaker'), '1');
  expect(field('receive.speaker').value).toBe('1');
  expect(beside('receive.speaker')).toMatch(/between 3\sΩ and 2\skΩ/);
});

test('the rise of noise that was heard says what it means', async () => {
  const { user, field, container } = openSheet('receive');
  await user.type(field('bench.noiseRiseRead'), '20');
  // Residential, lower decile 5.3 dB (ITU-R P.372): twenty decibels are far less than 42.
  expect(container.textContent).toMatch(/22\sdB less than the place should bring/);
  expect(container.textContent).toMatch(/Noise figure that would fit/);
});

test('twice the distance from the speaker is six decibels less, headphones ask for their own figure', async () => {
  const { user, field, container } = openSheet('loudness');
  const loudest = () =>
    Number(
      /comes up with ([\d.]+)/.exec(container.querySelector('.sentence')?.textContent ?? '')?.[1],
    );
  await user.type(field('receive.speakerDistance'), '0.5');
  const near = loudest();
  await user.clear(field('receive.speakerDistance'));
  await user.type(field('receive.speakerDistance'), '1');
  expect(near - loudest()).toBeCloseTo(6, 0);
  await user.click(container.querySelector('[name="receive.ears"][value="phones"]') as Element);
  expect(field('receive.phonesSensitivity').value).toBe('');
});

test('a broadcaster that is too strong is said, and what helps', async () => {
  const { user, field, container } = openSheet('strong');
  expect(container.querySelector('.figure--main')?.textContent).toContain('Do no harm');
  await user.type(field('strong.level'), '10');
  expect(container.querySelector('.figure--main')?.textContent).toContain('Do harm');
  expect(container.textContent).toMatch(/takes more than a decibel off weak stations/);
});
