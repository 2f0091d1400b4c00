import { cleanup, render } from '@testing-library/react';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { TransformerDrawing } from '../../src/design/drawing/TransformerDrawing.tsx';
import { type Bend, passesThrough, windingPaths } from '../../src/design/drawing/windingPaths.ts';

afterEach(cleanup);

const radii = { edge: 30, rim: 64, tail: 84 };
const HOLE = 33;

type Place = readonly [number, number, number];

/** A bend in space: the core lies flat, its faces at z = ±10. */
const placeOf = ({ radius, angle, face }: Bend): Place => [
  radius * Math.cos(angle),
  radius * Math.sin(angle),
  face === 'upper' ? 10 : -10,
];

/**
 * Flux round the core by a current of 1 A from start to finish, in ampere turns by Ampère's law: how
 * often the closed way of the current runs through the circle in the middle of the core. Source: Gauss's
 * linking integral (1833), summed over small steps, the tails joined far outside.
 */
function linked(bends: readonly Bend[]): number {
  const steps = 120;
  const middle = 48;
  const far = 1e4;
  const path = bends.map(placeOf);
  const [first, last] = [path[0] as Place, path.at(-1) as Place];
  const out = (p: Place): Place => [(p[0] * far) / 84, (p[1] * far) / 84, p[2]];
  const closed = [...path, out(last), [0, far, 10] as Place, out(first), first];
  let sum = 0;
  for (let i = 1; i < closed.length; i += 1) {
    const [a, b] = [closed[i - 1] as Place, closed[i] as Place];
    const parts = Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]) > 500 ? 1500 : 30;
    for (let j = 0; j < parts; j += 1) {
      const at = (k: 0 | 1 | 2) => a[k] + ((b[k] - a[k]) * (j + 0.5)) / parts;
      const d = ([0, 1, 2] as const).map((k) => (b[k] - a[k]) / parts) as unknown as Place;
      for (let k = 0; k < steps; k += 1) {
        const angle = (2 * Math.PI * k) / steps;
        const c = [middle * Math.cos(angle), middle * Math.sin(angle), 0] as const;
        const e = [
          (-middle * Math.sin(angle) * 2 * Math.PI) / steps,
          (middle * Math.cos(angle) * 2 * Math.PI) / steps,
        ] as const;
        const r = [at(0) - c[0], at(1) - c[1], at(2)] as const;
        const size = Math.hypot(...r) ** 3;
        // r · (d × e), e lies flat.
        const cross = [-d[2] * e[1], d[2] * e[0], d[0] * e[1] - d[1] * e[0]] as const;
        sum += (r[0] * cross[0] + r[1] * cross[1] + r[2] * cross[2]) / size;
      }
    }
  }
  return sum / (4 * Math.PI);
}

describe('dots and the sense of the windings', () => {
  it.each([
    ['three wires together', [5, 5, 5], 0.15],
    ['one over the other', [6, 4], null],
  ] as const)('currents into the dots magnetise alike: %s', (_, turns, apart) => {
    const wound = windingPaths(turns, apart, radii);
    const flux = wound.map(({ bends }) => linked(bends));
    const sign = Math.sign(flux[0] ?? 0);
    flux.forEach((one, i) => {
      expect(sign * one).toBeGreaterThan((turns[i] ?? 0) - 0.1);
      expect(sign * one).toBeLessThan((turns[i] ?? 0) + 0.1);
    });
  });

  it('two wires together and a third over them', () => {
    const wound = windingPaths([3, 3], 0.15, radii, 5);
    expect(wound.map(({ letter }) => letter)).toEqual(['A', 'B', 'C']);
    const flux = wound.map(({ bends }) => linked(bends));
    const sign = Math.sign(flux[0] ?? 0);
    [3, 3, 5].forEach((n, i) => {
      expect(Math.abs(sign * (flux[i] ?? 0) - n)).toBeLessThan(0.1);
    });
  });

  it('two wires together over a first', () => {
    const wound = windingPaths([6, 2], null, radii, null, 0.12);
    expect(wound.map(({ letter }) => letter)).toEqual(['A', 'B', 'C']);
    expect(wound.map(({ bends }) => passesThrough(bends, HOLE))).toEqual([6, 2, 2]);
  });

  it('a wire from finish to start magnetises the other way', () => {
    const [wire] = windingPaths([5], null, radii);
    const bends = wire?.bends ?? [];
    expect(linked(bends) + linked([...bends].reverse())).toBeCloseTo(0, 6);
    expect(passesThrough([...bends].reverse(), HOLE)).toBe(-passesThrough(bends, HOLE));
  });

  it('each turn is one pass down through the hole, whatever the turns', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 30 }), (a, b) => {
        const over = windingPaths([a, b], null, radii);
        expect(over.map(({ bends }) => passesThrough(bends, HOLE))).toEqual([a, b]);
        const bundle = windingPaths([a, a, a], 0.1, radii);
        expect(bundle.map(({ bends }) => passesThrough(bends, HOLE))).toEqual([a, a, a]);
      }),
      { seed: 5 },
    );
  });

  it('the finish of B joined to the start of C: the two aid each other from end to end', () => {
    const [, b, c] = windingPaths([5, 5, 5], 0.15, radii);
    const both = [...(b?.bends ?? []), ...(c?.bends ?? [])];
    expect(passesThrough(both, HOLE)).toBe(10);
    const wrong = [...(b?.bends ?? []), ...[...(c?.bends ?? [])].reverse()];
    expect(passesThrough(wrong, HOLE)).toBe(0);
  });

  it('the drawing has its dots where its wires start', () => {
    const { container } = render(
      <TransformerDrawing
        label="x"
        outer={9.53}
        inner={4.75}
        wire={0.4}
        turns={[6, 6, 6]}
        bundle
      />,
    );
    const dots = [...container.querySelectorAll('.transformer__dot')];
    const wires = [...container.querySelectorAll('.wire > path:first-child')];
    expect(dots).toHaveLength(3);
    dots.forEach((dot, i) => {
      const start = /^M(\S+) ([^L]+)L/.exec(wires[i]?.getAttribute('d') ?? '');
      expect([dot.getAttribute('cx'), dot.getAttribute('cy')]).toEqual([start?.[1], start?.[2]]);
    });
    const letters = [...container.querySelectorAll('.transformer__ends text')];
    expect(letters.map((t) => t.textContent)).toEqual(['A', 'A′', 'B', 'B′', 'C', 'C′']);
  });
});
