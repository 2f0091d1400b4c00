import { Figure } from '../../design/Figure.tsx';
import { Figures } from '../../design/Figures.tsx';
import { points } from '../../engine/stages/bench/points.ts';
import { useValue } from '../../store/hooks.ts';
import { Result } from '../bound/Result.tsx';
import { Say } from '../bound/Say.tsx';
import { useTestPoint } from './useTestPoint.ts';

const output = points.find((point) => point.asVolts);

/** Before anything is measured, what the output should show; from then on the worst verdict. */
export function Overall() {
  const measured = useValue<string>('bench.overall') !== null;
  return (
    <>
      <Figures>
        {!measured && <OutputToExpect />}
        <Result
          of="bench.overall"
          size={measured ? 'main' : 'normal'}
          none="nothing measured yet"
        />
      </Figures>
      <Say of="bench.summary" />
    </>
  );
}

function OutputToExpect() {
  if (!output) throw new Error('no test point at the output');
  const view = useTestPoint(output);
  return (
    <Figure
      label="To be expected at the output"
      value={view?.text.expected ?? null}
      waits="waits for Plan"
      size="main"
    />
  );
}
