import { Figure } from '../../design/Figure.tsx';
import { Figures } from '../../design/Figures.tsx';
import type { SuggestAnswer } from '../../engine/errands/suggest/suggestAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { SuggestedHarmonics } from './SuggestedHarmonics.tsx';
import { TakeIt } from './TakeIt.tsx';

/** The simplest network that passes, and the word that takes it. */
export function Suggestion({ answer }: { answer: SuggestAnswer }) {
  const [first] = answer.ranked;
  if (first === undefined) return null;
  const { capacitors, coils, transformers } = first;
  return (
    <>
      <p className="suggested">{first.words}</p>
      <p>
        {many(capacitors, 'capacitor')}, {many(coils, 'coil')}
        {transformers > 0 ? ' and a transformer' : ''}. {answer.passed} of {answer.looked} pass.
      </p>
      <Figures>
        <Figure
          label="Least margin"
          value={first.margin === null ? '–' : format(first.margin, 'dB', 3)}
        />
        <Figure label="Loss" value={format(first.loss, 'dB', 4)} />
        <Figure label="Power at the antenna" value={format(first.power, 'W', 3)} />
        <Figure
          label="Hottest part"
          value={first.hottest === '' ? '–' : `${first.hottest}, ${format(first.heat, 'W', 2)}`}
        />
        <Figure label="Return loss" value={format(first.returnLoss, 'dB', 3)} />
      </Figures>
      <p>
        <TakeIt offered={first} strong />
      </p>
      <SuggestedHarmonics offered={first} />
    </>
  );
}

const many = (n: number, what: string) => `${n} ${what}${n === 1 ? '' : 's'}`;
