import { memo, useDeferredValue, useMemo } from 'react';
import { ResponseChart, type ResponseChartProps } from '../../design/chart/ResponseChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Response {
  readonly frequency: Float64Array;
  readonly gain: Float64Array;
}

const curves = {
  dragged: {
    title: 'The passband between the ends as dragged',
    response: 'filter.response',
    ripple: 'filter.rippleFound',
    loss: 'filter.loss',
  },
  real: {
    title: 'The passband between what is really there',
    response: 'ends.realResponse',
    ripple: 'ends.realRipple',
    loss: 'ends.realLoss',
  },
} as const;

/** The passband between ends as they are, over that between right ends; both by what they lose. */
export function EndsPicture({ of }: { of: keyof typeof curves }) {
  const picture = useDeferredValue(usePicture(of));
  return picture && <Picture {...picture} />;
}

const Picture = memo(function Picture(props: ResponseChartProps) {
  return <ResponseChart {...props} />;
});

function usePicture(of: keyof typeof curves): ResponseChartProps | null {
  const { title, ...paths } = curves[of];
  const live = useValue<Response>(paths.response);
  const right = useValue<Response>('ends.rightResponse');
  const rightLoss = useValue<number>('ends.rightLoss');
  const low = useValue<number>('ends.rightLow');
  const high = useValue<number>('ends.rightHigh');
  const ripple = useValue<number>(paths.ripple);
  const loss = useValue<number>(paths.loss);
  const background = useMemo(() => {
    if (right === null || rightLoss === null || low === null || high === null) return null;
    // Whole tenths of a kilohertz, so that the frame stands still.
    const middle = Math.round((low + high) / 200) * 100;
    const half = 0.8 * (high - low);
    const kHz = (f: number) => (f - middle) / 1000;
    return {
      kHz,
      middle,
      rightLoss,
      domain: [Math.floor((-half / 1000) * 4) / 4, Math.ceil((half / 1000) * 4) / 4] as const,
      reference: {
        x: right.frequency.map(kHz),
        y: right.gain.map((g) => g + rightLoss),
        label: 'right ends',
      },
    };
  }, [right, rightLoss, low, high]);
  return useMemo(() => {
    if (background === null || live === null) return null;
    const { kHz, middle, rightLoss: zero, domain, reference } = background;
    return {
      title,
      summary: `Ripple ${format(ripple ?? 0, 'dB', 3)}, ${format(loss ?? 0, 'dB', 3)} of loss at the best point; 0 dB is the best point between right ends.`,
      curve: { x: live.frequency.map(kHz), y: live.gain.map((g) => g + zero) },
      reference,
      xName: `kHz from ${format(middle, 'Hz', 6)}`,
      domain,
      floor: -12,
      ceiling: 0,
      tall: 16,
    };
  }, [background, live, ripple, loss, title]);
}
