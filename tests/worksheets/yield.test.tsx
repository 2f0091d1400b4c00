import { act, cleanup, screen, waitFor } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { useBench } from '../../src/store/store.ts';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

/** Few builds, so that the page is quick here. */
function openYield() {
  const page = openSheet('yield');
  const { user, field } = page;
  const write = async (path: string, text: string) => {
    await user.clear(field(path));
    await user.type(field(path), text);
  };
  act(() => {
    const { sayAll } = useBench.getState();
    const blank = { 'yield.widthLeast': '', 'yield.widthMost': '', 'yield.rippleMost': '' };
    sayAll({ 'yield.builds': '200', ...blank }, 'For the test');
  });
  const main = () =>
    page.container.querySelector('.sheet__opening .figure--main')?.textContent ?? '';
  return { ...page, write, main };
}

const soon = { timeout: 10_000 };

describe('Yield', () => {
  test('builds by itself, and the mask makes a yield of it', async () => {
    const { user, main, container } = openYield();
    await screen.findByText('Response of all builds', {}, soon);
    expect(main()).toMatch(/nothing is asked yet/);
    await user.click(screen.getByText(/Take the width to a twentieth/));
    await waitFor(() => expect(main()).toMatch(/9\d(\.\d)?\s*%|100/), soon);
    // 6 crystals at 2400 Hz: a twentieth to either side.
    expect(container.querySelector<HTMLInputElement>('[id="yield.widthLeast"]')?.value).toMatch(
      /^2\.28\skHz$/,
    );
    const helps = await screen.findByLabelText(/one group of parts were perfect/, {}, soon);
    expect(helps.querySelectorAll('li')).toHaveLength(6);
  });

  test('wider tolerances let fewer through, and what fails is named', async () => {
    const { write, main, container } = openYield();
    await write('yield.widthLeast', '2350');
    await waitFor(() => expect(main()).toMatch(/\d\s*%/), soon);
    const before = Number(/([\d.]+)\s*%/.exec(main())?.[1]);
    await write('yield.tolerance', '20%');
    await waitFor(() => {
      const now = Number(/([\d.]+)\s*%/.exec(main())?.[1]);
      expect(now).toBeLessThan(before - 5);
    }, soon);
    expect(container.textContent).toMatch(/What fails most: too narrow/);
  });

  test('a mask that nothing can keep is said to be none', async () => {
    const { write, container } = openYield();
    await write('yield.widthLeast', '3000');
    await write('yield.widthMost', '2000');
    expect(container.textContent).toMatch(
      /No filter is at least 3000\sHz and at most 2000\sHz wide/,
    );
  });

  test('keeps a wrong entry and says the range beside it', async () => {
    const { write, field, beside } = openYield();
    await write('yield.tolerance', '99%');
    expect(field('yield.tolerance').value).toBe('99%');
    expect(beside('yield.tolerance')).toMatch(/60/);
  });
});
