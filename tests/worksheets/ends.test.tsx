import { cleanup, fireEvent } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { useBench } from '../../src/store/store.ts';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

const text = (path: string) => useBench.getState().rig.entries[path]?.text;
const ripple = (container: HTMLElement) => {
  const row = [...container.querySelectorAll('tr')].find((tr) =>
    tr.textContent?.startsWith('Ripple'),
  );
  return [...(row?.querySelectorAll('td') ?? [])].map((td) =>
    Number.parseFloat(td.textContent ?? ''),
  );
};

test('the lead says what the filter wants and what it sees', () => {
  const { lead } = openSheet('ends');
  expect(lead()).toMatch(/wants 4\d\d\sΩ at its input/);
});

test('dragging both ends brings ripple and takes it away; one drag is one step back', () => {
  const { container, getByRole } = openSheet('ends');
  expect(ripple(container)[2]).toBe(0);
  const slider = getByRole('slider', { name: /^Fed from/ });
  // Towards a quarter of the right resistance: 5 dB of ripple, lossless.
  for (const at of [100, 70, 40]) fireEvent.change(slider, { target: { value: `${at}` } });
  expect(ripple(container)[2]).toBeGreaterThan(3);
  expect(ripple(container)[0]).toBe(0);
  expect(text('filter.loadResistance')).toBe(text('filter.sourceResistance'));
  expect(slider.getAttribute('aria-valuetext')).toMatch(/Ω$/);
  useBench.getState().undo();
  expect(text('filter.sourceResistance')).toBeUndefined();
  // Its middle catches: then nothing is typed, and what was designed for holds.
  fireEvent.change(slider, { target: { value: '40' } });
  fireEvent.change(slider, { target: { value: '120' } });
  expect(text('filter.sourceResistance')).toBeUndefined();
});

test('apart, one end moves alone, and the field beside it says the same', async () => {
  const { container, getByRole, user } = openSheet('ends');
  await user.click(getByRole('button', { name: 'Move both together' }));
  fireEvent.change(getByRole('slider', { name: /^Works into/ }), { target: { value: '200' } });
  expect(text('filter.sourceResistance')).toBeUndefined();
  const field = container.querySelector<HTMLInputElement>('[id="drag:filter.loadResistance"]');
  expect(field?.value).toBe(text('filter.loadResistance'));
});

test('a wrong entry keeps its text and says the range', async () => {
  const { user, field, beside } = openSheet('ends');
  await user.type(field('ends.port'), '3');
  expect(field('ends.port').value).toBe('3');
  expect(beside('ends.port')).toMatch(/between 10\sΩ/);
});

test('matched by a resistor the loss at that end is counted', async () => {
  const { container, field, user } = openSheet('ends');
  await user.selectOptions(field('ends.sourceBy'), 'resistor');
  const loss = container.querySelector('[id="ends.sourceLoss"] .figure__value')?.textContent ?? '';
  expect(Number.parseFloat(loss)).toBeGreaterThan(2);
});
