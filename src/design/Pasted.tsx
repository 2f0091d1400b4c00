import { type ReactNode, useRef, useState } from 'react';
import { Button } from './Button.tsx';
import type { Trouble } from './marks.ts';
import { Problem } from './Problem.tsx';
import { words } from './words.ts';

interface PastedProps {
  id: string;
  label: string;
  text: string;
  onText: (text: string) => void;
  /** Lines to show before it scrolls. */
  lines?: number;
  /** An example of what may stand here, pencilled in while it is blank. */
  example?: string | undefined;
  /** Kinds of file that may be opened; none where only pasting makes sense. */
  files?: string | undefined;
  /** A file was chosen that cannot be read as text. */
  onUnreadable?: ((name: string) => void) | undefined;
  /** What was understood of it, in a few words. */
  echo?: string | undefined;
  problem?: (Trouble & { weight?: 'stops' | 'warns' }) | undefined;
  help?: ReactNode;
}

/** A place for text of several lines: typed, pasted, dropped, or taken from a file. */
export function Pasted(props: PastedProps) {
  const { id, label, text, onText, lines = 8, example, files, echo, problem } = props;
  const [helpOpen, setHelpOpen] = useState(false);
  const file = useRef<HTMLInputElement>(null);
  const take = (chosen: File | undefined) => {
    if (!chosen) return;
    chosen.text().then(onText, () => props.onUnreadable?.(chosen.name));
  };
  return (
    <div className="pasted">
      <div className="field__head">
        <label htmlFor={id}>{label}</label>
        {props.help !== undefined && (
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
      <textarea
        id={id}
        rows={lines}
        value={text}
        placeholder={example}
        wrap="off"
        autoComplete="off"
        autoCapitalize="off"
        autoCorrect="off"
        spellCheck={false}
        aria-invalid={problem !== undefined && problem.weight !== 'warns'}
        aria-describedby={`${id}:echo ${id}:problem`}
        onChange={(event) => onText(event.target.value)}
        onDragOver={(event) => event.preventDefault()}
        onDrop={(event) => {
          if (event.dataTransfer.files.length === 0) return;
          event.preventDefault();
          take(event.dataTransfer.files[0]);
        }}
      />
      <div className="pasted__under">
        <span id={`${id}:echo`}>{echo}</span>
        <span className="pasted__actions">
          {files !== undefined && (
            <>
              <Button onPress={() => file.current?.click()}>{words.openFile}</Button>
              <input
                ref={file}
                className="unseen"
                type="file"
                accept={files}
                aria-label={`${label}: ${words.openFile}`}
                tabIndex={-1}
                onChange={(event) => {
                  const [chosen] = event.target.files ?? [];
                  event.target.value = '';
                  take(chosen);
                }}
              />
            </>
          )}
          {text !== '' && <Button onPress={() => onText('')}>{words.clear}</Button>}
        </span>
      </div>
      <div id={`${id}:problem`} aria-live="polite">
        {problem && <Problem {...problem} />}
      </div>
      {helpOpen && <div className="field__help">{props.help}</div>}
    </div>
  );
}
