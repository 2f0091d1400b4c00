import { cleanup, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

describe('Plan', () => {
  test('shows the frequency to design for, and a change of power moves the voltage', async () => {
    const { user, field, container } = openSheet('plan');
    expect(container.textContent).toContain('7.20000');
    await user.clear(field('plan.pep'));
    await user.type(field('plan.pep'), '8');
    // P = Vpp²/(8R): 8 W in 50 Ω is 56.6 V peak to peak.
    expect(container.textContent).toMatch(/56\.6\s*V/);
  });

  test('keeps a wrong entry and says the range beside it', async () => {
    const { user, field, beside } = openSheet('plan');
    await user.clear(field('plan.supply'));
    await user.type(field('plan.supply'), '230');
    expect(field('plan.supply').value).toBe('230');
    expect(beside('plan.supply')).toMatch(/between 3\sV and 60\sV/);
  });

  test('shows what the example is meant to show, and keeps notes', async () => {
    const { user, container } = openSheet('plan');
    const notes = screen.getByLabelText<HTMLTextAreaElement>('Notes on this rig');
    expect(notes.value).toMatch(/^Invented example/);
    await user.clear(notes);
    await user.type(notes, 'mine');
    expect(notes.value).toBe('mine');
    expect(container.querySelector('.sentence')).not.toBeNull();
  });

  test('arrow keys step a value', async () => {
    const { user, field } = openSheet('plan');
    field('plan.supply').focus();
    await user.keyboard('{ArrowUp}');
    expect(field('plan.supply').value).toMatch(/^13/);
  });
});

describe('Quartz', () => {
  test('works out Cm from fs and Lm', () => {
    // Closed form: 1/((2π·7.2 MHz)²·30 mH) = 16.29 fF.
    const { lead } = openSheet('quartz');
    expect(lead()).toMatch(/16\.29\s*fF/);
  });

  test('says which of contradictory figures cannot be', async () => {
    const { user, field, container } = openSheet('quartz');
    await user.type(field('quartz.cmGiven'), '30f');
    expect(container.textContent).toMatch(/fs and Lm make Cm 16\.29\sfF/);
  });
});

describe('Filter', () => {
  test('shows its width, and what the last change moved', async () => {
    const { user, field, container } = openSheet('filter');
    expect(container.textContent).toMatch(/2400\s*Hz/);
    await user.clear(field('filter.bandwidth'));
    await user.type(field('filter.bandwidth'), '2,2k');
    const moved = screen.getByRole('region', { name: /moved/i });
    expect(moved.textContent).toMatch(/Bandwidth wanted: 2,2k/);
    expect(moved.textContent).toMatch(/End resistance|Width/);
  });

  test('keeps a wrong entry', async () => {
    const { user, field, beside } = openSheet('filter');
    await user.clear(field('filter.bandwidth'));
    await user.type(field('filter.bandwidth'), '5 pF');
    expect(field('filter.bandwidth').value).toBe('5 pF');
    expect(beside('filter.bandwidth')).toMatch(/capacitance/);
  });
});

describe('Carrier', () => {
  test('a deeper carrier moves farther from the voice', async () => {
    const { user, field, lead } = openSheet('carrier');
    const before = lead();
    await user.type(field('carrier.attenuationGiven'), '30');
    expect(lead()).not.toBe(before);
  });
});
