import { memo } from 'react';
import { Note } from '../../design/Note.tsx';
import { RankBars } from '../../design/RankBars.tsx';
import { Section } from '../../design/Section.tsx';
import { GOALS, type Steps, type YieldAnswer } from '../../engine/errands/yield/yieldAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { useInTurn } from '../bound/useInTurn.ts';
import { chanceText } from './chanceText.ts';
import { groupWords } from './figureWords.ts';
import { StepsTable } from './StepsTable.tsx';

/** The pictures go first. */
const TURN = 8;

/** What better parts would bring: each group made perfect, and the tolerances that are sold. */
export const WhatHelps = memo(function WhatHelps(props: { answer: YieldAnswer }) {
  const answer = useInTurn(props.answer, TURN);
  if (answer === null) return null;
  const { capacitors, frequencies, perfect, triedYield } = answer;
  if (answer.yield === null || !capacitors || !frequencies) return null;
  const failing = 1 - triedYield;
  const best = perfect[0];
  return (
    <Section
      title="What to buy better"
      margin={
        <Note>
          <p>
            Tried on {answer.tried} builds with the same luck: only the one thing differs. So small
            gains show, though the yields themselves are known to a few per cent only.
          </p>
        </Note>
      }
    >
      <p>{adviceOf(triedYield, best)}</p>
      <h3 className="chart__title">
        Failures that vanish if one group is perfect, and the yield then
      </h3>
      <RankBars
        label="Yield if one group of parts were perfect"
        of={perfect.map(({ group, chance }) => ({
          key: group,
          label: groupWords[group],
          share: failing > 0 ? (chance.share - triedYield) / failing : 0,
          figure: chanceText(chance.share),
        }))}
      />
      <div className="charts">
        <StepsTable
          caption="Yield with other capacitors"
          heading="Within ±"
          of={capacitors}
          written={(value) => (value === 0 ? 'exact' : format(value, '%', 2))}
        />
        <StepsTable
          caption="Yield with other crystals"
          heading="Spread"
          of={frequencies}
          written={(value) => (value === 0 ? 'exact' : format(value, 'Hz', 2))}
        />
      </div>
      <p>{enoughText('Capacitors', 'within ±', capacitors, (v) => format(v, '%', 2))}</p>
      <p>{enoughText('Crystals', 'of a spread of', frequencies, (v) => format(v, 'Hz', 2))}</p>
    </Section>
  );
});

function adviceOf(now: number, best: YieldAnswer['perfect'][number] | undefined): string {
  if (!best || best.chance.share - now < 0.01) {
    return now > 0.98
      ? 'Nothing: the parts are good enough as they are.'
      : 'No group of parts by itself: look at the design and the mask.';
  }
  return `${groupWords[best.group]} first: if they were perfect, ${chanceText(best.chance.share)} would come out instead of ${chanceText(now)}.`;
}

/** What would be enough for the goals, in words. */
function enoughText(
  what: string,
  how: string,
  { enough }: Steps,
  written: (value: number) => string,
): string {
  const parts = GOALS.map((goal, i) => {
    const value = enough[i] ?? null;
    return value === null
      ? `none however good give ${format(goal, '%', 2)}`
      : value === 0
        ? `only exact ones give ${format(goal, '%', 2)}`
        : `${how} ${written(value)} give ${format(goal, '%', 2)}`;
  });
  return `${what}, all else as it is: ${parts.join('; ')}.`;
}
