import { Figure } from '../../design/Figure.tsx';
import { points } from '../../engine/stages/bench/points.ts';
import { useValue } from '../../store/hooks.ts';
import { Result } from '../bound/Result.tsx';
import { useTestPoint } from './useTestPoint.ts';

const output = points.find((point) => point.asVolts);

/** Before anything is measured, what the output should show; from then on the worst verdict. */
export function Overall() {
  const measured = useValue<string>('bench.overall') !== null;
  return measured ? <Result of="bench.overall" size="main" /> : <OutputToExpect />;
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
