import { memo, useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Swept {
  readonly frequency: Float64Array;
  readonly measured: Float64Array;
  readonly fitted: Float64Array;
  readonly left: Float64Array;
}

interface Drawn {
  readonly x: Float64Array;
  readonly swept: Swept;
  readonly fs: number;
  readonly fp: number;
  readonly width: number;
  readonly rms: number;
}

/** Measured and fitted over each other, the peak magnified, and what is left over. */
export function SweepPicture() {
  const swept = useValue<Swept>('sweep.sweep');
  const fs = useValue<number>('sweep.fs');
  const fp = useValue<number>('sweep.fp');
  const width = useValue<number>('sweep.width');
  const rms = useValue<number>('sweep.rms');
  const drawn = useMemo(() => {
    if (swept === null || fs === null || fp === null || width === null || rms === null) return null;
    return { x: swept.frequency.map((f) => (f - fs) / 1000), swept, fs, fp, width, rms };
  }, [swept, fs, fp, width, rms]);
  const picture = useDeferredValue(drawn);
  return picture && <Pictures drawn={picture} />;
}

const Pictures = memo(function Pictures({ drawn }: { drawn: Drawn }) {
  const { x, swept, fs, width, rms } = drawn;
  const name = `kHz from ${format(fs, 'Hz', 8)}`;
  const from = x[0] ?? 0;
  const to = x.at(-1) ?? 1;
  const near = (4 * width) / 1000;
  const top = Math.max(...swept.measured, ...swept.fitted);
  const bottom = Math.min(...swept.measured, ...swept.fitted);
  const curves = useMemo(() => {
    const fitted = { x, y: swept.fitted, label: 'fitted', ink: 'reference', nameAt: from } as const;
    const measured = { x, y: swept.measured, label: 'measured', ink: 'other', nameAt: to } as const;
    const left = { x, y: swept.left, label: '', ink: 'other', nameAt: from } as const;
    return {
      whole: [
        { ...measured, nameAt: from + 0.36 * (to - from), side: 'above' as const },
        { ...fitted, nameAt: from + 0.62 * (to - from), side: 'below' as const },
      ],
      peak: [
        { ...measured, nameAt: 0.36 * near, side: 'right' as const },
        { ...fitted, nameAt: 0.22 * near, side: 'left' as const },
      ],
      left: [left],
    };
  }, [x, swept, from, to, near]);
  const largest = Math.max(...swept.left.map(Math.abs));
  const reach = Math.max(4 * rms, Math.min(largest, 15 * rms), 0.01);
  return (
    <>
      <CurveChart
        title="Measured and fitted"
        summary={`The fitted circuit leaves ${format(rms, 'dB', 5)} rms of the sweep.`}
        curves={curves.whole}
        x={{ from, to, name, unit: 'kHz', step: (to - from) / 400 }}
        y={{
          from: Math.floor(bottom / 10) * 10,
          to: Math.ceil((top + 1) / 5) * 5,
          name: 'dB',
          unit: 'dB',
        }}
        tall={20}
      />
      <CurveChart
        title="The peak, magnified"
        summary={`${format(width, 'Hz', 3)} wide at half power: Lm comes from this width, Rm from its height.`}
        curves={curves.peak}
        x={{
          from: Math.max(-near, from),
          to: Math.min(near, to),
          name,
          unit: 'kHz',
          step: near / 200,
        }}
        y={{ from: Math.floor(top - 20), to: Math.ceil(top + 1), name: 'dB', unit: 'dB' }}
        tall={16}
      />
      <CurveChart
        title="What is left over"
        summary="Measured less fitted: without a shape it is noise, with one it is something else."
        curves={curves.left}
        x={{ from, to, name, unit: 'kHz', step: (to - from) / 400 }}
        y={{ from: -reach, to: reach, name: 'dB', unit: 'dB' }}
        flats={zero}
        tall={10}
      />
    </>
  );
});

const zero = [{ at: 0, label: '' }] as const;
