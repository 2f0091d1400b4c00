import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { ResponseChart } from '../../src/design/chart/ResponseChart.tsx';
import { heightAt, thinned } from '../../src/design/chart/thinned.ts';
import { ticks } from '../../src/design/chart/ticks.ts';
import { bandPass } from './curves.ts';

afterEach(cleanup);

describe('a thinned curve', () => {
  const by = { x: 100, y: 3, slack: 0.2 };

  it('never strays further from the whole one than it may', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.4, max: 4, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (width, centre) => {
          const whole = bandPass(-5, 5, 1001, centre, width);
          const points = thinned(whole, -4, 4, by);
          const few = {
            x: Float64Array.from(points, (p) => p.x),
            y: Float64Array.from(points, (p) => p.y),
          };
          expect(points.length).toBeLessThanOrEqual(300);
          for (let i = 0; i < 1001; i++) {
            const [x = 0, y = 0] = [whole.x[i], whole.y[i]];
            if (x < -4 || x > 4) continue;
            const drawn = heightAt(few, x) ?? Number.NaN;
            // Along the axis a steep line may be off by more than across it: compare there.
            const slope = Math.abs((heightAt(few, x + 1e-3) ?? drawn) - drawn) * 1e3;
            const across = (Math.abs(drawn - y) * by.y) / Math.hypot(1, (slope * by.y) / by.x);
            expect(across).toBeLessThan(0.45);
          }
        },
      ),
      { numRuns: 40, seed: 7 },
    );
  });

  it('keeps a gap and never exceeds what may be drawn', () => {
    const x = Float64Array.from({ length: 5000 }, (_, i) => i);
    const y = x.map((i) => (i > 2000 && i < 2100 ? Number.NaN : 50 * Math.sin(i * 12.9898)));
    const points = thinned({ x, y }, 0, 5000, { x: 0.1, y: 3, slack: 0.2 });
    expect(points.length).toBeLessThanOrEqual(400);
    expect(points.some((point) => Number.isNaN(point.y))).toBe(true);
  });

  it('draws nothing from nothing', () => {
    expect(thinned({ x: [], y: [] }, 0, 1, by)).toEqual([]);
    expect(heightAt({ x: [], y: [] }, 0)).toBeNull();
  });
});

describe('ticks', () => {
  it('are round, in range and about as many as asked for', () => {
    expect(ticks(-100, 0, 6)).toEqual([-100, -80, -60, -40, -20, 0]);
    expect(ticks(-2, 1.5, 8)).toEqual([-2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5]);
    expect(ticks(3, 3, 5)).toEqual([3]);
    expect(ticks(Number.NaN, 1, 5)).toEqual([Number.NaN]);
  });
});

describe('the response', () => {
  const curve = bandPass(-5, 5, 1001, 0, 2.4);
  const chart = (direction: 1 | -1) => (
    <ResponseChart
      title="Response"
      summary="As it is."
      curve={curve}
      xName="kHz"
      domain={[-4, 4]}
      carrier={{ at: -direction * 1.5, label: 'carrier', direction }}
    />
  );
  const top = (container: Element) =>
    [...container.querySelectorAll('.chart__top text')].map((t) => t.textContent);

  it.each([1, -1] as const)('counts audio away from the carrier, direction %i', (direction) => {
    const { container } = render(chart(direction));
    const texts = [...container.querySelectorAll('.chart__top text')];
    const at = (said: string) =>
      Number(texts.find((t) => t.textContent === said)?.getAttribute('x'));
    expect(top(container)).toContain('1000');
    expect(Math.sign(at('1000') - at('0'))).toBe(direction);
  });

  it('reads off by arrow keys: place, tone and level', () => {
    render(chart(-1));
    const reader = screen.getByRole('slider', { name: 'Read along the curve' });
    fireEvent.keyDown(reader, { key: 'Home' });
    expect(reader.getAttribute('aria-valuetext')).toMatch(/^−4 kHz, audio 5500 Hz, −\d/);
    fireEvent.keyDown(reader, { key: 'ArrowRight', shiftKey: true });
    expect(reader.getAttribute('aria-valuenow')).toBe('-3.9');
  });

  it('draws in few points', () => {
    const { container } = render(chart(1));
    const path = container.querySelector('.chart__curve--main')?.getAttribute('d') ?? '';
    expect(path.split(/[ML]/).length).toBeGreaterThan(20);
    expect(path.split(/[ML]/).length).toBeLessThan(300);
  });

  it('stands an empty curve', () => {
    render(<ResponseChart title="R" summary="" curve={{ x: [], y: [] }} xName="kHz" />);
    expect(screen.getByText('R')).toBeTruthy();
  });
});
