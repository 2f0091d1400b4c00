import type { ReactNode } from 'react';
import { Disclosure } from '../../design/Disclosure.tsx';
import { Leaves } from '../../design/Leaves.tsx';
import { Moved } from '../../design/Moved.tsx';
import { Problem } from '../../design/Problem.tsx';
import { Sentence } from '../../design/Sentence.tsx';
import { Sheet } from '../../design/Sheet.tsx';
import type { Problem as Found } from '../../engine/fields/stage.ts';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import {
  allLeaves,
  guestsOf,
  hasLeaf,
  leafOf,
  leavesOf,
  sheetOf,
  stageOf,
  views,
} from '../../engine/rig/leaves.ts';
import { shown } from '../../engine/rig/moved.ts';
import { stages } from '../../engine/rig/stages.ts';
import { useMoves, useStage, useValue } from '../../store/hooks.ts';
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
  const view = useBench((s) => s.view);
  const sheet = sheetOf(key);
  return (
    <Sheet
      title={titleOf(sheet)}
      asks={asksOf(key)}
      leaves={<LeafRow of={sheet} current={key} />}
      lead={<Sentence>{lead}</Sentence>}
      main={main}
      moved={<LastChange />}
      foot={<WayOn from={key} />}
    >
      <Problems of={key} />
      {view === 'projector' && <Board of={key} />}
      {children}
      <Disclosure summary="What this model leaves out">
        <Assumptions of={stageOf(key)} />
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
  const field = fieldAt(cause.path);
  const text = rig.entries[cause.path]?.text;
  const asWords = field?.kind === 'pasted' || field?.kind === 'choice';
  const now = text === undefined ? 'as typical' : field && asWords ? shown(field, text) : text;
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

/** What stands in the way of this leaf's stage, and of others that have fields on it. */
function Problems({ of }: { of: string }) {
  return (
    <>
      <ProblemsOf
        stage={stageOf(of)}
        shows={({ field, weight }) => weight === 'stops' || !standsOnSister(field, of)}
      />
      {guestsOf(of).map((guest) => (
        <ProblemsOf
          key={guest}
          stage={guest}
          shows={({ field }) => leafOf(field) === of || !field.startsWith(`${guest}.`)}
        />
      ))}
    </>
  );
}

/** What a stage has found, as far as it is shown here, each with the way to its field. */
function ProblemsOf({ stage, shows }: { stage: string; shows: (problem: Found) => boolean }) {
  const problems = useStage(stage)?.problems ?? [];
  const shown = problems.filter(
    (problem, i) =>
      problems.findIndex((p) => p.field === problem.field && p.says === problem.says) === i &&
      shows(problem),
  );
  return shown.map((problem) => {
    const [owner = ''] = problem.field.split('.');
    const field = fieldAt(problem.field);
    const title = stages.find((s) => s.fields.key === owner)?.fields.title ?? owner;
    const label = owner === stage ? (field?.label ?? '') : `${title}: ${field?.label ?? ''}`;
    return (
      <Problem
        key={`${problem.field}:${problem.says}`}
        {...problem}
        at={{ href: `#${problem.field}`, label }}
      />
    );
  });
}

/** Does a field of this leaf's stage stand on another leaf, which warns of it itself? */
function standsOnSister(path: string, leaf: string): boolean {
  const place = leafOf(path);
  const shows = views[place]?.of ?? (place === 'power' ? 'transmit' : place);
  return place !== leaf && path.startsWith(`${stageOf(leaf)}.`) && shows === stageOf(leaf);
}

/** The leaves of the sheet, where it has more than one. */
function LeafRow({ of, current }: { of: string; current: string }) {
  const scheme = useValue<string>('plan.scheme');
  const leaves = leavesOf(of).filter((leaf) => leaf === current || hasLeaf(leaf, scheme));
  if (leaves.length < 2) return null;
  return (
    <Leaves
      label={`Leaves of ${titleOf(of)}`}
      items={leaves.map((leaf) => ({
        key: leaf,
        href: `#${leaf}`,
        label: leaf === of ? (leafNames[leaf] ?? titleOf(leaf)) : titleOf(leaf),
      }))}
      current={current}
    />
  );
}

/** What the first leaf of a sheet is called beside the others. */
const leafNames: Readonly<Record<string, string>> = {
  quartz: 'Figures',
  filter: 'Design',
  transmit: 'Levels',
  output: 'Network',
  windings: 'Coils',
  carrier: 'Oscillator',
  path: 'Way and report',
};

const fieldsOf = (key: string | undefined) => stages.find((s) => s.fields.key === key)?.fields;

const titleOf = (key: string) => views[key]?.title ?? fieldsOf(key)?.title ?? key;

const asksOf = (key: string) => views[key]?.asks ?? fieldsOf(key)?.asks ?? '';

/** The leaves before and after. */
function WayOn({ from }: { from: string }) {
  const scheme = useValue<string>('plan.scheme');
  const leaves = allLeaves.filter((leaf) => leaf === from || hasLeaf(leaf, scheme));
  const at = leaves.indexOf(from);
  const before = leaves[at - 1];
  const after = leaves[at + 1];
  return (
    <nav className="way-on" aria-label="Next and previous sheet or leaf">
      {before ? <a href={`#${before}`}>← {titleOf(before)}</a> : <span />}
      {after ? (
        <a href={`#${after}`}>
          {titleOf(after)}: {asksOf(after)} →
        </a>
      ) : (
        <span />
      )}
    </nav>
  );
}
