import type { ReactNode } from 'react';
import { joined } from './joined.ts';
import { Letter } from './Letter.tsx';
import type { Origin, Outcome } from './marks.ts';
import { OriginMark } from './OriginMark.tsx';
import { Value } from './Value.tsx';
import { Verdict, VerdictMark } from './Verdict.tsx';
import { words } from './words.ts';

export interface FigureProps {
  /** Unique on the page, and the target of links: the result's path does well. */
  id?: string | undefined;
  label: string;
  symbol?: string | undefined;
  /** As it stands on the sheet, unit included (`2.40 kHz`), or without, the unit apart. */
  value: string | null;
  unit?: string | undefined;
  /** `main`: the one figure that matters most on the sheet. */
  size?: 'main' | 'normal' | 'small';
  origin?: Origin;
  /** The value before the last change, where that moved it. */
  was?: string | undefined;
  verdict?: { of: Outcome; says?: string | undefined } | undefined;
  /** Where the value is itself a verdict: its shape, set before the word. */
  mark?: Outcome | undefined;
  /** Why there is no value: "waits for Filter: bandwidth". */
  waits?: string | undefined;
  /** Opens and closes the workings, which the sheet puts below (or as children here). */
  onHow?: (() => void) | undefined;
  howOpen?: boolean;
  children?: ReactNode;
}

/** A result. Larger than what was typed to get it, and ready to show how it came about. */
export function Figure(props: FigureProps) {
  const { label, symbol, value, unit, size = 'normal', origin = 'worked', was, verdict } = props;
  return (
    <div
      id={props.id}
      className={joined('figure', `figure--${size}`, was !== undefined && 'figure--moved')}
    >
      <div className="figure__head">
        <span className="figure__label">
          {label}
          {symbol !== undefined && (
            <>
              {' '}
              <Letter of={symbol} />
            </>
          )}
        </span>
        {origin !== 'worked' && <OriginMark of={origin} />}{' '}
        {props.onHow && (
          <button
            type="button"
            className="figure__how"
            aria-expanded={props.howOpen ?? false}
            onClick={props.onHow}
          >
            {words.how}
            <span className="unseen">: {label}</span>
          </button>
        )}
      </div>
      <p className="figure__value">
        {value === null ? (
          <span className="figure__waits">{props.waits ?? '–'}</span>
        ) : (
          <>
            {props.mark && <VerdictMark of={props.mark} />}
            <Value of={value} unit={unit} />
          </>
        )}
      </p>
      {(was !== undefined || verdict || props.children) && (
        <div className="figure__more">
          {was !== undefined && (
            <p className="figure__was">
              {words.was} <s>{was}</s>
            </p>
          )}
          {verdict && <Verdict of={verdict.of} says={verdict.says} />}
          {props.children}
        </div>
      )}
    </div>
  );
}
