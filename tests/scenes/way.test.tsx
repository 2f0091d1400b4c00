import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { Drawing } from '../../src/design/drawing/Drawing.tsx';
import { figureAndUnit } from '../../src/design/Value.tsx';
import { Workings } from '../../src/design/Workings.tsx';
import { blocks } from './drawing.scene.tsx';

afterEach(cleanup);

describe('the drawing', () => {
  it('leads to every sheet, along the wire, and marks the one shown', () => {
    const onChoose = vi.fn();
    render(<Drawing blocks={blocks} current="filter" onChoose={onChoose} />);
    const links = screen.getAllByRole('link');
    expect(links.map((link) => link.getAttribute('href'))).toEqual([
      '#plan',
      '#receive',
      '#carrier',
      '#quartz',
      '#filter',
      '#transmit',
      '#windings',
      '#output',
      '#path',
      '#bench',
    ]);
    const here = links.filter((link) => link.getAttribute('aria-current') === 'page');
    expect(here.map((link) => link.getAttribute('href'))).toEqual(['#filter']);
    fireEvent.click(screen.getByRole('link', { name: /Carrier/ }));
    expect(onChoose).toHaveBeenCalledWith('carrier');
  });

  it('speaks the state and the move, not only draws them', () => {
    render(<Drawing blocks={blocks} current="plan" onChoose={() => undefined} />);
    expect(screen.getByRole('link', { name: /Carrier.*close, moved/ })).toBeTruthy();
    expect(screen.getByRole('link', { name: /Path.*fails/ })).toBeTruthy();
  });

  it('still shows a stage that it has no symbol for', () => {
    const extra = { key: 'voice', label: 'Voice', figures: [], state: 'holds' } as const;
    render(<Drawing blocks={[extra, ...blocks]} current="voice" onChoose={() => undefined} />);
    expect(screen.getAllByRole('link').at(-1)?.textContent).toContain('Voice');
  });
});

describe('figure and unit', () => {
  it.each([
    ['2.40 kHz', '2.40', 'kHz'],
    ['−39 dBc', '−39', 'dBc'],
    ['7.157 32 MHz', '7.157 32', 'MHz'],
    ['180', '180', ''],
    ['+33.0 dBm', '+33.0', 'dBm'],
    ['S7', 'S7', ''],
    ['21 °C/W', '21', '°C/W'],
  ])('%s', (text, figure, unit) => {
    expect(figureAndUnit(text)).toEqual([figure, unit]);
  });
});

describe('workings on the board', () => {
  const steps = ['one', 'two', 'three'].map((key) => ({ key, step: <p>{key}</p> }));

  it('go on and back by the arrow keys, and stop at their ends', () => {
    render(<Workings steps={steps} onBoard />);
    expect(screen.getByText('one')).toBeTruthy();
    expect(screen.queryByText('two')).toBeNull();
    for (let i = 0; i < 5; i++) fireEvent.keyDown(window, { key: 'ArrowRight' });
    expect(screen.getByText('three')).toBeTruthy();
    fireEvent.keyDown(document.body, { key: 'ArrowLeft' });
    expect(screen.getByText('2 of 3')).toBeTruthy();
  });

  it('leave the keys to a field that has the focus', () => {
    const { container } = render(
      <>
        <input />
        <Workings steps={steps} onBoard />
      </>,
    );
    const input = container.querySelector('input');
    if (input) fireEvent.keyDown(input, { key: 'ArrowRight' });
    expect(screen.getByText('one')).toBeTruthy();
  });

  it('stand one under the other off it', () => {
    render(<Workings steps={steps} />);
    expect(screen.getByText('three')).toBeTruthy();
  });
});
