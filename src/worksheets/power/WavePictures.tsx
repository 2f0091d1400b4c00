import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { useValue } from '../../store/hooks.ts';
import { useExact } from './useExact.ts';

/** Points of the cosine by hand. */
const POINTS = 73;

/** Whole periods that are drawn. */
const PERIODS = 2;

interface Wave {
  readonly x: number[];
  readonly y: number[];
}

/** Degrees of two periods, and a cosine's tip over them. */
function byHand(of: (angle: number) => number): Wave {
  const x = Array.from({ length: POINTS }, (_, i) => (i * 360 * PERIODS) / (POINTS - 1));
  return { x, y: x.map((degrees) => of((degrees * Math.PI) / 180)) };
}

/** Samples of one period, twice, turned so that the current's tip stands where the hand has it. */
function exactly(samples: Float64Array, from: number): Wave {
  const n = samples.length;
  const length = n * PERIODS + 1;
  return {
    x: Array.from({ length }, (_, i) => (i * 360) / n),
    y: Array.from({ length }, (_, i) => samples[(from + i) % n] ?? 0),
  };
}

/** Where the pulse's middle stands, degrees. */
const TIP = 180;

/** Collector voltage and current over two periods: the pulse by hand, and what really flows. */
export function WavePictures() {
  const found = useDeferredValue(useExact());
  const supply = useValue<number>('plan.supply');
  const saturation = useValue<number>('transmit.saturation');
  const angle = useValue<number>('transmit.conductionAngle');
  const peak = useValue<number>('transmit.peakCurrent');
  const quiescent = useValue<number>('transmit.quiescent');
  const fundamental = useValue<number>('transmit.fundamental');
  const limit = useValue<number>('transmit.limitVce');
  const sides = useValue<string>('transmit.finalForm') === 'pushPull' ? 2 : 1;
  const drawn = useMemo(() => {
    if (
      supply === null ||
      saturation === null ||
      angle === null ||
      peak === null ||
      quiescent === null ||
      fundamental === null
    ) {
      return null;
    }
    const half = Math.min(Math.PI, angle / 2);
    const tip = (TIP * Math.PI) / 180;
    const current = byHand((a) =>
      angle >= 2 * Math.PI
        ? quiescent / sides + fundamental * Math.cos(a - tip)
        : Math.max(0, (peak * (Math.cos(a - tip) - Math.cos(half))) / (1 - Math.cos(half))),
    );
    const voltage = byHand((a) => supply - (supply - saturation) * Math.cos(a - tip));
    if (found === null) return { current, voltage, exact: null };
    const { waves } = found;
    // The middle of the pulse by its fundamental, so that both stand over each other.
    const n = waves.current.length;
    let re = 0;
    let im = 0;
    waves.current.forEach((i, k) => {
      re += i * Math.cos((2 * Math.PI * k) / n);
      im += i * Math.sin((2 * Math.PI * k) / n);
    });
    const middle = (Math.atan2(im, re) / (2 * Math.PI)) * n;
    const from = Math.round((((middle - (TIP / 360) * n) % n) + n) % n) % n;
    return {
      current,
      voltage,
      exact: { current: exactly(waves.current, from), voltage: exactly(waves.voltage, from) },
    };
  }, [found, supply, saturation, angle, peak, quiescent, fundamental, sides]);
  const axis = useMemo(
    () => ({ from: 0, to: 360 * PERIODS, name: 'degrees of the cycle', unit: '°', step: 5 }),
    [],
  );
  const volts = useMemo(() => {
    if (drawn === null || supply === null) return null;
    const most = Math.max(...drawn.voltage.y, ...(drawn.exact?.voltage.y ?? []));
    const near = limit !== null && limit < 1.6 * most;
    return {
      curves: [
        ...(drawn.exact
          ? [
              {
                ...drawn.exact.voltage,
                label: 'from the model',
                ink: 'main',
                nameAt: 330,
                side: 'above',
              } as const,
            ]
          : []),
        { ...drawn.voltage, label: 'by hand', ink: 'reference', nameAt: 560, side: 'below' },
      ],
      x: axis,
      y: { from: 0, to: 1.15 * Math.max(most, near ? limit : 0), name: 'V', unit: 'V' },
      flats: [
        { at: supply, label: 'supply', end: 'right', side: 'above' },
        ...(near ? [{ at: limit, label: 'limit', end: 'right', side: 'above' } as const] : []),
      ],
      tall: 14,
    } as const;
  }, [drawn, supply, limit, axis]);
  const amps = useMemo(() => {
    if (drawn === null) return null;
    const all = [...drawn.current.y, ...(drawn.exact?.current.y ?? [])];
    const most = Math.max(...all);
    return {
      curves: [
        ...(drawn.exact
          ? [
              {
                ...drawn.exact.current,
                label: 'from the model',
                ink: 'main',
                nameAt: 215,
                side: 'right',
              } as const,
            ]
          : []),
        { ...drawn.current, label: 'by hand', ink: 'reference', nameAt: 580, side: 'right' },
      ],
      x: axis,
      y: { from: Math.min(0, 1.1 * Math.min(...all)), to: 1.15 * most, name: 'A', unit: 'A' },
      tall: 14,
    } as const;
  }, [drawn, axis]);
  if (volts === null || amps === null) return null;
  return (
    <>
      <CurveChart
        title="Collector voltage"
        summary="Two cycles at full power, emitter as zero. The closer to zero it gets, the more the final flattens."
        {...volts}
      />
      <CurveChart
        title="Collector current"
        summary="Of one side. By hand the tip of a cosine; the transistor’s own capacitances and stored charge round it off and pull it."
        {...amps}
      />
    </>
  );
}
