import { joined } from './joined.ts';
import type { Trouble } from './marks.ts';
import { Problem } from './Problem.tsx';
import { type Entry, useEntry } from './useEntry.ts';

interface CellFieldProps extends Entry {
  id: string;
  /** Spoken: in the cell, the row and the column say it. */
  label: string;
  unit?: string | undefined;
  /** How the text was understood, unit included. */
  echo?: string | undefined;
  problem?: (Trouble & { weight?: 'stops' | 'warns' }) | undefined;
}

/** A line in a table's cell to write a figure on; on paper a blank to fill in by hand. */
export function CellField(props: CellFieldProps) {
  const { id, label, unit, text, echo, problem } = props;
  const { input } = useEntry(props);
  return (
    <div className={joined('cell-field', problem && `field--${problem.weight ?? 'stops'}`)}>
      <div className="field__line cell-field__line">
        <input
          {...input}
          id={id}
          aria-label={unit === undefined ? label : `${label}, ${unit}`}
          aria-invalid={problem !== undefined && problem.weight !== 'warns'}
          aria-describedby={`${id}:echo ${id}:problem`}
        />
        {unit !== undefined && <span className="field__unit">{unit}</span>}
      </div>
      <span className="cell-field__echo" id={`${id}:echo`}>
        {echo !== undefined && echo !== text && <>= {echo}</>}
      </span>
      <div id={`${id}:problem`} aria-live="polite">
        {problem && <Problem {...problem} />}
      </div>
    </div>
  );
}
