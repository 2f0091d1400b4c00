import { memo, useMemo } from 'react';
import { ChoiceChart, type ChoiceDot } from '../../design/chart/ChoiceChart.tsx';
import type { SuggestAnswer } from '../../engine/errands/suggest/suggestAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

/** Further out nothing is drawn, dB. */
const [LOWEST, HIGHEST] = [-30, 45];

/** What each kind of network takes in parts and has to spare. */
export const ChoicePicture = memo(function ChoicePicture({ answer }: { answer: SuggestAnswer }) {
  const wanted = useValue<number>('output.marginWanted');
  const props = useMemo(() => {
    if (wanted === null) return null;
    const places = new Map(answer.ranked.map(({ words }, i) => [words, i + 1]));
    const there = answer.all.filter(({ margin }) => margin !== null);
    const dots = there.map(({ words, parts, margin, lacks }): ChoiceDot => {
      const place = places.get(words);
      const dot = { key: `${words} ${parts}`, x: parts, y: within(margin ?? 0) };
      if (lacks.length > 0) return { ...dot, kind: 'plain' };
      if (place === undefined) return { ...dot, kind: 'placed' };
      return { ...dot, kind: place === 1 ? 'marked' : 'placed', text: String(place) };
    });
    const ys = [...dots.map(({ y }) => y), wanted];
    const fewest = Math.min(1, ...dots.map(({ x }) => x));
    const most = Math.max(4, ...dots.map(({ x }) => x));
    return {
      dots,
      x: { from: fewest - 0.6, to: most + 1.4, name: 'parts' },
      y: {
        from: Math.floor((Math.min(0, ...ys) - 3) / 5) * 5,
        to: Math.ceil((Math.max(...ys) + 3) / 5) * 5,
        name: 'least margin, dB',
      },
      least: { at: wanted, label: 'margin wanted' },
      table: {
        columns: [
          { key: 'what', label: 'Network', as: 'words' },
          { key: 'parts', label: 'Parts' },
          { key: 'margin', label: 'Least margin', unit: 'dB' },
          { key: 'passes', label: 'Passes', as: 'words' },
        ],
        rows: there.map(({ words, parts, margin, lacks }) => ({
          key: `${words} ${parts}`,
          cells: {
            what: words,
            parts: String(parts),
            margin: (margin ?? 0).toFixed(1).replace('-', '−'),
            passes: lacks.length === 0 ? 'yes' : 'no',
          },
        })),
      },
    } as const;
  }, [answer, wanted]);
  if (props === null || props.dots.length === 0) return null;
  const [first] = answer.ranked;
  return (
    <ChoiceChart
      title="Parts against margin"
      summary={
        first
          ? `Each kind of network at its best. The filled ones pass; number 1 takes ${first.parts} parts and has ${format(first.margin ?? 0, 'dB', 3)} to spare.`
          : 'Each kind of network at its best. None passes.'
      }
      {...props}
    />
  );
});

const within = (margin: number) => Math.max(LOWEST, Math.min(HIGHEST, margin));
