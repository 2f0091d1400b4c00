import { useRef, useState } from 'react';
import { Button } from '../../design/Button.tsx';
import { Problem } from '../../design/Problem.tsx';
import { useHear } from '../../store/hear.ts';
import { LONGEST, NoSound, SPOKEN, samplesOf, spoken } from './ownSound.ts';

/** Whose voice it is: the one by formula, a file's, or one's own. */
export function Source() {
  const own = useHear((s) => s.own);
  const take = useHear((s) => s.take);
  const [says, setSays] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const file = useRef<HTMLInputElement>(null);
  const stop = useRef<(() => void) | null>(null);

  const having = async (name: string, sound: Promise<Float32Array>) => {
    setSays(null);
    setBusy(true);
    try {
      take({ name, samples: await sound });
    } catch (error) {
      setSays(error instanceof NoSound ? error.message : 'The sound could not be read.');
    } finally {
      setBusy(false);
      stop.current = null;
    }
  };
  const speak = () => {
    const stopped = new Promise<void>((on) => {
      stop.current = on;
    });
    void having('your own voice', spoken(stopped));
  };

  return (
    <div className="source">
      <p>
        What is heard: <b>{own === null ? 'a voice by formula' : own.name}</b>.
      </p>
      <div className="slider__tools">
        {own !== null && <Button onPress={() => take(null)}>The voice by formula</Button>}
        <Button disabled={busy} onPress={() => file.current?.click()}>
          A sound file …
        </Button>
        <input
          ref={file}
          type="file"
          accept="audio/*"
          className="unseen"
          tabIndex={-1}
          aria-label="A sound file"
          onChange={(event) => {
            const chosen = event.target.files?.[0];
            event.target.value = '';
            if (chosen) void having(chosen.name, chosen.arrayBuffer().then(samplesOf));
          }}
        />
        {busy && stop.current ? (
          <Button kind="strong" onPress={() => stop.current?.()}>
            That is enough
          </Button>
        ) : (
          <Button disabled={busy} onPress={speak}>
            Speak for {SPOKEN} seconds
          </Button>
        )}
      </div>
      <div aria-live="polite">{says !== null && <Problem weight="warns" says={says} />}</div>
      <p className="source__kept">
        The first {LONGEST} seconds of a file. Sound stays on this page: it is never saved and never
        sent, and the microphone listens only after the button.
      </p>
    </div>
  );
}
