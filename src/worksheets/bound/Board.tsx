import { useEffect, useRef, useState } from 'react';
import { useWorked } from '../../store/hooks.ts';
import { labelOf, workingsOf } from './steps.ts';
import { Workings } from './Workings.tsx';

/**
 * The board for a build night: one working at a time, in large type. The right arrow reveals the
 * formula, then the numbers, then the answer, then goes on to the next result; the left arrow back.
 */
export function Board({ of }: { of: string }) {
  const worked = useWorked();
  const [at, setAt] = useState(0);
  const board = useRef<HTMLElement>(null);
  const steps = workingsOf(worked, of);
  const last = steps.length * 3 - 1;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.target instanceof Element && event.target.closest('input, select, textarea'))
        return;
      if (event.altKey || event.ctrlKey || event.metaKey) return;
      if (event.key !== 'ArrowRight' && event.key !== 'ArrowLeft') return;
      event.preventDefault();
      board.current?.scrollIntoView({ block: 'start' });
      setAt((now) => Math.min(last, Math.max(0, now + (event.key === 'ArrowRight' ? 1 : -1))));
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [last]);
  const step = steps[Math.min(Math.floor(at / 3), steps.length - 1)];
  if (!step) return null;
  const number = Math.floor(at / 3) + 1;
  return (
    <section ref={board} className="board" aria-label="Workings, step by step" aria-live="polite">
      <p className="board__place">
        <button type="button" onClick={() => setAt(Math.max(0, at - 1))} disabled={at === 0}>
          ← back
        </button>
        <span>
          {labelOf(step.path)}, working {number} of {steps.length}
        </span>
        <button type="button" onClick={() => setAt(Math.min(last, at + 1))} disabled={at >= last}>
          on →
        </button>
      </p>
      <Workings of={step.path} index={step.index} reveal={((at % 3) + 1) as 1 | 2 | 3} />
    </section>
  );
}
