import { act, cleanup, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { useBench } from '../../src/store/store.ts';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

describe('Transmit', () => {
  test('the carrier at the antenna is what null and filter leave of the power', async () => {
    // 2 W and 40 + 20 dB: 2 µW. The filter's 20 dB are how the demo rig's carrier is placed.
    const { user, field, lead } = openSheet('amplifiers');
    await user.type(field('transmit.null'), '40');
    act(() => useBench.getState().show('transmit'));
    expect(lead()).toMatch(/60\.0\s*dB/);
    expect(lead()).toMatch(/2\.0\s*µW/);
  });

  test('each dB of fitted gain beyond the gain needed is a dB of drive', async () => {
    const { user, field, container } = openSheet('transmit');
    const needed = Number(/([\d.]+)\s*dB/.exec(mainFigure(container))?.[1]);
    await user.type(field('transmit.micFitted'), String(needed + 3));
    const picture = screen.getByRole('figure', { name: /Levels from microphone/ });
    expect(picture.textContent).toMatch(/Driven (2\.9|3\.0|3\.1)\sdB beyond full power/);
  });

  test('the last place of the chain is the antenna: 2 W in 50 Ω are 28.3 V pp', () => {
    openSheet('transmit');
    const row = screen.getAllByRole('row', { name: /^Antenna/ }).at(-1);
    const probe = screen.getByRole('table', { name: 'Where to hold a probe' });
    expect(row).toBeTruthy();
    expect(probe.textContent).toMatch(/Antenna28\.3\sV\s?pp50\.0\sΩ33\.0\sdBm/);
  });

  test('a larger emitter resistor lowers the driver’s current and its emitter voltage stays', async () => {
    const { user, field } = openSheet('amplifiers');
    const row = () => screen.getAllByRole('row', { name: /^Driver usual/ })[0]?.textContent ?? '';
    const before = Number(/([\d.]+)\s*mA/.exec(row())?.[1]);
    await user.type(field('transmit.driverBridged'), '122');
    // 132 Ω in place of 66: about half the current, for the base hardly moves.
    const after = Number(/([\d.]+)\s*mA/.exec(row())?.[1]);
    expect(after / before).toBeGreaterThan(0.48);
    expect(after / before).toBeLessThan(0.58);
  });

  test('keeps a wrong entry and says the range beside it', async () => {
    const { user, field, beside } = openSheet('amplifiers');
    await user.type(field('transmit.pad'), '99');
    expect(field('transmit.pad').value).toBe('99');
    expect(beside('transmit.pad')).toMatch(/between 0\sdB and 30\sdB/);
  });
});

const mainFigure = (container: Element) =>
  container.querySelector('.sheet__opening .figure--main')?.textContent ?? '';
