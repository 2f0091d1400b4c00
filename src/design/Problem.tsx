import type { Trouble } from './marks.ts';
import { words } from './words.ts';

interface ProblemProps extends Trouble {
  /** `stops`: a result cannot be given; `warns`: look here first. */
  weight?: 'stops' | 'warns';
  /** The field to look at: its id on the page and its label. */
  at?: { href: string; label: string; onGo?: () => void } | undefined;
  id?: string;
}

/** What is wrong, what would help, and the way to the field. */
export function Problem({ says, try: help, weight = 'stops', at, id }: ProblemProps) {
  return (
    <div className={`problem problem--${weight}`} id={id}>
      <svg className="problem__mark" viewBox="0 0 16 16" aria-hidden="true">
        <path d="M8 2v7.5M8 12.4v1.6" />
      </svg>
      <p>
        {says}
        {help !== undefined && (
          <span className="problem__try">
            {' '}
            <b>{words.tryThis}</b> {help}
          </span>
        )}
        {at && (
          <>
            {' '}
            <a href={at.href} onClick={at.onGo} aria-label={words.toField(at.label)}>
              {at.label}
            </a>
          </>
        )}
      </p>
    </div>
  );
}
