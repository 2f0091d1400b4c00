import { act, cleanup, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { exampleSweeps } from '../../src/engine/rig/exampleSweeps.ts';
import { useBench } from '../../src/store/store.ts';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

const paste = (text: string) => act(() => useBench.getState().say('sweep.file', 'The sweep', text));

describe('Sweep', () => {
  test('fits the crystal of a pasted sweep, and Quartz takes it when told so', async () => {
    const { user, container, lead } = openSheet('sweep');
    // The simulator was given 30 mH and 70 000 (maker of the example sweeps).
    paste(exampleSweeps.forty);
    expect(lead()).toMatch(/has (29\.9|30\.0)\d\smH/);
    expect(container.textContent).toMatch(/Read asTouchstone|Touchstone version 1, two ports/);
    expect(container.textContent).toContain('S12 and S22 are zero in every row: not measured.');
    await user.click(screen.getByRole('button', { name: /Let Quartz take/ }));
    expect(useBench.getState().rig.entries['measure.method']?.text).toBe('sweep');
  });

  test('another column can be taken', async () => {
    const { user, container } = openSheet('sweep');
    paste(exampleSweeps.forty);
    const level = screen.getByRole('combobox', { name: /Column of the level/ });
    expect([...level.querySelectorAll('option')].map((o) => o.textContent)).toContain(
      '4: S21 in dB',
    );
    await user.selectOptions(level, '3: S11 angle');
    expect(container.textContent).toMatch(/No crystal makes this sweep|does not give a crystal/);
  });

  test('says beside the field what is missing', () => {
    const { beside, container } = openSheet('sweep');
    paste(exampleSweeps.forty.replace('# MHz', '#'));
    expect(container.textContent).toContain('Choose MHz as the unit of the frequency');
    paste('nothing');
    expect(container.textContent).toContain('No rows of numbers were found');
    expect(beside('sweep.rt')).toBe('');
  });
});
