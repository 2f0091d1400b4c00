import type { ReactNode } from 'react';
import { Value } from '../../design/Value.tsx';
import { useBench } from '../../store/store.ts';
import type { TestPointView } from './useTestPoint.ts';

interface ExpectedProps {
  /** `bench.currents` */
  table: string;
  view: TestPointView;
}

/** The reading to expect, what holds, and the rule: each opens its own workings. */
export function Expected({ table, view }: ExpectedProps) {
  const { row, text, index } = view;
  const how = (column: string, children: ReactNode) => (
    <How path={`${table}.${column}`} index={index}>
      {children}
    </How>
  );
  return (
    <>
      <span className="point__expected">
        {text.expected === null ? '–' : how('expected', <Value of={text.expected} />)}
      </span>
      {text.range !== null && (
        <span className="point__range" title={row.from}>
          holds: {how('tolerance', text.range)}
        </span>
      )}
      {text.limit !== null && (
        <span className="point__range">rule: {how('limit', text.limit)}</span>
      )}
    </>
  );
}

interface HowProps {
  path: string;
  index: number;
  children: ReactNode;
}

/** A figure in the table that opens its workings under the row. */
function How({ path, index, children }: HowProps) {
  const isOpen = useBench((s) => s.open?.path === path && s.open.index === index);
  const openWorking = useBench((s) => s.openWorking);
  return (
    <button
      type="button"
      className="cell-how"
      aria-expanded={isOpen}
      title="Show the workings"
      onClick={() => openWorking(isOpen ? null : path, index)}
    >
      {children}
    </button>
  );
}
