import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

export interface Measured {
  /** Width of the place, in pixels. */
  width: number;
  /** Size of the root's type, in pixels: charts grow with it, so a projector gets larger print. */
  em: number;
}

/** The size of the place that a chart is drawn in; a plausible one until it is known. */
export function useMeasured(): readonly [RefObject<HTMLDivElement | null>, Measured] {
  const ref = useRef<HTMLDivElement>(null);
  const [measured, setMeasured] = useState<Measured>({ width: 640, em: 16 });
  useLayoutEffect(() => {
    const place = ref.current;
    if (place === null) return;
    const measure = () => {
      const width = Math.round(place.getBoundingClientRect().width);
      const em = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
      if (width > 0) {
        setMeasured((old) => (old.width === width && old.em === em ? old : { width, em }));
      }
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(place);
    return () => watch.disconnect();
  }, []);
  return [ref, measured];
}
