import { Figure } from '../../design/Figure.tsx';
import type { YieldAnswer } from '../../engine/errands/yield/yieldAnswer.ts';
import { type ErrandState, useErrand } from '../../store/errands.ts';
import { betweenText, chanceText } from './chanceText.ts';

/** The yield, as the figure that matters most. */
export function YieldFigure() {
  const { answer, standing } = useErrand<YieldAnswer>('yield');
  const found = answer?.yield ?? null;
  return (
    <Figure
      id="yield.yield"
      label="Yield"
      symbol="Y"
      size="main"
      value={found === null ? null : chanceText(found.share)}
      waits={waitsFor(answer, standing)}
    >
      {found && (
        <p className="figure__was">
          {betweenText(found)}, nineteen times in twenty
          {standing === 'before' ? '; from before the last change' : ''}
        </p>
      )}
    </Figure>
  );
}

function waitsFor(answer: YieldAnswer | null, standing: ErrandState<unknown>['standing']): string {
  if (standing === 'waits') return 'waits for the filter';
  if (answer === null) return standing === 'running' ? 'building …' : 'not built yet';
  return 'nothing is asked yet';
}
