import { Figures } from '../../design/Figures.tsx';
import { useValue } from '../../store/hooks.ts';
import { Result } from '../bound/Result.tsx';

const none = 'the ports are already higher';

/** The resistors, what they cost, and what the analyser should then show. */
export function Analyser() {
  const possible = useValue<number>('ends.trickSource') !== null;
  return (
    <>
      <Figures>
        <Result of="ends.trickSource" none={none} />
        <Result of="ends.trickLoad" none={none} />
        <Result of="ends.trickRange" none={none} />
        <Result of="ends.trickReading" none={none} />
        <Result of="ends.trickDepth" none={none} />
      </Figures>
      {!possible && (
        <p>
          A filter that wants less than the ports have needs resistors across its ends, or a pad,
          instead of resistors in series.
        </p>
      )}
    </>
  );
}
