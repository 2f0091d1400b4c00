import type { ReactNode } from 'react';
import { joined } from './joined.ts';
import { Words } from './Words.tsx';
import { words } from './words.ts';

interface SayingProps {
  label: string;
  /** The worked sentence; null while there is none. */
  text: string | null;
  moved?: boolean;
  /** Opens and closes the rule that it came from. */
  onHow?: (() => void) | undefined;
  howOpen?: boolean;
  children?: ReactNode;
}

/** A result that is a sentence: it wraps, where a figure stands on one line. */
export function Saying({
  label,
  text,
  moved = false,
  onHow,
  howOpen = false,
  children,
}: SayingProps) {
  return (
    <div className={joined('figure', moved && 'figure--moved')}>
      <div className="figure__head">
        <span className="figure__label">{label}</span>{' '}
        {onHow && (
          <button type="button" className="figure__how" aria-expanded={howOpen} onClick={onHow}>
            {words.how}
            <span className="unseen">: {label}</span>
          </button>
        )}
      </div>
      <p>{text === null ? '–' : <Words of={text} />}</p>
      {children}
    </div>
  );
}
