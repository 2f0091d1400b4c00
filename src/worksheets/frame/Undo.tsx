import { useEffect } from 'react';
import { Button } from '../../design/Button.tsx';
import { useBench } from '../../store/store.ts';

/** Back and forth through the changes, by button or by keys. */
export function Undo() {
  const past = useBench((s) => s.past.at(-1));
  const future = useBench((s) => s.future.at(-1));
  const undo = useBench((s) => s.undo);
  const redo = useBench((s) => s.redo);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      const back = key === 'z' && !event.shiftKey;
      const forth = (key === 'z' && event.shiftKey) || key === 'y';
      if (!back && !forth) return;
      event.preventDefault();
      if (back) undo();
      else redo();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [undo, redo]);
  return (
    <>
      <Button
        onPress={undo}
        disabled={!past}
        label={past ? `Undo: ${past.label}` : 'Nothing to undo'}
      >
        Undo
      </Button>
      <Button
        onPress={redo}
        disabled={!future}
        label={future ? `Redo: ${future.label}` : 'Nothing to redo'}
      >
        Redo
      </Button>
    </>
  );
}
