import { Figures } from '../../design/Figures.tsx';
import { Note } from '../../design/Note.tsx';
import { Section } from '../../design/Section.tsx';
import { useValue } from '../../store/hooks.ts';
import { Result } from '../bound/Result.tsx';
import { Rows } from '../bound/Rows.tsx';

/** What is lost between the antennas, and the sum of all of it. */
export function Losses() {
  const sky = useValue<string>('path.route') === 'skyWave';
  return (
    <>
      <Section
        margin={
          <Note title="Read it downwards">
            <p>
              What adds is positive, what takes is negative, and the level after each line stands
              beside it. Each figure opens its workings.
            </p>
          </Note>
        }
      >
        <Rows of="path.sum" narrow="scroll" />
      </Section>
      <Section title="The loss between the antennas">
        <Figures>
          <Result of="path.loss" />
          <Result of="path.spreading" />
          <Result of="path.length" />
          {sky && (
            <>
              <Result of="path.absorption" />
              <Result of="path.groundLoss" />
              <Result of="path.index" />
            </>
          )}
        </Figures>
      </Section>
    </>
  );
}
