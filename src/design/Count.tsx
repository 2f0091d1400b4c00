import { joined } from './joined.ts';
import { Letter } from './Letter.tsx';
import type { Trouble } from './marks.ts';
import { Problem } from './Problem.tsx';
import { type Entry, useEntry } from './useEntry.ts';
import { words } from './words.ts';

interface CountProps extends Omit<Entry, 'onStep'> {
  id: string;
  label: string;
  symbol?: string | undefined;
  onStep: (direction: 1 | -1, coarse: boolean) => void;
  /** The ends, where a further step does nothing. */
  atLeast?: boolean;
  atMost?: boolean;
  typical?: string | undefined;
  problem?: Trouble | undefined;
}

/** A whole number of things: fewer, the number, more. */
export function Count(props: CountProps) {
  const { id, label, symbol, onStep, problem, typical } = props;
  const { input } = useEntry(props);
  return (
    <div className={joined('count', problem && 'field--stops')}>
      <label htmlFor={id}>
        {label}
        {symbol !== undefined && (
          <>
            {' '}
            <Letter of={symbol} />
          </>
        )}
      </label>
      <div className="count__line">
        <button
          type="button"
          aria-label={words.fewer(label)}
          disabled={props.atLeast}
          onClick={() => onStep(-1, false)}
        >
          <svg viewBox="0 0 16 16" aria-hidden="true">
            <path d="M3 8h10" />
          </svg>
        </button>
        <input
          {...input}
          id={id}
          inputMode="numeric"
          placeholder={typical}
          aria-invalid={problem !== undefined}
          aria-describedby={`${id}:problem`}
        />
        <button
          type="button"
          aria-label={words.more(label)}
          disabled={props.atMost}
          onClick={() => onStep(1, false)}
        >
          <svg viewBox="0 0 16 16" aria-hidden="true">
            <path d="M3 8h10M8 3v10" />
          </svg>
        </button>
      </div>
      <div id={`${id}:problem`} aria-live="polite">
        {problem && <Problem {...problem} />}
      </div>
    </div>
  );
}
