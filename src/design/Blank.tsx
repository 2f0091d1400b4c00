import { joined } from './joined.ts';
import type { Trouble } from './marks.ts';
import { type Entry, useEntry } from './useEntry.ts';

interface BlankProps extends Entry {
  id: string;
  /** Spoken: the sentence around it is not enough. */
  label: string;
  unit?: string | undefined;
  echo?: string | undefined;
  typical?: string | undefined;
  problem?: Trouble | undefined;
}

/** A number inside a sentence that can be written over; as wide as what stands in it. */
export function Blank(props: BlankProps) {
  const { id, label, unit, text, echo, typical, problem } = props;
  const { input } = useEntry(props);
  const shown = text === '' ? (typical ?? '') : text;
  return (
    <span className={joined('blank', problem && 'blank--stops', text === '' && 'blank--typical')}>
      <span className="blank__field">
        <span className="blank__sizer" aria-hidden="true">
          {shown === '' ? '\u2007\u2007' : shown}
        </span>
        <input
          {...input}
          id={id}
          size={1}
          placeholder={typical}
          aria-label={unit === undefined ? label : `${label}, ${unit}`}
          aria-invalid={problem !== undefined}
          aria-describedby={`${id}:says`}
        />
      </span>
      {unit !== undefined && <span className="blank__unit">&nbsp;{unit}</span>}
      <span className={problem ? 'blank__problem' : 'unseen'} id={`${id}:says`} aria-live="polite">
        {problem ? problem.says : echo}
      </span>
    </span>
  );
}
