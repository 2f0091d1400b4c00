import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { Result } from '../bound/Result.tsx';

/** What the final sees, and what becomes of its power. */
export function Load() {
  return (
    <Section
      title="What the final sees, and what comes out"
      margin={
        <Note title="Near enough">
          <p>
            A return loss of 20 dB against the load wanted is good, 14 dB will do. Into too high a
            load the collector runs out of volts before the power is there.
          </p>
        </Note>
      }
    >
      <Figures>
        <Result of="output.pepAntenna" />
        <Result of="output.returnLoss" />
        <Result of="output.inputResistance" />
        <Result of="output.inputReactance" />
        <Result of="output.drive" />
        <Result of="output.transimpedance" />
      </Figures>
    </Section>
  );
}
