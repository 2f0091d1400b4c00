import { useState } from 'react';
import { Button } from '../../design/Button.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { useInput } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';

/** One line of the pasted list, to be written anew or taken out. */
export function LineEditor({ line, onDone }: { line: number; onDone: () => void }) {
  const { text = '' } = useInput('bag.crystals');
  const say = useBench((s) => s.say);
  const lines = text.split(/\r\n|\n|\r/);
  const [draft, setDraft] = useState(lines[line - 1] ?? '');
  const write = (next: string | null) => {
    const changed = next === null ? lines.toSpliced(line - 1, 1) : lines.with(line - 1, next);
    say('bag.crystals', fieldAt('bag.crystals')?.label ?? '', changed.join('\n'), 'measured');
    onDone();
  };
  return (
    <form
      className="line-editor"
      onSubmit={(event) => {
        event.preventDefault();
        write(draft);
      }}
    >
      <input
        // biome-ignore lint/a11y/noAutofocus: it was asked for by pressing the label beside it
        autoFocus
        aria-label={`Line ${line} of the list`}
        value={draft}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        onChange={(event) => setDraft(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === 'Escape') onDone();
        }}
      />
      <Button onPress={() => write(draft)}>Write</Button>
      <Button onPress={() => write(null)}>Take out</Button>
      <Button onPress={onDone}>Leave as it is</Button>
    </form>
  );
}
