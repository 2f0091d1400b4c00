import { type ReactNode, useState } from 'react';
import { Chips } from './Chips.tsx';
import { joined } from './joined.ts';
import { Letter } from './Letter.tsx';
import type { Origin, Trouble } from './marks.ts';
import { OriginMark } from './OriginMark.tsx';
import { Problem } from './Problem.tsx';
import { type Entry, useEntry } from './useEntry.ts';
import { words } from './words.ts';

export interface FieldProps extends Entry {
  /** Unique on the page, and the target of links: the field's path does well. */
  id: string;
  label: string;
  symbol?: string | undefined;
  /** The unit that a bare number is taken in. */
  unit?: string | undefined;
  /** How the text was understood, unit included: `4.7 µH`. */
  echo?: string | undefined;
  problem?: (Trouble & { weight?: 'stops' | 'warns' }) | undefined;
  origin?: Origin;
  /** What is used while the field is blank, shown pencilled in. */
  typical?: string | undefined;
  /** Goes back to the typical value; offered while something is typed. */
  onTypical?: (() => void) | undefined;
  /** Prefix letters that suit this quantity, for telephones. */
  prefixes?: readonly string[] | undefined;
  help?: ReactNode;
  source?: string | undefined;
}

/** A line on the sheet to write a quantity on. Never refuses while typing; says how it reads it. */
export function Field(props: FieldProps) {
  const { id, label, symbol, unit, text, echo, problem, typical, onTypical, prefixes } = props;
  const blank = text.trim() === '';
  const origin = props.origin ?? (blank ? 'typical' : 'typed');
  const [helpOpen, setHelpOpen] = useState(false);
  const { input, insert } = useEntry(props);
  const hasHelp = props.help !== undefined || props.source !== undefined;

  return (
    <div
      className={joined(
        'field',
        blank && 'field--blank',
        problem && `field--${problem.weight ?? 'stops'}`,
      )}
    >
      <div className="field__head">
        <label htmlFor={id}>
          {label}
          {symbol !== undefined && (
            <>
              {' '}
              <Letter of={symbol} />
            </>
          )}
        </label>
        {hasHelp && (
          <button
            type="button"
            className="field__ask"
            aria-expanded={helpOpen}
            aria-label={words.helpOn(label)}
            onClick={() => setHelpOpen(!helpOpen)}
          >
            ?
          </button>
        )}
      </div>
      <div className="field__line">
        <input
          {...input}
          id={id}
          placeholder={typical}
          aria-invalid={problem !== undefined && problem.weight !== 'warns'}
          aria-describedby={`${id}:echo ${id}:problem`}
        />
        {unit !== undefined && <span className="field__unit">{unit}</span>}
      </div>
      <div className="field__under" id={`${id}:echo`}>
        {echo !== undefined && echo !== text && <span className="field__echo">= {echo}</span>}
        {(!blank || typical !== undefined) && <OriginMark of={origin} />}
        {!blank && typical !== undefined && onTypical && (
          <button type="button" className="field__reset" onClick={onTypical}>
            <span className="unseen">{label}: </span>
            {words.backToTypical} <span className="field__typical">{typical}</span>
          </button>
        )}
      </div>
      {prefixes && <Chips of={prefixes} onChip={insert} />}
      <div id={`${id}:problem`} aria-live="polite">
        {problem && <Problem {...problem} />}
      </div>
      {helpOpen && (
        <div className="field__help">
          {props.help}
          {props.source !== undefined && (
            <p className="field__source">
              {words.source}: {props.source}
            </p>
          )}
        </div>
      )}
    </div>
  );
}
