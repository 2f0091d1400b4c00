import { cleanup, screen, within } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

test('the report is the main figure, with the spread said plainly', () => {
  const { container } = openSheet('path');
  expect(container.querySelector('.figure--main')?.textContent).toMatch(/S-report.*S\d/);
  expect(container.textContent).toMatch(/±10\.0\sdB or more/);
});

test('in free space twice the distance costs 6 dB', async () => {
  const { user, field, container } = openSheet('path');
  await user.selectOptions(field('path.route'), 'lineOfSight');
  const loss = () => Number(/Spreading.*?([\d.]+)\sdB/.exec(container.textContent ?? '')?.[1]);
  await user.clear(field('path.distance'));
  await user.type(field('path.distance'), '5k');
  const near = loss();
  await user.clear(field('path.distance'));
  await user.type(field('path.distance'), '10k');
  // ITU-R P.525: 20·lg 2 = 6.02 dB; shown to hundredths.
  expect(loss() - near).toBeCloseTo(6.02, 1);
});

test('beyond the horizon nothing arrives, and the sheet says what would help', async () => {
  const { user, field, container } = openSheet('path');
  await user.selectOptions(field('path.route'), 'lineOfSight');
  expect(container.querySelector('.figure--main')?.textContent).toContain('nothing arrives');
  expect(screen.getByText(/beyond the radio horizon/)).toBeTruthy();
});

test('the sum is read line by line, out and back, and each figure opens its workings', async () => {
  const { user } = openSheet('path');
  const table = screen.getByRole('table', { name: 'The sum, line by line' });
  const lines = within(table)
    .getAllByRole('rowheader')
    .map((head) => head.textContent);
  expect(lines[0]).toBe('The rig’s power');
  expect(lines.slice(-2)).toEqual(['Noise there', 'Signal over noise']);
  await user.click(within(table).getAllByTitle('Show the workings')[0] as HTMLElement);
  expect(
    await screen.findByText(/All lines down to this one together/, {}, { timeout: 10_000 }),
  ).toBeTruthy();
  await user.click(screen.getByText('The way back, line by line', { selector: 'summary' }));
  expect(screen.getByRole('table', { name: 'The way back, line by line' })).toBeTruthy();
});

test('a noisier place there is heard less well there, and hears no worse', async () => {
  const { user, field, container } = openSheet('path');
  // ITU-R P.372 (second-hand): city over rural 76.8 − 67.2 = 9.6 dB; shown to tenths.
  const figure = (label: string) => {
    const found = [...container.querySelectorAll('.figure')].find((one) =>
      one.textContent?.startsWith(label),
    );
    return Number(/([−\d.]+)\sdB/.exec(found?.textContent ?? '')?.[1]?.replace('−', '-'));
  };
  const [there, here] = [
    figure('Noise from outside there'),
    figure('They stand over the noise by'),
  ];
  await user.selectOptions(field('path.farPlace'), 'city');
  expect(figure('Noise from outside there') - there).toBeCloseTo(9.6, 1);
  expect(figure('They stand over the noise by')).toBe(here);
});

test('keeps a wrong entry and says the range beside it', async () => {
  const { user, field, beside } = openSheet('path');
  await user.type(field('path.sunspots'), '900');
  expect(field('path.sunspots').value).toBe('900');
  expect(beside('path.sunspots')).toMatch(/between 0 and 250/);
});
