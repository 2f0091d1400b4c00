import { memo } from 'react';
import { Table } from '../../design/Table.tsx';
import { criteria } from '../../engine/errands/yield/mask.ts';
import type { YieldAnswer } from '../../engine/errands/yield/yieldAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { chanceText } from './chanceText.ts';
import { criterionWords, figureWords } from './figureWords.ts';

/** Which limit the builds that fail have broken, the worst first. */
export const Failures = memo(function Failures({ answer }: { answer: YieldAnswer }) {
  const { builds } = answer;
  const broken = answer.criteria.filter(({ fails }) => fails > 0).sort((a, b) => b.fails - a.fails);
  const worst = broken[0];
  if (answer.yield === null) return null;
  if (!worst) return <p>Not one of them breaks a limit.</p>;
  return (
    <>
      <p>
        {answer.wantedPasses
          ? `What fails most: ${criterionWords[worst.name].toLowerCase()}, ${chanceText(worst.fails / builds)} of the builds.`
          : `The filter itself breaks the mask, with nothing off: ${criterionWords[worst.name].toLowerCase()}. Better parts alone cannot mend that.`}
      </p>
      <Table
        caption="What fails"
        narrow="stack"
        columns={[
          { key: 'name', label: 'Limit broken', as: 'words' },
          { key: 'limit', label: 'Limit' },
          { key: 'fails', label: 'Of all builds' },
          { key: 'alone', label: 'That alone' },
        ]}
        rows={broken.map(({ name, limit, fails, alone }) => ({
          key: name,
          cells: {
            name: criterionWords[name],
            limit: limitText(name, limit),
            fails: chanceText(fails / builds),
            alone: chanceText(alone / builds),
          },
        }))}
      />
    </>
  );
});

function limitText(name: (typeof criteria)[number]['name'], limit: number): string {
  const figure = criteria.find((one) => one.name === name)?.figure ?? 'width';
  const { unit, digits } = figureWords[figure];
  return format(limit, unit, digits);
}
