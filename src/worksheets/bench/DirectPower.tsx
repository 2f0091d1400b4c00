import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Result } from '../bound/Result.tsx';
import { Say } from '../bound/Say.tsx';

/** Radio power out against direct power in: the check on the power reading itself. */
export function DirectPower() {
  return (
    <Section
      title="Is the power reading believable?"
      margin={
        <Note title="Sum it up from the supply">
          <p>
            No stage gives more than it takes. Half of the direct power is what built stages turn
            into radio power; a reading beyond 70 % is a wrong probe setting or a wrong load.
          </p>
        </Note>
      }
    >
      <Figures>
        <Result of="bench.dcRatio" none="waits for output and current" />
        <Result of="bench.dcVerdict" none="waits for output and current" />
        <Result of="bench.directPower" none="waits for a current" />
        <Result of="bench.dcCeiling" />
        <Result of="bench.outputVpp" none="not measured yet" />
        <Result of="bench.outputLevel" none="not measured yet" />
      </Figures>
      <Say of="bench.dcMeans" />
    </Section>
  );
}
