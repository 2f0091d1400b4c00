import { Button } from './Button.tsx';
import { words } from './words.ts';

interface ErrandProps {
  /** What is worked out: "10 000 builds". */
  what: string;
  standing: 'waits' | 'none' | 'running' | 'fresh' | 'before';
  /** 0 to 1. */
  progress: number;
  failed: string | null;
  onRun: () => void;
  onStop: () => void;
  /** The word on the button, where "work it out" says too little. */
  run?: string;
}

/** How work that takes a moment stands: its button, its progress, and a way to stop it. */
export function Errand(props: ErrandProps) {
  const { what, standing, progress, failed, onRun, onStop } = props;
  const percent = Math.round(progress * 100);
  return (
    <div className="errand" data-standing={standing}>
      {standing === 'running' ? (
        <>
          <progress
            max={100}
            value={percent}
            aria-label={words.underWay(what, percent)}
            className="errand__progress"
          />
          <span className="errand__says">{words.underWay(what, percent)}</span>
          <Button onPress={onStop}>{words.stop}</Button>
        </>
      ) : (
        <>
          <Button
            kind={standing === 'fresh' ? 'plain' : 'strong'}
            disabled={standing === 'waits'}
            onPress={onRun}
          >
            {props.run ?? (standing === 'none' ? words.run : words.again)}
          </Button>
          <span className="errand__says" aria-live="polite">
            {standing === 'before' ? words.fromBefore : what}
          </span>
        </>
      )}
      {failed !== null && <p className="errand__failed">{failed}</p>}
    </div>
  );
}
