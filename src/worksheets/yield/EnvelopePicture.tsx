import { memo, useMemo } from 'react';
import { EnvelopeChart, type EnvelopeChartProps } from '../../design/chart/EnvelopeChart.tsx';
import type { YieldAnswer } from '../../engine/errands/yield/yieldAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { useInTurn } from '../bound/useInTurn.ts';

interface EnvelopePictureProps {
  answer: YieldAnswer;
  /** The whole response, or its passband under the glass. */
  part: 'whole' | 'passband';
  turn: number;
}

/** The response of all builds. */
export const EnvelopePicture = memo(function EnvelopePicture(props: EnvelopePictureProps) {
  const fs = useValue<number>('quartz.fs');
  const carrier = useValue<number>('carrier.frequency');
  const answer = useInTurn(props.answer, props.turn);
  const picture = useMemo(
    () => (fs === null || answer === null ? null : pictures(answer, fs, carrier)[props.part]),
    [answer, fs, carrier, props.part],
  );
  return picture && <EnvelopeChart {...picture} />;
});

interface Both {
  readonly whole: EnvelopeChartProps;
  readonly passband: EnvelopeChartProps;
}

function pictures(answer: YieldAnswer, fs: number, carrier: number | null): Both {
  const kHz = (f: number) => (f - fs) / 1000;
  const x = answer.frequency.map(kHz);
  const best = Math.max(...answer.wanted);
  const down = (of: Float64Array) => of.map((gain) => gain - best);
  const wanted = down(answer.wanted);
  const lines = answer.envelope.map(down) as unknown as EnvelopeChartProps['lines'];
  const width = answer.figures.find(({ name }) => name === 'width');
  const [first, last] = [x[0] ?? 0, x[x.length - 1] ?? 1];
  const inside = [...x.keys()].filter((i) => (wanted[i] ?? -99) > -6);
  const [low, high] = [x[inside[0] ?? 0] ?? first, x[inside.at(-1) ?? 0] ?? last];
  const margin = (high - low) / 5;
  const common = { x, lines, wanted, xName: `kHz from ${format(fs, 'Hz', 7)}` };
  const lowest = Math.min(...wanted);
  return {
    whole: {
      ...common,
      title: 'Response of all builds',
      summary: width
        ? `Nine of ten are ${format(width.low, 'Hz', 4)} to ${format(width.high, 'Hz', 4)} wide at −3 dB; as designed it is ${format(width.wanted, 'Hz', 4)}.`
        : '',
      domain: [halves(first, Math.ceil), halves(last, Math.floor)],
      floor: Math.max(-100, 10 * Math.floor(lowest / 10)),
      ceiling: 0,
      tall: 20,
      uprights:
        carrier === null ? [] : [{ at: kHz(carrier), label: 'carrier', kind: 'live' as const }],
    },
    passband: {
      ...common,
      title: 'The passband of all builds, magnified',
      summary: 'Against the best point of the filter as designed.',
      domain: [low - margin, high + margin],
      floor: -6,
      ceiling: 1,
      tall: 14,
    },
  };
}

/** Whole half kilohertz, so that the frame stands still. */
const halves = (value: number, round: (x: number) => number) => round(2 * value) / 2;
