import { memo, useDeferredValue, useMemo } from 'react';
import { CurveChart, type CurveChartProps } from '../../design/chart/CurveChart.tsx';
import type { HearAnswer, Heard } from '../../engine/errands/hear/hearAnswer.ts';

/** Highest tone, Hz, and the lowest level, dB. */
const UP_TO = 4000;
const FLOOR = -60;

const inks = { '0': 'reference', A: 'main', B: 'other', C: 'third', D: 'fourth' } as const;

/** Long-term spectrum of what is spoken and of what is heard through each filter. */
export const SpectrumPicture = memo(function SpectrumPicture({ answer }: { answer: HearAnswer }) {
  const chart = useDeferredValue(useMemo(() => drawn(answer), [answer]));
  return <CurveChart {...chart} />;
});

function drawn({ heard, spectrumStep }: HearAnswer): CurveChartProps {
  const found = heard.flatMap((one) => (one.spectrum ? [{ ...one, spectrum: one.spectrum }] : []));
  const count = Math.floor(UP_TO / spectrumStep);
  const x = Float64Array.from({ length: count }, (_, k) => k * spectrumStep);
  return {
    title: 'Spectrum of what is heard',
    summary: `The long-term spectrum: ${found.map(({ name }) => said(name)).join(', ')}. All are equally loud as a whole.`,
    curves: found.map(({ name, spectrum }, place) => ({
      x,
      y: x.map((_, k) => Math.max(FLOOR, spectrum[k] ?? FLOOR)),
      label: name === '0' ? 'spoken' : name,
      ink: inks[name],
      // Apart from each other, where skirts fall or noise is left.
      nameAt: name === '0' ? 90 : 3950 - 260 * place,
      side: name === '0' ? ('right' as const) : ('above' as const),
    })),
    x: { from: 0, to: UP_TO, name: 'audio, Hz', unit: 'Hz', step: 50 },
    y: { from: FLOOR, to: 10, name: 'dB', unit: 'dB' },
    tall: 15,
  };
}

const said = (name: Heard['name']) => (name === '0' ? 'as spoken' : `filter ${name}`);
