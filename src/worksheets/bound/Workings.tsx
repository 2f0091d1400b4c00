import { useEffect, useState } from 'react';
import { Step } from '../../design/Step.tsx';
import { type Unfolded, unfold } from '../../engine/rig/unfold.ts';
import { useWorked } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { stageOf } from './steps.ts';
import type { Typeset } from './typeset.ts';

interface WorkingsProps {
  /** `filter.loss`, `output.harmonics.level`. */
  of: string;
  index?: number;
  /** How much to reveal: formula; with numbers; with the answer. All if not said. */
  reveal?: 1 | 2 | 3;
}

type Typesetter = (unfolded: Unfolded) => Typeset;

/** A result's workings: formula, numbers, symbols, source. Its typesetter is fetched when first used. */
export function Workings({ of, index = 0, reveal = 3 }: WorkingsProps) {
  const worked = useWorked();
  const openWorking = useBench((s) => s.openWorking);
  const [typesetter, setTypesetter] = useState<{ typeset: Typesetter } | null>(null);
  useEffect(() => {
    let here = true;
    import('./typeset.ts').then(({ typeset }) => {
      if (here) setTypesetter({ typeset });
    });
    return () => {
      here = false;
    };
  }, []);
  const [key = '', ...rest] = of.split('.');
  const stage = stageOf(key);
  const unfolded = stage ? unfold(worked, stage, rest.join('.'), index) : null;
  if (!unfolded) return null;
  if (!typesetter) return <p className="workings-wait">Setting the formula…</p>;
  const set = typesetter.typeset(unfolded);
  return (
    <Step
      label={set.label}
      says={unfolded.working.says}
      formula={set.formula}
      rule={'rule' in unfolded.working ? unfolded.working.rule : undefined}
      root={'root' in unfolded.working ? unfolded.working.root : undefined}
      steps={reveal >= 2 ? set.steps : undefined}
      numbers={reveal >= 2 ? set.numbers : undefined}
      value={reveal >= 3 ? set.value : '…'}
      residual={reveal >= 3 ? set.residual : undefined}
      where={set.where.map(({ path, ...item }) => ({
        ...item,
        href: path === null ? undefined : `#${path}`,
        onGo: path === null ? undefined : () => openWorking(path),
      }))}
      source={unfolded.working.source}
      assumes={unfolded.working.assumes}
    />
  );
}
