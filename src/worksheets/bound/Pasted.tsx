import { Pasted as PastedBox } from '../../design/Pasted.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { useInput } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';

interface PastedProps {
  /** Path of a pasted input: `bag.crystals`. */
  of: string;
  lines?: number;
  example?: string;
  /** Kinds of file that may be opened: `.s2p,.csv,text/plain`. */
  files?: string;
  /** What was understood of it, in a few words. */
  echo?: string | undefined;
  measured?: boolean;
}

/** A pasted input on the sheet, tied to the rig. */
export function Pasted({ of, measured = false, ...rest }: PastedProps) {
  const field = fieldAt(of);
  const { text = '', problem } = useInput(of);
  const say = useBench((s) => s.say);
  const tell = useBench((s) => s.tell);
  if (field?.kind !== 'pasted') throw new Error(`nothing is pasted at ${of}`);
  const write = (next: string) => {
    if (next.length <= field.longest) {
      say(of, field.label, next, measured ? 'measured' : undefined);
    } else {
      const says = `${field.label}: ${next.length} characters are too many, at most ${field.longest} are kept. Nothing has changed.`;
      tell({ weight: 'bad', says });
    }
  };
  return (
    <PastedBox
      {...rest}
      id={of}
      label={field.label}
      text={text}
      onText={write}
      onUnreadable={(name) =>
        tell({ weight: 'bad', says: `“${name}” could not be read; nothing has changed.` })
      }
      problem={problem}
      help={field.help}
    />
  );
}
