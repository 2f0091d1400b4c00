import { cleanup, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

describe('Transformers', () => {
  // N = √(4 · 27 Ω / (2π · 7.2 MHz · 68 nH)) = 5.9 turns on FT50-61 (permeability hardly changed there).
  test('says what to wind, and winds it anew on another core', async () => {
    const { user, container } = openSheet('transformers');
    expect(container.textContent).toMatch(/6 turns, then 8 turns over them, on FT50-61/);
    const core = screen.getByRole('combobox', { name: /Core of output transformer/ });
    await user.selectOptions(core, 'BN-61-202');
    expect(container.textContent).toMatch(/through both holes of BN-61-202/);
    expect(screen.getByRole('img', { name: /BN-61-202 core from its end/ })).toBeTruthy();
  });

  test('three wires have their starts dotted and their joint drawn', () => {
    openSheet('transformers');
    const picture = screen.getByRole('img', { name: /three wires of 9 turns/ });
    expect(picture.querySelectorAll('.transformer__dot')).toHaveLength(3);
    expect(picture.querySelectorAll('.transformer__bridge')).toHaveLength(1);
  });

  test('keeps a wrong entry and says what was meant beside it', async () => {
    const { user, field, beside } = openSheet('transformers');
    await user.type(field('windings.chokeFeed'), '9k');
    expect(field('windings.chokeFeed').value).toBe('9k');
    expect(beside('windings.chokeFeed')).toMatch(/between 1\smA and 5\sA/);
  });
});
