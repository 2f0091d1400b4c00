import type { ReactNode } from 'react';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Moved } from '../../design/Moved.tsx';
import { Problem } from '../../design/Problem.tsx';
import { Sentence } from '../../design/Sentence.tsx';
import { Sheet } from '../../design/Sheet.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { stages } from '../../engine/rig/stages.ts';
import { useMoves, useStage } from '../../store/hooks.ts';
import { type SheetKey, useBench } from '../../store/store.ts';
import { Assumptions } from './Assumptions.tsx';
import { Board } from './Board.tsx';

interface SheetFrameProps {
  stage: SheetKey;
  /** The first sentence, whose numbers are live. */
  lead: ReactNode;
  /** The figure that matters most, beside the sentence: a `<Result size="main">`. */
  main?: ReactNode;
  children: ReactNode;
}

/** What every worksheet has: title, live sentence, what moved, problems, model limits, the way on. */
export function SheetFrame({ stage: key, lead, main, children }: SheetFrameProps) {
  const fields = stages.find((s) => s.fields.key === key)?.fields;
  const view = useBench((s) => s.view);
  return (
    <Sheet
      title={fields?.title ?? key}
      asks={fields?.asks ?? ''}
      lead={<Sentence>{lead}</Sentence>}
      main={main}
      moved={<LastChange />}
      foot={<WayOn from={key} />}
    >
      <Problems of={key} />
      {view === 'projector' && <Board of={key} />}
      {children}
      <Disclosure summary="What this model leaves out">
        <Assumptions of={key} />
      </Disclosure>
    </Sheet>
  );
}

/** The strip of what the last change moved, on every sheet. */
function LastChange() {
  const moves = useMoves();
  const cause = useBench((s) => s.past.at(-1));
  const rig = useBench((s) => s.rig);
  const before = useBench((s) => s.before);
  if (rig === before || !cause || cause.path === null) return null;
  const now = cause.path in rig.entries ? rig.entries[cause.path]?.text : 'as typical';
  return (
    <Moved
      cause={`${cause.label}: ${now}`}
      items={moves
        .filter(({ before: was, after }) => was !== '' || after !== '')
        // A sentence is no figure: it stands on its sheet.
        .filter(({ before: was, after }) => Math.max(was.length, after.length) <= 28)
        .map((move) => ({
          key: move.path,
          label: move.label,
          was: move.before || 'none',
          now: move.after || 'none',
          href: `#${move.path}`,
        }))}
    />
  );
}

/** What stands in the way of this stage, each with the way to its field. */
function Problems({ of }: { of: string }) {
  const problems = useStage(of)?.problems ?? [];
  const shown = problems.filter(
    ({ field }, i) =>
      problems.findIndex((p) => p.field === field && p.says === problems[i]?.says) === i,
  );
  return shown.map((problem) => {
    const [owner = ''] = problem.field.split('.');
    const field = fieldAt(problem.field);
    const title = stages.find((s) => s.fields.key === owner)?.fields.title ?? owner;
    const label = owner === of ? (field?.label ?? '') : `${title}: ${field?.label ?? ''}`;
    return (
      <Problem
        key={`${problem.field}:${problem.says}`}
        {...problem}
        at={{ href: `#${problem.field}`, label }}
      />
    );
  });
}

/** The sheets before and after. */
function WayOn({ from }: { from: string }) {
  const at = stages.findIndex((s) => s.fields.key === from);
  const before = stages[at - 1]?.fields;
  const after = stages[at + 1]?.fields;
  return (
    <nav className="way-on" aria-label="Next and previous sheet">
      {before ? <a href={`#${before.key}`}>← {before.title}</a> : <span />}
      {after ? (
        <a href={`#${after.key}`}>
          {after.title}: {after.asks} →
        </a>
      ) : (
        <span />
      )}
    </nav>
  );
}
