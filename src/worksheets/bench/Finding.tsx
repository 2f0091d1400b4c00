import { Verdict } from '../../design/Verdict.tsx';
import type { TestPointView } from './useTestPoint.ts';

/** What a reading says: against the design, against the rule, and what a miss usually comes from. */
export function Finding({ view: { row, text } }: { view: TestPointView }) {
  const judged = row.verdict !== null || row.rule !== null;
  if (!judged) {
    return (
      <>
        {row.expected === null && <p className="point__means">{row.means}</p>}
        <span className="point__ring" aria-hidden="true">
          <span>holds</span>
          <span>close</span>
          <span>fails</span>
        </span>
      </>
    );
  }
  return (
    <>
      {row.verdict !== null && (
        <Verdict
          of={row.verdict}
          says={text.off === null ? 'design' : `design, off by ${text.off}`}
        />
      )}
      {row.rule !== null && <Verdict of={row.rule} says="rule" />}
      {(row.verdict !== 'holds' || (row.rule ?? 'holds') !== 'holds') && (
        <p className="point__means">{row.means}</p>
      )}
    </>
  );
}
