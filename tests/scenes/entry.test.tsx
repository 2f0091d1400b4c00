import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { Blank } from '../../src/design/Blank.tsx';
import { Choice } from '../../src/design/Choice.tsx';
import { Count } from '../../src/design/Count.tsx';
import { Field } from '../../src/design/Field.tsx';

afterEach(cleanup);

describe('a field', () => {
  const base = { id: 'quartz.lm', label: 'Motional inductance', symbol: 'L_m', unit: 'H' };

  it('is a plain text field that leaves what is typed alone', () => {
    const onText = vi.fn();
    render(<Field {...base} text="30m" echo="30.0 mH" onText={onText} />);
    const input = screen.getByLabelText<HTMLInputElement>(/Motional inductance/);
    expect(input.type).toBe('text');
    expect(input.getAttribute('autocapitalize')).toBe('off');
    expect(input.getAttribute('spellcheck')).toBe('false');
    fireEvent.change(input, { target: { value: '30m5 ' } });
    expect(onText).toHaveBeenCalledWith('30m5 ');
    expect(screen.getByText('= 30.0 mH')).toBeTruthy();
  });

  it('steps with the arrow keys, coarsely with Shift, and only with those', () => {
    const onStep = vi.fn();
    render(<Field {...base} text="30m" onText={() => undefined} onStep={onStep} />);
    const input = screen.getByLabelText(/Motional inductance/);
    fireEvent.keyDown(input, { key: 'ArrowUp' });
    fireEvent.keyDown(input, { key: 'ArrowDown', shiftKey: true });
    fireEvent.keyDown(input, { key: 'ArrowLeft' });
    fireEvent.keyDown(input, { key: 'ArrowUp', ctrlKey: true });
    expect(onStep.mock.calls).toEqual([
      [1, false],
      [-1, true],
    ]);
  });

  it('says what is wrong beside itself and keeps the text', () => {
    render(
      <Field
        {...base}
        text="30x"
        onText={() => undefined}
        problem={{ says: 'Cannot be read.', try: '30m' }}
      />,
    );
    const input = screen.getByLabelText<HTMLInputElement>(/Motional inductance/);
    expect(input.value).toBe('30x');
    expect(input.getAttribute('aria-invalid')).toBe('true');
    const said = (input.getAttribute('aria-describedby') ?? '')
      .split(' ')
      .map((id) => document.getElementById(id)?.textContent)
      .join(' ');
    expect(said).toContain('Cannot be read.');
    expect(said).toContain('30m');
  });

  it('does not call a warning invalid', () => {
    render(
      <Field
        {...base}
        text="3"
        onText={() => undefined}
        problem={{ weight: 'warns', says: 'Unusual.' }}
      />,
    );
    const input = screen.getByLabelText(/Motional inductance/);
    expect(input.getAttribute('aria-invalid')).toBe('false');
  });

  it('shows a typical value as a guess while blank, and offers it back while not', () => {
    const onTypical = vi.fn();
    const { rerender } = render(
      <Field {...base} text="" typical="32 mH" onText={() => undefined} onTypical={onTypical} />,
    );
    expect(screen.getByPlaceholderText('32 mH')).toBeTruthy();
    expect(screen.getByText('typical')).toBeTruthy();
    expect(screen.queryByText(/use the typical/)).toBeNull();
    rerender(
      <Field {...base} text="1" typical="32 mH" onText={() => undefined} onTypical={onTypical} />,
    );
    fireEvent.click(screen.getByText(/use the typical/));
    expect(onTypical).toHaveBeenCalledOnce();
  });

  it('puts a prefix where the caret is', () => {
    const onText = vi.fn();
    render(<Field {...base} text="30H" onText={onText} prefixes={['µ', 'm']} />);
    const input = screen.getByLabelText<HTMLInputElement>(/Motional inductance/);
    input.focus();
    input.setSelectionRange(2, 2);
    fireEvent.click(screen.getByRole('button', { name: 'm' }));
    expect(onText).toHaveBeenCalledWith('30mH');
  });

  it('opens its help with a button that says so', () => {
    render(<Field {...base} text="" onText={() => undefined} help="Sets the width." source="S" />);
    const ask = screen.getByRole('button', { name: 'About Motional inductance' });
    expect(ask.getAttribute('aria-expanded')).toBe('false');
    fireEvent.click(ask);
    expect(ask.getAttribute('aria-expanded')).toBe('true');
    expect(screen.getByText('Sets the width.')).toBeTruthy();
  });
});

describe('a number in a sentence', () => {
  it('has a name, a unit in it, and says how it was read', () => {
    render(
      <Blank
        id="b"
        label="Bandwidth"
        unit="Hz"
        text="2k4"
        echo="2.40 kHz"
        onText={() => undefined}
      />,
    );
    const input = screen.getByLabelText('Bandwidth, Hz');
    const said = document.getElementById(input.getAttribute('aria-describedby') ?? '');
    expect(said?.textContent).toBe('2.40 kHz');
  });
});

describe('a choice and a count', () => {
  const options = [
    ['lower', 'LSB'],
    ['upper', 'USB'],
  ] as const;

  it('is a set of radio buttons, or a list', () => {
    const onChoose = vi.fn();
    const { rerender } = render(
      <Choice id="s" label="Sideband" options={options} value="lower" onChoose={onChoose} />,
    );
    expect(screen.getByRole<HTMLInputElement>('radio', { name: 'LSB' }).checked).toBe(true);
    fireEvent.click(screen.getByRole('radio', { name: 'USB' }));
    expect(onChoose).toHaveBeenLastCalledWith('upper');
    rerender(
      <Choice
        id="s"
        label="Sideband"
        form="list"
        options={options}
        value="lower"
        onChoose={onChoose}
      />,
    );
    fireEvent.change(screen.getByRole('combobox'), { target: { value: 'upper' } });
    expect(onChoose).toHaveBeenCalledTimes(2);
  });

  it('counts by buttons and keys, and stops at its ends', () => {
    const onStep = vi.fn();
    render(
      <Count id="n" label="Crystals" text="12" onText={() => undefined} onStep={onStep} atMost />,
    );
    fireEvent.click(screen.getByRole('button', { name: 'Crystals: one fewer' }));
    fireEvent.keyDown(screen.getByLabelText('Crystals'), { key: 'ArrowDown' });
    expect(onStep.mock.calls).toEqual([
      [-1, false],
      [-1, false],
    ]);
    const more = screen.getByRole<HTMLButtonElement>('button', { name: 'Crystals: one more' });
    expect(more.disabled).toBe(true);
  });
});
