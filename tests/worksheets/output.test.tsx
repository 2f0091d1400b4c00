import { cleanup, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { openSheet } from './sheet.tsx';

afterEach(cleanup);

describe('Output', () => {
  test('names the rule and holds the harmonics against its limit', async () => {
    const { user, container } = openSheet('output');
    expect(container.textContent).toMatch(/ITU Radio Regulations, Appendix 3/);
    // ITU-R SM.329: 43 + 10·log10(P) dB. A half-wave network of exact values shows the load wanted,
    // so no less than the 2 W planned and no more than 2 W with the allowance of 0.5 dB reach the
    // antenna: 46.0 to 46.5 dB.
    const lowpass = screen.getByRole('combobox', { name: /Low-pass filter/ });
    await user.selectOptions(lowpass, 'Half-wave, two sections');
    await user.selectOptions(
      screen.getByRole('combobox', { name: /Capacitors fitted/ }),
      'Exact values',
    );
    const table = screen.getByRole('table', { name: 'Each harmonic' });
    expect(table.textContent).toMatch(/−46\.[0-5]\sdBc/);
  });

  test('draws the network that is chosen, part for part', async () => {
    const { user, field } = openSheet('output');
    const parts = () =>
      screen
        .getByRole('list', { name: 'The network from collector to antenna' })
        .querySelectorAll('li').length;
    // Collector, transformer, seven elements, antenna.
    expect(parts()).toBe(10);
    await user.clear(field('output.order'));
    await user.type(field('output.order'), '5');
    expect(parts()).toBe(8);
  });

  test('an elliptic filter shows its traps and where they stop', async () => {
    const { user } = openSheet('output');
    const lowpass = screen.getByRole('combobox', { name: /Low-pass filter/ });
    await user.selectOptions(lowpass, 'Elliptic');
    const drawn = screen.getByRole('list', { name: 'The network from collector to antenna' });
    expect(drawn.textContent?.match(/stops/g)).toHaveLength(3);
    // First notch on the second harmonic of 7.2 MHz.
    expect(drawn.textContent).toMatch(/stops 14\.4\sMHz/);
  });

  test('fewer elements leave less margin, and a fail is said in words', async () => {
    const { user, container } = openSheet('output');
    const lowpass = screen.getByRole('combobox', { name: /Low-pass filter/ });
    await user.selectOptions(lowpass, 'None');
    const head = container.querySelector('.sheet__opening .figure--main')?.textContent ?? '';
    expect(head).toMatch(/fails/);
    expect(container.textContent).toMatch(/Do not go on the air with it/);
  });

  test('keeps a wrong entry and says the range beside it', async () => {
    const { user, field, beside } = openSheet('output');
    await user.type(field('output.coilQ'), '2');
    expect(field('output.coilQ').value).toBe('2');
    expect(beside('output.coilQ')).toMatch(/between 5 and 1000/);
  });
});
