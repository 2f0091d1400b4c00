import { act, cleanup, fireEvent } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { valueAt } from '../../src/engine/rig/worked.ts';
import { workedOf } from '../../src/store/bench.ts';
import { useBench } from '../../src/store/store.ts';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

const index = () => valueAt(workedOf(useBench.getState().rig), 'speech.index') as number;

describe('Speech understood', () => {
  test('more noise takes from the index, and no noise gives all that the filter has', () => {
    const { container } = openSheet('speech');
    const shown = () => container.querySelector('.figure--main')?.textContent ?? '';
    const before = index();
    expect(shown()).toContain(before.toFixed(2));
    act(() => useBench.getState().say('hear.ratio', 'Signal over noise, typed', '8'));
    expect(index()).toBeLessThan(before - 0.1);
    expect(shown()).toContain(index().toFixed(2));
    act(() => useBench.getState().say('hear.noise', 'Noise', 'none'));
    expect(index()).toBe(valueAt(workedOf(useBench.getState().rig), 'speech.best'));
  });

  test('the edge that is moved is the one that was typed', () => {
    const { container, field } = openSheet('speech');
    fireEvent.change(field('speech.more'), { target: { value: '350' } });
    expect(container.textContent).toMatch(/Lower edge 350\sHz lower/);
    expect(container.textContent).toMatch(/Upper edge 350\sHz higher/);
  });

  test('a wrong entry keeps its text and says the range', () => {
    const { container, field } = openSheet('speech');
    fireEvent.change(field('speech.more'), { target: { value: '5k' } });
    expect(field('speech.more').value).toBe('5k');
    expect(container.textContent).toMatch(/between 10\sHz and 1\skHz/);
  });
});
