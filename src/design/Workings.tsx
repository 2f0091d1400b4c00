import { type ReactNode, useEffect, useState } from 'react';
import { Button } from './Button.tsx';
import { words } from './words.ts';

interface WorkingsProps {
  /** Each a `<Step>`, in the order in which they are worked. */
  steps: readonly { key: string; step: ReactNode }[];
  /** One at a time, for a class: arrow keys go on and back. */
  onBoard?: boolean;
}

/** Keys that belong to what has the focus are left to it. */
const busy = (target: EventTarget | null) =>
  target instanceof Element &&
  target.closest('input, select, textarea, [role="slider"], [contenteditable]') !== null;

/** Sums one under the other, or one by one as on the board. */
export function Workings({ steps, onBoard = false }: WorkingsProps) {
  const [asked, setAsked] = useState(0);
  const last = steps.length - 1;
  const at = Math.max(0, Math.min(asked, last));

  useEffect(() => {
    if (!onBoard) return;
    const byKey = (event: KeyboardEvent) => {
      if (event.defaultPrevented || busy(event.target) || event.ctrlKey || event.metaKey) return;
      const by = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
      if (by === 0 || event.altKey) return;
      event.preventDefault();
      setAsked((was) => Math.max(0, Math.min(Math.min(was, last) + by, last)));
    };
    window.addEventListener('keydown', byKey);
    return () => window.removeEventListener('keydown', byKey);
  }, [onBoard, last]);

  if (steps.length === 0) return null;
  if (!onBoard) {
    return (
      <div className="workings">
        {steps.map(({ key, step }) => (
          <div key={key}>{step}</div>
        ))}
      </div>
    );
  }
  return (
    <div className="workings workings--board">
      <div aria-live="polite">{steps[at]?.step}</div>
      <p className="workings__way">
        <Button onPress={() => setAsked(at - 1)} disabled={at === 0}>
          {words.stepBack}
        </Button>
        <span>{words.stepOf(at + 1, steps.length)}</span>
        <Button onPress={() => setAsked(at + 1)} disabled={at === last}>
          {words.stepOn}
        </Button>
      </p>
    </div>
  );
}
