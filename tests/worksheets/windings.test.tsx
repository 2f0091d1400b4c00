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

  test('says what to do with a reading', async () => {
    // 1.323 µH wanted, 18 turns on T37-2 (40 µH for 100): 1.44 µH is 8.8 % too much; (17/18)² of it
    // is 1.284 µH.
    const { user, field, container } = openSheet('windings');
    await user.type(field('output.measured'), 'L1 1.44u');
    expect(container.textContent).toMatch(/8\.8.% too much: take a turn off, for 1\.28.µH/);
  });

  test('a box of cores is taken from, and a ring put into it', async () => {
    const { user, field, container } = openSheet('cores');
    await user.type(field('cores.box'), 'T68-2 x2');
    expect(container.textContent).toContain('To get');
    // 4.9 nH: 0.49 µH at ten turns.
    for (const [path, text] of [
      ['turns1', '10'],
      ['trial1', '0.49u'],
      ['outer', '12.7 mm'],
      ['inner', '7.7 mm'],
      ['height', '4.83 mm'],
    ] as const) {
      await user.type(field(`cores.${path}`), text);
    }
    await user.click(screen.getByRole('button', { name: 'Put it into the box' }));
    expect(field('cores.box').value).toMatch(/^T68-2 x2\nring OD 12.7 ID 7.7 h 4.83 AL 4.9n$/);
  });

  test('keeps a wrong entry and says what was meant beside it', async () => {
    const { user, field, beside } = openSheet('windings');
    await user.type(field('cores.tail'), '4k');
    expect(field('cores.tail').value).toBe('4k');
    expect(beside('cores.tail')).toMatch(/between 0\sm and 500\smm/);
  });
});
