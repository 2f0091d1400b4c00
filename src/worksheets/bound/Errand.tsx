import { Errand as ErrandLine } from '../../design/Errand.tsx';
import type { ErrandState } from '../../store/errands.ts';

interface ErrandProps {
  of: ErrandState<unknown>;
  /** What is worked out: "10 000 builds". */
  what: string;
  run?: string;
}

/** The line of an errand on the sheet: send, watch, stop. */
export function Errand({ of, ...rest }: ErrandProps) {
  const { standing, progress, failed, run, cancel } = of;
  return (
    <ErrandLine
      {...rest}
      standing={standing}
      progress={progress}
      failed={failed}
      onRun={run}
      onStop={cancel}
    />
  );
}
