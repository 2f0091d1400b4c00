import { cleanup, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

describe('Windings', () => {
  test('says what to wind, and winds it anew on another core', async () => {
    // N = 100·√(L/A_L), A_L in µH for 100 turns (makers' lists): 1.323 µH on T37-2 (40) is 18.2
    // turns, on T50-2 (49) 16.4.
    const { user, container } = openSheet('windings');
    expect(container.textContent).toMatch(/18 turns of .* wire on T37-2/);
    const core = screen.getByRole('combobox', { name: /Core of the tuned coils/ });
    await user.selectOptions(core, 'T50-2');
    expect(container.textContent).toMatch(/16 turns of .* wire on T50-2/);
  });

  test('draws every turn once, numbered', () => {
    openSheet('windings');
    const picture = screen.getAllByRole('img', { name: /T37-2 core with 18 turns/ })[0];
    const numbers = [...(picture?.querySelectorAll('.toroid__number') ?? [])].map(
      (t) => t.textContent,
    );
    expect(numbers).toEqual(Array.from({ length: 18 }, (_, i) => String(i + 1)));
  });

  test('keeps a wrong entry and says what was meant beside it', async () => {
    const { user, field, beside } = openSheet('windings');
    await user.type(field('cores.tail'), '4k');
    expect(field('cores.tail').value).toBe('4k');
    expect(beside('cores.tail')).toMatch(/between 0\sm and 500\smm/);
  });
});
