import { cleanup, screen } from '@testing-library/react';
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

test('keeps a wrong entry and says the range beside it', async () => {
  const { user, field, beside } = openSheet('path');
  await user.type(field('path.sunspots'), '900');
  expect(field('path.sunspots').value).toBe('900');
  expect(beside('path.sunspots')).toMatch(/between 0 and 250/);
});
