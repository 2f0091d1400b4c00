import { usePlotArea, useXAxisScale, useYAxisScale } from 'recharts';

export interface Scales {
  /** Pixel of a value along the axis, held inside the picture. */
  x: (value: number) => number;
  y: (value: number) => number;
  /** The same, also outside the picture. */
  beyondX: (value: number) => number;
  beyondY: (value: number) => number;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

const held = (value: number, a: number, b: number) =>
  Math.max(Math.min(a, b), Math.min(Math.max(a, b), value));

/** From values to pixels, for layers drawn over a plot. */
export function useScales(): Scales | null {
  const area = usePlotArea();
  const xs = useXAxisScale();
  const ys = useYAxisScale();
  if (area === undefined || xs === undefined || ys === undefined) return null;
  const [left, top] = [area.x, area.y];
  const right = left + area.width;
  const bottom = top + area.height;
  return {
    x: (value) => held(xs(value) ?? left, left, right),
    y: (value) => held(ys(value) ?? bottom, top, bottom),
    beyondX: (value) => xs(value) ?? left,
    beyondY: (value) => ys(value) ?? bottom,
    left,
    right,
    top,
    bottom,
  };
}
