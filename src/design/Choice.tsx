import { joined } from './joined.ts';
import { Letter } from './Letter.tsx';
import type { Trouble } from './marks.ts';
import { Problem } from './Problem.tsx';

interface ChoiceProps {
  id: string;
  label: string;
  symbol?: string | undefined;
  /** Key to the words shown, in order. */
  options: readonly (readonly [key: string, shown: string])[];
  value: string | null;
  onChoose: (key: string) => void;
  /** Side by side, or folded into a list. By itself: a list from six on. */
  form?: 'row' | 'list';
  help?: string | undefined;
  problem?: Trouble | undefined;
}

/** One of a few named possibilities. */
export function Choice(props: ChoiceProps) {
  const { id, label, symbol, options, value, onChoose, problem } = props;
  const name = (
    <>
      {label}
      {symbol !== undefined && (
        <>
          {' '}
          <Letter of={symbol} />
        </>
      )}
    </>
  );
  const under = (
    <>
      {props.help !== undefined && (
        <p className="choice__help" id={`${id}:help`}>
          {props.help}
        </p>
      )}
      <div aria-live="polite">{problem && <Problem {...problem} />}</div>
    </>
  );

  if ((props.form ?? (options.length > 5 ? 'list' : 'row')) === 'list') {
    return (
      <div className={joined('choice', 'choice--list', problem && 'choice--stops')}>
        <label htmlFor={id}>{name}</label>
        <select
          id={id}
          value={value ?? ''}
          onChange={(event) => onChoose(event.target.value)}
          aria-describedby={`${id}:help`}
        >
          {value === null && <option value="" />}
          {options.map(([key, shown]) => (
            <option key={key} value={key}>
              {shown}
            </option>
          ))}
        </select>
        {under}
      </div>
    );
  }

  return (
    <fieldset className={joined('choice', problem && 'choice--stops')} id={id}>
      <legend>{name}</legend>
      <div className="choice__row">
        {options.map(([key, shown]) => (
          <label key={key} className="choice__one">
            <input
              type="radio"
              name={id}
              value={key}
              checked={key === value}
              onChange={() => onChoose(key)}
            />
            <span>{shown}</span>
          </label>
        ))}
      </div>
      {under}
    </fieldset>
  );
}
