import type { Outcome } from './marks.ts';
import { words } from './words.ts';

/** A dot and the limit: well under it, touching it, over it; no dot while nothing is known. */
const dots: Readonly<Record<Outcome, { y: number; open?: boolean } | null>> = {
  holds: { y: 12 },
  close: { y: 7.2, open: true },
  fails: { y: 3.2 },
  waits: null,
};

/** The shape alone, for places where the word stands elsewhere or is spoken only. */
export function VerdictMark({ of }: { of: Outcome }) {
  const dot = dots[of];
  return (
    <svg className={`verdict-mark verdict-mark--${of}`} viewBox="0 0 16 16" aria-hidden="true">
      <path d={of === 'waits' ? 'M1 7h2M5 7h2M9 7h2M13 7h2' : 'M1 7h14'} />
      {dot && <circle cx="8" cy={dot.y} r="2.6" data-open={dot.open} />}
    </svg>
  );
}

interface VerdictProps {
  of: Outcome;
  /** The margin or the reason, in a few words. */
  says?: string | undefined;
}

/** How a check turned out: a word, a shape, and how far from the limit. */
export function Verdict({ of, says }: VerdictProps) {
  return (
    <span className={`verdict verdict--${of}`}>
      <span className="verdict__word">
        <VerdictMark of={of} />
        {words.outcome[of]}
      </span>
      {says !== undefined && <span className="verdict__says">{says}</span>}
    </span>
  );
}
