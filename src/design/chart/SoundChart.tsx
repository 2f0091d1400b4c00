import { memo, useEffect, useId, useMemo, useRef } from 'react';
import { Chart, type ChartText } from './Chart.tsx';
import { Plot } from './Plot.tsx';
import { plain, ticks } from './ticks.ts';
import type { Measured } from './useMeasured.ts';
import { useScales } from './useScales.ts';

export interface SoundChartProps extends ChartText {
  moments: number;
  frequencies: number;
  /** Hz from one frequency to the next. */
  step: number;
  seconds: number;
  /** Moment by moment from 0 Hz up: 0 is nothing, 255 the strongest. */
  level: Uint8Array;
  xName: string;
  yName: string;
  /** Where the sound is just now, s; null while nothing is played. */
  position?: (() => number | null) | undefined;
}

/** The levels as an image whose ink is the more opaque the stronger the sound; null without canvas. */
function inkOf({ moments, frequencies, level }: SoundChartProps): string | null {
  const canvas = document.createElement('canvas');
  canvas.width = moments;
  canvas.height = frequencies;
  const context = canvas.getContext?.('2d') ?? null;
  if (context === null) return null;
  const image = context.createImageData(moments, frequencies);
  for (let m = 0; m < moments; m += 1) {
    for (let k = 0; k < frequencies; k += 1) {
      const at = 4 * ((frequencies - 1 - k) * moments + m);
      const shade = level[m * frequencies + k] ?? 0;
      image.data[at] = 255;
      image.data[at + 1] = 255;
      image.data[at + 2] = 255;
      image.data[at + 3] = shade;
    }
  }
  context.putImageData(image, 0, 0);
  return canvas.toDataURL();
}

function Ink({ of }: { of: SoundChartProps }) {
  const id = useId();
  const s = useScales();
  const href = useMemo(() => inkOf(of), [of]);
  if (s === null || href === null) return null;
  // A cell reaches half a step to either side of its frequency.
  const top = (of.frequencies - 0.5) * of.step;
  const place = {
    x: s.left,
    y: s.beyondY(top),
    width: s.right - s.left,
    height: s.beyondY(-0.5 * of.step) - s.beyondY(top),
  };
  const frame = { x: s.left, y: s.top, width: place.width, height: s.bottom - s.top };
  return (
    <g>
      <mask id={id} maskUnits="userSpaceOnUse" {...frame}>
        <image href={href} preserveAspectRatio="none" {...place} />
      </mask>
      <rect className="sound__ink" mask={`url(#${id})`} {...frame} />
    </g>
  );
}

/** A line that runs along with what is played; moved without drawing the picture anew. */
function Now({ position }: { position: () => number | null }) {
  const line = useRef<SVGLineElement>(null);
  const s = useScales();
  const scales = useRef(s);
  scales.current = s;
  useEffect(() => {
    let frame = 0;
    const move = () => {
      const at = position();
      const drawn = line.current;
      if (drawn) {
        drawn.style.visibility = at === null ? 'hidden' : 'visible';
        if (at !== null && scales.current) {
          const x = String(scales.current.x(at));
          drawn.setAttribute('x1', x);
          drawn.setAttribute('x2', x);
        }
      }
      frame = requestAnimationFrame(move);
    };
    move();
    return () => cancelAnimationFrame(frame);
  }, [position]);
  if (s === null) return null;
  return <line ref={line} className="sound__now" y1={s.top} y2={s.bottom} />;
}

function Picture({ width, em, of }: Measured & { of: SoundChartProps }) {
  const highest = (of.frequencies - 1) * of.step;
  return (
    <Plot
      width={width}
      em={em}
      tall={15}
      x={{
        from: 0,
        to: of.seconds,
        ticks: ticks(0, of.seconds, width / em < 30 ? 5 : 10),
        name: of.xName,
        format: plain,
      }}
      y={{ from: 0, to: highest, ticks: ticks(0, highest, 4), name: of.yName, format: plain }}
      left={3.25}
      under={<Ink of={of} />}
    >
      {of.position && <Now position={of.position} />}
    </Plot>
  );
}

/** Sound as a picture: time along, pitch upwards, the darker the stronger. */
export const SoundChart = memo(function SoundChart(props: SoundChartProps) {
  return (
    <Chart title={props.title} summary={props.summary} table={props.table}>
      {(place) => <Picture of={props} {...place} />}
    </Chart>
  );
});
