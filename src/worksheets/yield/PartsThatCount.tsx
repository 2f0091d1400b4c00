import { memo, useState } from 'react';
import { Choice } from '../../design/Choice.tsx';
import { Note } from '../../design/Note.tsx';
import { RankBars } from '../../design/RankBars.tsx';
import { Section } from '../../design/Section.tsx';
import type { FigureName } from '../../engine/errands/yield/buildFigures.ts';
import { criteria } from '../../engine/errands/yield/mask.ts';
import type { PartShare } from '../../engine/errands/yield/ranked.ts';
import type { YieldAnswer } from '../../engine/errands/yield/yieldAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { useInTurn } from '../bound/useInTurn.ts';
import { type FigureWord, figureWords, partWord } from './figureWords.ts';

/** The pictures go first. */
const TURN = 9;
/** Parts that are listed. */
const LISTED = 8;
/** Below this a figure does not follow straight lines, and single parts say little. */
const STRAIGHT = 0.5;

/** Which single parts make a figure vary. */
export const PartsThatCount = memo(function PartsThatCount(props: { answer: YieldAnswer }) {
  const answer = useInTurn(props.answer, TURN);
  const [chosen, choose] = useState<FigureName | null>(null);
  if (answer === null) return null;
  const name = chosen ?? worstFigure(answer);
  const figure = answer.figures.find((one) => one.name === name) ?? answer.figures[0];
  if (!figure || figure.parts.length === 0) return null;
  const word = figureWords[figure.name];
  const listed = figure.parts.slice(0, LISTED);
  const longest = listed[0]?.share ?? 1;
  return (
    <Section
      title="Which single part counts"
      margin={
        <Note>
          <p>
            Straight lines through all builds account for {format(figure.explained, '%', 2)} of how
            this figure varies.{' '}
            {figure.explained < STRAIGHT
              ? 'The rest comes of parts acting together: look at the groups above.'
              : ''}
          </p>
        </Note>
      }
    >
      <Choice
        id="yield:part"
        label="What varies"
        options={answer.figures.map((one) => [one.name, figureWords[one.name].label] as const)}
        value={figure.name}
        onChoose={(key) => choose(key as FigureName)}
        form="row"
      />
      <RankBars
        label={`${word.label}: parts in order of what they do to it`}
        of={listed.map((part) => ({
          key: `${part.kind}${part.position}`,
          label: partWord(part.kind, part.position),
          share: part.share / longest,
          figure: format(part.share, '%', 2),
          note: effectOf(part, word),
        }))}
      />
    </Section>
  );
});

/** The figure whose limit is broken most; the width where none is. */
function worstFigure(answer: YieldAnswer): FigureName {
  const worst = [...answer.criteria].sort((a, b) => b.fails - a.fails)[0];
  return criteria.find(({ name }) => name === worst?.name)?.figure ?? 'width';
}

function effectOf({ kind, slope }: PartShare, { unit }: FigureWord): string {
  const step = kind === 'frequency' ? '10 Hz up' : '1 % more';
  const effect = slope * (kind === 'frequency' ? 10 : 1);
  const sign = effect > 0 ? '+' : '';
  return `${step}: ${sign}${format(effect, unit, unit === 'Hz' ? 2 : 5)}`;
}
