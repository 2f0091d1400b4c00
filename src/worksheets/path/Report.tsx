import type { Outcome } from '../../design/marks.ts';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useValue } from '../../store/hooks.ts';
import { Result } from '../bound/Result.tsx';

type Grade = 'none' | 'justUsable' | 'marginal' | 'good';

/** What each grade of speech is worth at the other end. */
const worth: Readonly<Record<Grade, Outcome>> = {
  none: 'fails',
  justUsable: 'close',
  marginal: 'holds',
  good: 'holds',
};

/** The report that the other operator gives, and whether speech is understood at it. */
export function Report() {
  const speech = useValue<Grade>('path.speech');
  return (
    <Result
      of="path.report"
      size="main"
      none="nothing arrives"
      verdict={speech === null ? undefined : { of: worth[speech], says: said(speech) }}
    />
  );
}

function said(speech: Grade): string {
  const field = fieldAt('path.speech');
  return field ? `speech ${shown(field, speech)}` : '';
}
