import { createContext, type ReactNode, useContext, useMemo } from 'react';
import { Curves } from './Curves.tsx';
import { Frame } from './Frame.tsx';
import { ScaleNames } from './ScaleNames.tsx';
import { type PlotAxis, useScale } from './scale.ts';
import { TopScale } from './TopScale.tsx';
import type { XY } from './thinned.ts';

export interface Curve extends XY {
  key: string;
  /**
   * `main` heavy and whole, `other` copper and thinner, `reference` thin and dashed; beside the
   * first two, `third` in long dashes and `fourth` dotted.
   */
  ink: 'main' | 'other' | 'reference' | 'third' | 'fourth';
}

interface PlotProps {
  width: number;
  em: number;
  /** Height in em. */
  tall: number;
  x: PlotAxis;
  y: PlotAxis;
  /** A second scale along the top, over the same stretch as `x`. */
  top?: PlotAxis | undefined;
  curves?: readonly Curve[];
  /** Room for the figures of the vertical axis, in em. */
  left?: number;
  /** Room to the right of the picture, in em. */
  right?: number;
  /** Layers under the curves: bands. */
  under?: ReactNode;
  /** Layers over the curves: marks and words. */
  children?: ReactNode;
}

const Layers = createContext<ReactNode>(null);

/** Stands inside the frame and is drawn anew without it. */
function Drawn() {
  return useContext(Layers);
}

const drawn = <Drawn />;

/**
 * Axes and grid, and over them whatever moves. The frame is drawn anew only when its own scale
 * changes: that is what keeps a key press on the page within a few milliseconds.
 */
export function Plot(props: PlotProps) {
  const { width, em, tall, top, curves = [], left = 2.75, right = 1.25, under, children } = props;
  const x = useScale(props.x);
  const y = useScale(props.y);
  const room = top === undefined ? 1.6 : top.nameAt === 'above' ? 3 : 1.9;
  const frame = useMemo(
    () => (
      <Frame width={width} em={em} tall={tall} x={x} y={y} left={left} right={right} above={room}>
        {drawn}
      </Frame>
    ),
    [width, em, tall, x, y, left, right, room],
  );
  return (
    <Layers.Provider
      value={
        <>
          {under}
          <Curves of={curves} from={x.from} to={x.to} />
          {top && <TopScale of={top} em={em} />}
          <ScaleNames x={props.x.name} y={props.y.name} em={em} />
          {children}
        </>
      }
    >
      {frame}
    </Layers.Provider>
  );
}
